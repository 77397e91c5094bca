// Worked-out items -> the binder's first page: every build sheet with what one needs to find it by.
import { isPriced } from "../findings/pricing.ts";
import type { Item } from "../item/item.ts";
import { slug } from "../units/slug.ts";
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
  /** The tabs of the binder: one for each line, goods of no line last. */
  readonly tabs: readonly { readonly name: string; readonly id: string; readonly sheets: readonly IndexSheet[] }[];
};

export type IndexSheet = {
  readonly link: Link;
  readonly prices?: Link;
  readonly sizes: string;
  readonly weight: string;
  readonly pieces: string;
  readonly variants: string;
  readonly listing: Link;
  /** Where it is for sale. */
  readonly cards?: Link;
  /** Why it is not in the store. */
  readonly barred?: string;
  /** Its revision and day; what moved since it was printed last. */
  readonly revision?: string;
  readonly changes?: readonly string[];
};

/** One line for each item, given by its standard variant. */
export function binderIndexLeaf(
  items: readonly Item[],
  shop: Shop,
  orders = 0,
  changes: ReadonlyMap<string, readonly string[] | undefined> = new Map(),
): BinderIndex {
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
    tabs: tabsOf(items, (item) => {
      const moved = changes.get(item.slug);
      return {
        ...barredOf(item),
        ...revisionOf(item),
        ...(moved ? { changes: moved } : {}),
        link: { path: buildSheetPath(item.slug), text: item.title },
        ...(isPriced(shop) ? { prices: { path: priceSheetPath(item.slug), text: "Prices" } } : {}),
        sizes: threeSizes([item.overall.width, item.overall.depth, item.overall.height], shop.division),
        weight: edition.weight(item.weight),
        pieces: String(item.members.length),
        variants: variantsText(item),
        listing: { path: listingPath(item.slug), text: "Listing" },
        ...cardsLink(item),
      };
    }),
  };
}

/** Lines in the order in which their first thing comes. */
function tabsOf(items: readonly Item[], sheet: (item: Item) => IndexSheet): BinderIndex["tabs"] {
  const lines = [...new Set(items.flatMap(({ line }) => line ?? []))];
  return [...lines, undefined].flatMap((line) => {
    const own = items.filter((item) => item.line === line);
    const name = line ?? "Single things";
    return own.length === 0 ? [] : [{ name, id: `line-${slug(name) || "other"}`, sheets: own.map(sheet) }];
  });
}

function revisionOf({ revisions }: Item): { readonly revision?: string } {
  const last = revisions.at(-1);
  return last ? { revision: `Revision ${revisions.length}, ${last.day}` } : {};
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
