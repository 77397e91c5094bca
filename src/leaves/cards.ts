// Store item, its stall prices and the shop -> cards to cut out: hang tags, stall price cards, care cards, packing slips, several on a sheet.
import type { Exact } from "../units/length.ts";
import { formatDollars } from "../units/money.ts";
import type { AssemblyCard } from "./assembly-card.ts";
import { type CareCard, careCardLeaf } from "./care-card.ts";
import { storeEdition, threeSizes } from "./edition.ts";
import type { Fact, Link } from "./leaf.ts";
import { buildSheetPath, indexPath } from "./paths.ts";
import type { StoreItem, StoreOffer, StoreShop, StoreVariant } from "./store-item.ts";

/** Hung on the goods: what it is, and lines left open for the pen. */
export type HangTag = {
  readonly title: string;
  readonly variant: string;
  readonly facts: readonly Fact[];
  readonly unfinished: boolean;
  readonly toFill: readonly string[];
};

/** Stands before the goods at the stall. */
export type StallCard = {
  readonly title: string;
  readonly variant: string;
  readonly price: string;
  readonly tax: string;
  readonly sizes: string;
};

/** Lies in the parcel; no price is on it. */
export type PackingSlip = {
  readonly title: string;
  /** To be ticked; empty where there is only one. */
  readonly variants: readonly string[];
  readonly included: readonly string[];
  readonly care: string;
  readonly says: readonly string[];
  readonly toFill: readonly string[];
};

/** Sheets of one sort of card, each full: where there are fewer cards than fit, they come again. */
export type CardSheets<K extends string, C> = {
  readonly kind: K;
  readonly title: string;
  /** "10 on a sheet, each 88 × 52 mm". */
  readonly says: string;
  readonly sheets: readonly (readonly C[])[];
};

export type Cards = {
  readonly title: string;
  readonly description: string;
  readonly shop: StoreShop;
  readonly home: Link;
  readonly buildSheet: Link;
  readonly tags: CardSheets<"tag", HangTag>;
  /** None where nothing is sold at a stall. */
  readonly stall?: CardSheets<"stall", StallCard>;
  readonly care: CardSheets<"care", CareCard>;
  readonly slips: CardSheets<"slip", PackingSlip>;
  /** Where the buyer puts it together. */
  readonly assembly?: CardSheets<"assembly", AssemblyCard>;
};

/** Cards on a sheet, and millimetres of one; the style sheet has the same. All fit Letter and A4 with 6 mm free at every edge. */
export const cardSizes = {
  tag: { each: 10, width: 88, height: 52 },
  stall: { each: 8, width: 92, height: 62 },
  care: { each: 2, width: 96, height: 146 },
  slip: { each: 2, width: 184, height: 128 },
  assembly: { each: 1, width: 184, height: 256 },
} as const;

/** What is asked at the stall for a variant, by its slug, and whether the sales tax is in it. */
export type StallPrice = { readonly variant: string; readonly price: Exact; readonly tax: "in" | "out" };

export function cardsLeaf(
  item: StoreItem,
  shop: StoreShop,
  stall: readonly StallPrice[],
  assembly?: AssemblyCard,
): Cards {
  const priced = item.offers.flatMap((offer) => {
    const found = stall.find(({ variant }) => variant === offer.slug);
    return found ? [stallCard(item, offer, found, shop)] : [];
  });
  return {
    title: `${item.title}: cards`,
    description: "Hang tags, stall price cards, care cards and packing slips to cut out.",
    shop,
    home: { path: indexPath, text: "Binder" },
    buildSheet: { path: buildSheetPath(item.slug), text: "Build sheet" },
    tags: sheetsOf(
      "tag",
      "Hang tags",
      item.variants.map((variant) => hangTag(item, variant, shop)),
    ),
    ...(priced.length > 0 ? { stall: sheetsOf("stall", "Stall price cards", priced) } : {}),
    care: sheetsOf(
      "care",
      "Care cards",
      item.variants.map((variant) => careCardLeaf(item, variant, shop)),
    ),
    slips: sheetsOf("slip", "Packing slips", [packingSlip(item, shop, assembly !== undefined)]),
    ...(assembly ? { assembly: sheetsOf("assembly", "Assembly card", [assembly]) } : {}),
  };
}

function sheetsOf<K extends keyof typeof cardSizes, C>(kind: K, title: string, cards: readonly C[]): CardSheets<K, C> {
  const { each, width, height } = cardSizes[kind];
  const sheets = Math.ceil(cards.length / each);
  return {
    ...{ kind, title },
    says: `${each} on a sheet, each ${width} × ${height} mm (${inInches(width)} × ${inInches(height)} in)`,
    sheets: Array.from({ length: sheets }, (_, sheet) =>
      Array.from({ length: each }, (_, i) => cards[(sheet * each + i) % cards.length] as C),
    ),
  };
}

const inInches = (millimetres: number): string => String(Number((millimetres / 25.4).toFixed(2)));

/** Of several sizes, the size is written on it. */
function hangTag(item: StoreItem, variant: StoreVariant, { division }: StoreShop): HangTag {
  const { width, depth, height } = item.overall;
  const oneSize = item.forms.length < 2;
  return {
    title: item.title,
    variant: variant.name,
    facts: [
      ...(oneSize ? [{ name: "Size", value: threeSizes([width, depth, height], division) }] : []),
      { name: "Wood", value: item.woods.join("; ") },
      { name: "Finish", value: variant.unfinished ? "none" : variant.coats.map(({ words }) => words).join("; ") },
    ],
    unfinished: variant.unfinished,
    // A thing for children carries maker, place, day and lot on itself; its tag says the same.
    toFill: [
      ...(oneSize ? [] : ["Size"]),
      ...(item.classes.includes("C") ? ["Made by, at", "Made on", "Lot"] : ["Lot", "Made on"]),
    ],
  };
}

function stallCard(item: StoreItem, offer: StoreOffer, { price, tax }: StallPrice, { division }: StoreShop): StallCard {
  const { width, depth, height } = offer.overall;
  const sold = item.soldAs ? `for a ${item.soldAs.words}, ` : "";
  return {
    title: item.title,
    variant: offer.name,
    price: formatDollars(price).replace(/\.00$/, ""),
    tax: `${sold}${tax === "in" ? "sales tax in it" : "sales tax is added"}`,
    sizes: threeSizes([width, depth, height], division),
  };
}

function packingSlip(item: StoreItem, shop: StoreShop, inParts: boolean): PackingSlip {
  const edition = storeEdition(shop.division);
  const count = item.soldAs?.count ?? 1;
  const [first] = item.offers;
  return {
    title: item.title,
    variants: item.offers.length > 1 && item.offers.length <= 8 ? item.offers.map(({ name }) => name) : [],
    included: [
      `${count} × ${item.title.toLowerCase()}${item.offers.length > 1 ? "" : `, ${edition.weight(first.weight)}`}`,
      ...item.fittings.map(({ words, count: many }) => `${many} × ${words}`),
      ...(inParts ? ["1 × assembly card", "1 × bag of fasteners, as the assembly card counts them"] : []),
      "1 × care card",
    ],
    care: shop.careNote,
    says: [
      ...(shop.returns === undefined ? [] : [shop.returns]),
      `If anything is missing or not as you ordered it, tell us: ${shop.contact}`,
    ],
    toFill: [
      ...(item.offers.length > 8 ? ["Variant"] : []),
      ...(item.sayings.length > 0 ? ["Words on it"] : []),
      "Order",
      "Packed by, on",
      "Lot",
    ],
  };
}
