// Store items of one line -> its page: all from the front at one scale, and what they have in common.
import { drawFrontsSideBySide } from "../drawing/fronts.ts";
import { lighten } from "../drawing/lighten.ts";
import { phoneSheet } from "../drawing/sheet.ts";
import { slug } from "../units/slug.ts";
import { availabilityOfAll } from "./availability-words.ts";
import { setFractions, storeEdition, tenth, threeSizes } from "./edition.ts";
import type { Fact, Link, Picture, Table } from "./leaf.ts";
import { type OnTheWeb, onTheWeb } from "./on-the-web.ts";
import { indexPath, linePagePath, productPagePath } from "./paths.ts";
import { pictureOf } from "./picture.ts";
import type { StoreItem, StoreShop } from "./store-item.ts";
import { priceRange } from "./store-price.ts";

export type LinePage = {
  readonly title: string;
  readonly description: string;
  readonly shop: StoreShop;
  readonly fronts: Picture;
  readonly common: readonly Fact[];
  readonly goods: Table;
  readonly links: readonly Link[];
  readonly home: Link;
  readonly web?: OnTheWeb;
};

/** Wide enough for the whole page, low enough to be seen at once. */
const wideSheet = { width: 200, height: 85, type: 3.6 } as const;

/** `items` are those of this line, at least one. */
export function linePageLeaf(line: string, items: readonly StoreItem[], shop: StoreShop, feed = false): LinePage {
  const path = linePagePath(line);
  const web = onTheWeb(shop, { path, kind: "website", hasFeed: feed });
  const inch = shop.division.unit === "in" ? shop.division : ({ unit: "in", per: 16 } as const);
  const standing = items.map((item) => {
    const { width, height } = item.overall;
    return {
      front: item.front,
      name: item.title,
      sizes: [`${threeSizes([width, height], inch)}`, `(${threeSizes([width, height], { unit: "mm" })})`],
    };
  });
  const id = `${slug(line)}-line`;
  const title = `${line}: from the front, all to one scale`;
  const wide = drawFrontsSideBySide(`${id}-wide`, title, standing, wideSheet);
  const narrow = drawFrontsSideBySide(`${id}-phone`, title, standing, phoneSheet);
  return {
    title: line,
    description: `${line} of ${shop.name}: ${items.map((item) => item.title.toLowerCase()).join(", ")}, side by side at one scale.`,
    shop,
    fronts: { ...pictureOf(lighten(wide)), narrow: pictureOf(lighten(narrow)).svg },
    common: commonTo(items, shop),
    goods: tableOf(items, shop),
    links: items.map((item) => ({ path: productPagePath(item.slug), text: item.title })),
    home: { path: indexPath, text: shop.name },
    ...(web ? { web } : {}),
  };
}

/** What every one of them has. */
function shared<T>(items: readonly StoreItem[], of: (item: StoreItem) => readonly T[]): T[] {
  const [first, ...others] = items.map(of);
  return [...new Set(first ?? [])].filter((one) => others.every((all) => all.includes(one)));
}

function commonTo(items: readonly StoreItem[], shop: StoreShop): Fact[] {
  if (items.length < 2) return [];
  const { length } = storeEdition(shop.division);
  const fact = (name: string, values: readonly string[]): Fact[] =>
    values.length === 0 ? [] : [{ name, value: values.join("; ") }];
  return [
    ...fact(
      "Wood",
      shared(items, ({ woods }) => woods),
    ),
    ...fact(
      "Boards",
      shared(items, ({ spares }) =>
        spares.map(({ width, thickness }) => `${length(width)} wide, ${length(thickness)} thick`),
      ),
    ),
    ...fact(
      "Gaps",
      shared(items, ({ gapMovements }) => gapMovements.map(({ made }) => tenth(made))),
    ),
    ...fact(
      "Finishes",
      shared(items, ({ variants }) => variants.map(finishText)),
    ),
  ];
}

const finishText = ({ name, coats }: StoreItem["variants"][number]): string =>
  coats.length === 0 ? `${name} (bare wood)` : `${name} (${coats.map(({ words }) => words).join(", ")})`;

function tableOf(items: readonly StoreItem[], shop: StoreShop): Table {
  const { weight } = storeEdition(shop.division);
  const inch = shop.division.unit === "in" ? shop.division : ({ unit: "in", per: 16 } as const);
  const sizes = ({ overall: { width, depth, height } }: StoreItem) =>
    `${setFractions(threeSizes([width, depth, height], inch))} (${threeSizes([width, depth, height], { unit: "mm" })})`.replaceAll(
      "\u00a0×",
      " ×",
    );
  return {
    caption: "Each as it is sold",
    heads: ["Goods", "Width × depth × height", "Weight", "Finishes", "Price", "When"],
    rows: items.map((item) => [
      item.title,
      sizes(item),
      `about ${weight(item.offers[0].weight)}`,
      item.variants.map(({ name }) => name).join(", "),
      priceRange(item.offers.flatMap(({ price }) => (price ? [price] : []))) ?? "ask us",
      availabilityOfAll(item.offers),
    ]),
  };
}

/** Lines in the order in which their first thing comes. */
export const linesOf = (items: readonly StoreItem[]): { readonly line: string; readonly items: StoreItem[] }[] =>
  [...new Set(items.flatMap(({ line }) => (line === undefined ? [] : [line])))].map((line) => ({
    line,
    items: items.filter((item) => item.line === line),
  }));
