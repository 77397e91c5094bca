// The worked-out variants of one recipe -> its pages on both shelves, made once for the same texts.
import { BuildSheetPage } from "../../layouts/build-sheet.tsx";
import { CardsPage } from "../../layouts/cards.tsx";
import { CareCardPage } from "../../layouts/care-card.tsx";
import { ListingSheetPage } from "../../layouts/listing-sheet.tsx";
import { PriceSheetPage } from "../../layouts/price-sheet.tsx";
import { ProductPageView } from "../../layouts/product-page.tsx";
import { SparesPageView } from "../../layouts/spares-page.tsx";
import { isPriced, type Pricing, standing } from "../findings/pricing.ts";
import { isForSale } from "../findings/sale.ts";
import { shownPrices } from "../findings/shown-price.ts";
import type { Item } from "../item/item.ts";
import { formsOf } from "../item/variants/forms.ts";
import { assemblyCard } from "../leaves/assembly-card.ts";
import { type BuildSheet, buildSheetLeaf } from "../leaves/build-sheet.ts";
import { cardsLeaf } from "../leaves/cards.ts";
import { careCardLeaf } from "../leaves/care-card.ts";
import { fullSizeOf } from "../leaves/full-size.ts";
import { listingSheetLeaf } from "../leaves/listing-sheet.ts";
import {
  cardsPath,
  careCardPath,
  listingPath,
  priceSheetPath,
  productPagePath,
  rootFrom,
  sparesPath,
} from "../leaves/paths.ts";
import { priceSheetLeaf } from "../leaves/price-sheet.ts";
import { productPageLeaf } from "../leaves/product-page.ts";
import type { Summary } from "../leaves/revised/summary.ts";
import { sparesPageLeaf } from "../leaves/spares-page.ts";
import { type StoreItem, storeItem, storeShop } from "../leaves/store-item.ts";
import { fullSizeAreas } from "../paper/paper.ts";
import type { Shop } from "../yard/yard.ts";
import { signFont } from "./letter-font.ts";
import { pageHtml } from "./page-html.ts";
import { forgetOldPricings, pricingsFor } from "./pricings.ts";
import { hashOf, Remembered } from "./remember.ts";
import type { Page, Printed } from "./site.ts";

/** All variants of one recipe, the standard one first. */
export type Variants = readonly [Item, ...Item[]];

const binders = new Remembered<BinderPart>();
const storePages = new Remembered<readonly Page[]>();
const storeItems = new Remembered<StoreItem>();

/** What the binder holds of one recipe. */
export type BinderPart = {
  readonly pages: readonly Page[];
  readonly printed: readonly Printed[];
  /** What moved since its sheets were printed last; absent where nobody said that they were. */
  readonly changes?: readonly string[];
};

/** `hash` stands for the recipe, the yard and the shop. */
export const binderPartOf = (variants: Variants, shop: Shop, hash: string, before?: Summary): BinderPart =>
  binders.answer(hashOf(hash, JSON.stringify(before) ?? ""), () => {
    const forms = formsOf(variants);
    const pricings = pricingsFor(variants, shop, hash);
    const leaves = forms.map((form) => buildSheetLeaf(form, shop, forms, pricings, before));
    const fullSizes = forms.map(([item]) => fullSizeOf(item, shop.division, signFont(), fullSizeAreas));
    const sheets = leaves.map((leaf) => ({
      path: `binder/${leaf.path}`,
      html: pageHtml(<BuildSheetPage leaf={leaf} root={rootFrom(leaf.path)} />),
    }));
    const [{ changes }] = leaves as [BuildSheet, ...BuildSheet[]];
    return {
      ...(changes ? { changes } : {}),
      pages: [...sheets, ...pricePagesOf(pricings, shop), ...cardPagesOf(variants, shop, hash)],
      printed: leaves.flatMap(({ set, printed }, i) =>
        printed.map(({ link, paper }) => ({
          path: `binder/${link.path}`,
          printed: { ...set, ...(fullSizes[i] ? { fullSize: fullSizes[i] } : {}) },
          paper,
        })),
      ),
    };
  });

/** None where the shop has not said what its time and its selling are worth. */
function pricePagesOf([first, ...others]: readonly Pricing[], shop: Shop): Page[] {
  if (!first || !isPriced(shop)) return [];
  const path = priceSheetPath(first.item.slug);
  const leaf = priceSheetLeaf([first, ...others], shop);
  return [{ path: `binder/${path}`, html: pageHtml(<PriceSheetPage leaf={leaf} root={rootFrom(path)} />) }];
}

/** Words for listing it elsewhere, or why it isn't for sale. `goods` come with their photographs. */
export function listingPageOf(variants: Variants, goods: StoreItem, shop: Shop): Page {
  const path = listingPath(variants[0].slug);
  const leaf = listingSheetLeaf(variants[0], goods, shop);
  return { path: `binder/${path}`, html: pageHtml(<ListingSheetPage leaf={leaf} root={rootFrom(path)} />) };
}

/** None for what isn't for sale. Of the private figures only what is asked at the stall gets onto a card. */
function cardPagesOf(variants: Variants, shop: Shop, hash: string): Page[] {
  if (!isForSale(variants[0])) return [];
  const stall = pricingsFor(variants, shop, hash).flatMap(({ item, channels }) =>
    channels
      .filter(({ channel }) => channel.name === "stall")
      .map((one) => ({ variant: item.variant.slug, price: standing(one).price, tax: one.channel.tax })),
  );
  const path = cardsPath(variants[0].slug);
  const leaf = cardsLeaf(
    storeItemOf(variants, shop, hash),
    storeShop(shop),
    stall,
    assemblyCard(variants[0], shop.division),
  );
  return [{ path: `binder/${path}`, html: pageHtml(<CardsPage leaf={leaf} root={rootFrom(path)} />) }];
}

/** What the wall lets through of one recipe. */
export const storeItemOf = (variants: Variants, shop: Shop, hash: string): StoreItem =>
  storeItems.answer(hash, () => {
    const prices = shownPrices(variants, shop, pricingsFor(variants, shop, hash));
    return storeItem(variants, shop.division, shop.selling, (item) => prices[variants.indexOf(item)]);
  });

/** From here on the store knows nothing but its own item and its own shop. */
export const storePagesOf = (
  item: StoreItem,
  shop: ReturnType<typeof storeShop>,
  feed: boolean,
  hash: string,
): readonly Page[] =>
  storePages.answer(hashOf(hash, JSON.stringify(shop), String(feed), JSON.stringify(item.photos)), () => {
    const path = productPagePath(item.slug);
    const leaf = productPageLeaf(item, shop, feed);
    const cards = item.variants.map((variant) => {
      const cardPath = careCardPath(item.slug, variant.slug);
      const card = careCardLeaf(item, variant, shop);
      return { path: `store/${cardPath}`, html: pageHtml(<CareCardPage leaf={card} root={rootFrom(cardPath)} />) };
    });
    const sparesAt = sparesPath(item.slug);
    const spares = sparesPageLeaf(item, shop, feed);
    return [
      { path: `store/${path}`, html: pageHtml(<ProductPageView leaf={leaf} root={rootFrom(path)} />) },
      { path: `store/${sparesAt}`, html: pageHtml(<SparesPageView leaf={spares} root={rootFrom(sparesAt)} />) },
      ...cards,
    ];
  });

/** Lets go of pages that were in neither this round nor the one before. */
export function forgetOldPages(): void {
  binders.turn();
  storePages.turn();
  storeItems.turn();
  forgetOldPricings();
}
