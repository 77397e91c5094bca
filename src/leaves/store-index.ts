// Store items -> the store's front page: goods by line, each with its drawing and sizes.
import { inches } from "../units/length.ts";
import { setFractions, threeSizes } from "./edition.ts";
import { hasFeed } from "./feed.ts";
import type { Link, Picture } from "./leaf.ts";
import { type OnTheWeb, onTheWeb } from "./on-the-web.ts";
import { indexPath, productPagePath } from "./paths.ts";
import { pictureOf } from "./picture.ts";
import type { StoreItem, StoreShop } from "./store-item.ts";

export type StoreIndex = {
  readonly title: string;
  readonly description: string;
  readonly shop: StoreShop;
  readonly web?: OnTheWeb;
  readonly lines: readonly { readonly name: string; readonly goods: readonly Good[] }[];
};

type Good = {
  readonly link: Link;
  readonly picture: Picture;
  readonly purpose?: string;
  readonly inch: string;
  readonly metric: string;
  /** "3 sizes, 2 finishes: oil, limewash". */
  readonly choice: string;
};

/** Goods of no line stand together under "Goods". Lines and goods keep the order they come in. */
export function storeIndexLeaf(items: readonly StoreItem[], shop: StoreShop): StoreIndex {
  const names = [...new Set(items.map((item) => item.line ?? "Goods"))];
  const web = onTheWeb(shop, { path: indexPath, kind: "website", hasFeed: hasFeed(items, shop) });
  return {
    title: shop.name,
    description: shop.tagline,
    shop,
    ...(web ? { web } : {}),
    lines: names.map((name) => ({
      name,
      goods: items.filter((item) => (item.line ?? "Goods") === name).map((item) => good(item, shop)),
    })),
  };
}

function choiceText({ forms, variants }: StoreItem): string {
  const sizes = new Set(forms.map(({ overall }) => Object.values(overall).map(inches).join(" ")));
  const word = sizes.size === forms.length ? "sizes" : "versions";
  const finishes = `${variants.length === 1 ? "1 finish" : `${variants.length} finishes`}: ${variants.map(({ name }) => name).join(", ")}`;
  return forms.length < 2 ? finishes : `${forms.length} ${word}, ${finishes}`;
}

function good(item: StoreItem, shop: StoreShop): Good {
  const sizes = [item.overall.width, item.overall.depth, item.overall.height];
  const inch = shop.division.unit === "in" ? shop.division : ({ unit: "in", per: 16 } as const);
  return {
    link: { path: productPagePath(item.slug), text: item.title },
    picture: pictureOf(item.variants[0].view),
    ...(item.purpose === undefined ? {} : { purpose: item.purpose }),
    inch: setFractions(threeSizes(sizes, inch)),
    metric: threeSizes(sizes, { unit: "mm" }),
    choice: choiceText(item),
  };
}
