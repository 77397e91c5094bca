// Store items and shop -> the page on care: what holds for all, what each finish asks for, and the way to every care card.
import { careCardLeaf } from "./care-card.ts";
import type { Link, Notice } from "./leaf.ts";
import { type OnTheWeb, onTheWeb } from "./on-the-web.ts";
import { careCardPath, carePath, indexPath } from "./paths.ts";
import type { StoreItem, StoreShop } from "./store-item.ts";
import { unfinishedNotice } from "./unfinished.ts";

export type CarePage = {
  readonly title: string;
  readonly description: string;
  readonly shop: StoreShop;
  readonly always: string;
  readonly coats: readonly { readonly words: string; readonly care: string }[];
  /** Where something is sold bare. */
  readonly unfinished?: Notice;
  readonly goods: readonly {
    readonly title: string;
    readonly care: readonly string[];
    readonly cards: readonly Link[];
  }[];
  readonly home: Link;
  readonly web?: OnTheWeb;
};

export function carePageLeaf(items: readonly StoreItem[], shop: StoreShop, feed = false): CarePage {
  const web = onTheWeb(shop, { path: carePath, kind: "website", hasFeed: feed });
  const coats = new Map(
    items.flatMap(({ variants }) => variants.flatMap((one) => one.coats.map(({ words, care }) => [words, care]))),
  );
  return {
    title: "How to look after it",
    description: `Care of what ${shop.name} makes: each finish, bare wood, and a card for every piece of goods.`,
    shop,
    always: shop.careNote,
    coats: [...coats].map(([words, care]) => ({ words, care })),
    ...(items.some(({ variants }) => variants.some(({ unfinished }) => unfinished))
      ? { unfinished: unfinishedNotice }
      : {}),
    goods: items.map((item) => ({
      title: item.title,
      care: ownCare(item, shop),
      cards: item.variants.map(({ slug, name }) => ({
        path: careCardPath(item.slug, slug),
        text: `${item.title}, ${name}`,
      })),
    })),
    home: { path: indexPath, text: shop.name },
    ...(web ? { web } : {}),
  };
}

/** What its cards say beside the finish and the shop's own note. */
function ownCare(item: StoreItem, shop: StoreShop): string[] {
  const coats = new Set(item.variants.flatMap((variant) => variant.coats.map(({ care }) => care)));
  return [...new Set(item.variants.flatMap((variant) => careCardLeaf(item, variant, shop).care))].filter(
    (line) => !coats.has(line) && line !== shop.careNote,
  );
}
