// Worked-out items -> the binder's first page: every build sheet with what one needs to find it by.
import { isPriced } from "../findings/pricing.ts";
import type { Item } from "../item/item.ts";
import type { Shop } from "../yard/yard.ts";
import { linesOf } from "./batch-sheet.ts";
import { binderEdition, threeSizes } from "./edition.ts";
import type { Link } from "./leaf.ts";
import {
  batchPath,
  buildSheetPath,
  drawingsPath,
  listingPath,
  orderBookPath,
  priceSheetPath,
  seasonPath,
} from "./paths.ts";
import { barredText, cardsLink } from "./sale-sheet.ts";

export type BinderIndex = {
  readonly title: string;
  readonly description: string;
  readonly shopName: string;
  readonly notice?: string;
  readonly drawings: Link;
  /** Batches, a page for each line. */
  readonly batches: readonly Link[];
  /** Where there are any. */
  readonly orders?: Link;
  readonly season?: Link;
  readonly sheets: readonly {
    readonly link: Link;
    readonly prices?: Link;
    readonly line: string;
    readonly sizes: string;
    readonly weight: string;
    readonly pieces: string;
    readonly variants: string;
    readonly listing: Link;
    /** Where it is for sale. */
    readonly cards?: Link;
    /** Why it is not in the store. */
    readonly barred?: string;
  }[];
};

/** One line for each item, given by its standard variant. */
export function binderIndexLeaf(items: readonly Item[], shop: Shop, orders = 0): BinderIndex {
  const edition = binderEdition(shop.division);
  return {
    title: "Binder",
    description: `Build sheets of ${shop.name}.`,
    shopName: shop.name,
    ...(shop.notice === undefined ? {} : { notice: shop.notice }),
    drawings: { path: drawingsPath, text: "All drawings on one page" },
    batches: linesOf(items).map(({ name }) => ({ path: batchPath(name), text: `${name}: batches` })),
    ...(orders > 0 ? { orders: { path: orderBookPath, text: `Order book: ${orders}` } } : {}),
    ...(isPriced(shop) && items.some(({ season }) => season)
      ? { season: { path: seasonPath, text: "Season planner" } }
      : {}),
    sheets: items.map((item) => ({
      ...barredOf(item),
      link: { path: buildSheetPath(item.slug), text: item.title },
      ...(isPriced(shop) ? { prices: { path: priceSheetPath(item.slug), text: "Prices" } } : {}),
      line: item.line ?? "",
      sizes: threeSizes([item.overall.width, item.overall.depth, item.overall.height], shop.division),
      weight: edition.weight(item.weight),
      pieces: String(item.members.length),
      variants: variantsText(item),
      listing: { path: listingPath(item.slug), text: "Listing" },
      ...cardsLink(item),
    })),
  };
}

function barredOf(item: Item): { readonly barred?: string } {
  const barred = barredText(item);
  return barred === undefined ? {} : { barred };
}

/** More than this are counted, not named. */
const mostNamed = 8;

const variantsText = ({ variants }: Item): string =>
  variants.length > mostNamed
    ? `${variants.length} variants`
    : variants.map(({ name }) => name).join(variants.some(({ form }) => form !== "") ? "; " : ", ");
