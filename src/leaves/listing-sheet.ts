// An item and what the store may know of it -> its listing sheet in the binder: copy to paste, or why there is none. Private.
import type { Item } from "../item/item.ts";
import { usualLimits } from "../yard/listing-limits.ts";
import type { Shop } from "../yard/yard.ts";
import type { Link } from "./leaf.ts";
import { type ListingCopy, listingCopy } from "./listing-copy.ts";
import { imageKinds, imageName } from "./listing-images.ts";
import { buildSheetPath, indexPath, listingImagePath } from "./paths.ts";
import { barredText, type SaleSheet, saleSheet } from "./sale-sheet.ts";
import { type StoreItem, storeShop } from "./store-item.ts";

export type ListingSheet = {
  readonly title: string;
  readonly description: string;
  readonly shopName: string;
  readonly notice?: string;
  readonly home: Link;
  readonly sheet: Link;
  /** Why there is nothing to paste. */
  readonly barred?: string;
  readonly sale?: SaleSheet;
  readonly copy?: ListingCopy;
  /** Pictures to upload, by size. */
  readonly images: readonly { readonly size: string; readonly files: readonly Link[] }[];
};

export function listingSheetLeaf(item: Item, goods: StoreItem, shop: Shop): ListingSheet {
  const barred = barredText(item);
  const sale = saleSheet(item);
  return {
    title: `Listing: ${item.title}`,
    description: `Words for a listing of the ${item.title.toLowerCase()}, ready to paste, and which pictures to take.`,
    shopName: shop.name,
    ...(shop.notice === undefined ? {} : { notice: shop.notice }),
    home: { path: indexPath, text: "Binder" },
    sheet: { path: buildSheetPath(item.slug), text: "Build sheet" },
    ...(sale ? { sale } : {}),
    images: barred === undefined ? imagesOf(goods, shop) : [],
    ...(barred === undefined
      ? { copy: listingCopy(goods, storeShop(shop), shop.listing ?? usualLimits) }
      : { barred: `${barred} There is nothing to paste until there is.` }),
  };
}

const imagesOf = (goods: StoreItem, { images = [] }: Shop): ListingSheet["images"] =>
  images.map((size) => ({
    size: `${size.width} × ${size.height} pixels`,
    files: imageKinds.map((kind) => ({
      path: listingImagePath(goods.slug, `${imageName({ kind, size })}.png`),
      text: imageName({ kind, size }),
    })),
  }));
