// Store item and one of its variants -> care card, one small side to go with the goods.
import { cautionsForUse } from "../findings/cautions.ts";
import { storeEdition } from "./edition.ts";
import type { CautionText, Fact, Link, Notice } from "./leaf.ts";
import { indexPath, productPagePath } from "./paths.ts";
import type { StoreItem, StoreShop, StoreVariant } from "./store-item.ts";
import { unfinishedNotice } from "./unfinished.ts";

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
  const { width, depth, height } = item.overall;
  return {
    title: item.title,
    variant: variant.name,
    description: `How to look after the ${item.title.toLowerCase()}, ${variant.name}.`,
    shop,
    facts: [
      { name: "Wide", value: edition.length(width) },
      { name: "Deep", value: edition.length(depth) },
      { name: "High", value: edition.length(height) },
      { name: "Wood", value: item.woods.join("; ") },
      { name: "Finish", value: variant.unfinished ? "none" : variant.coats.map((coat) => coat.words).join("; ") },
      ...(variant.bare === undefined ? [] : [{ name: "Left bare", value: variant.bare }]),
    ],
    ...(variant.unfinished ? { unfinished: unfinishedNotice } : {}),
    care: [...new Set([...variant.coats.map((coat) => coat.care), shop.careNote])].filter((line) => line.trim() !== ""),
    cautions: cautionsForUse(item.classes),
    // A thing for children carries a label with the same four.
    toFill: item.classes.includes("C") ? ["Made by", "Made at", "Made on", "Lot"] : ["Lot", "Made on"],
    home: { path: indexPath, text: shop.name },
    product: { path: productPagePath(item.slug), text: item.title },
  };
}
