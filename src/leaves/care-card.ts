// Store item and one of its variants -> care card, one small side to go with the goods.
import { cautionsForUse } from "../findings/cautions.ts";
import type { Length } from "../units/length.ts";
import { storeEdition } from "./edition.ts";
import type { CautionText, Fact, Link, Notice } from "./leaf.ts";
import { indexPath, productPagePath } from "./paths.ts";
import type { StoreItem, StoreShop, StoreVariant } from "./store-item.ts";
import { unfinishedNotice } from "./unfinished.ts";
import { careWords } from "./uses.ts";

export type CareCard = {
  readonly title: string;
  readonly variant: string;
  readonly description: string;
  readonly shop: StoreShop;
  readonly facts: readonly Fact[];
  readonly unfinished?: Notice;
  readonly care: readonly string[];
  readonly cautions: readonly CautionText[];
  /** Lines left open for the pen. */
  readonly toFill: readonly string[];
  readonly product: Link;
  readonly home: Link;
};

export function careCardLeaf(item: StoreItem, variant: StoreVariant, shop: StoreShop): CareCard {
  const edition = storeEdition(shop.division);
  return {
    title: item.title,
    variant: variant.name,
    description: `How to look after the ${item.title.toLowerCase()}, ${variant.name}.`,
    shop,
    facts: [
      ...sizesOf(item, edition.length),
      { name: "Wood", value: woodsOf(item).join("; ") },
      { name: "Finish", value: variant.unfinished ? "none" : variant.coats.map((coat) => coat.words).join("; ") },
      ...(variant.bare === undefined ? [] : [{ name: "Left bare", value: variant.bare }]),
    ],
    ...(variant.unfinished ? { unfinished: unfinishedNotice } : {}),
    care: [...new Set([...variant.coats.map((coat) => coat.care), ...careWords(item.use), shop.careNote])].filter(
      (line) => line.trim() !== "",
    ),
    cautions: cautionsForUse(item.use, edition.weight),
    // A thing for children carries a label with the same four.
    toFill: [
      ...(isOneSize(item) ? [] : ["Size"]),
      ...(item.classes.includes("C") ? ["Made by", "Made at", "Made on", "Lot"] : ["Lot", "Made on"]),
    ],
    home: { path: indexPath, text: shop.name },
    product: { path: productPagePath(item.slug), text: item.title },
  };
}

/** One card holds for all sizes of a finish: where there are several, the size is written on it. */
const isOneSize = (item: StoreItem): boolean => item.forms.length < 2;

function sizesOf(item: StoreItem, length: (inches: Length) => string): Fact[] {
  const { width, depth, height } = item.overall;
  return isOneSize(item)
    ? [
        { name: "Wide", value: length(width) },
        { name: "Deep", value: length(depth) },
        { name: "High", value: length(height) },
      ]
    : [];
}

const woodsOf = (item: StoreItem): string[] => [
  ...new Set([...item.woods, ...item.forms.flatMap(({ woods }) => woods)]),
];
