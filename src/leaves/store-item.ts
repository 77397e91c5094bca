// Worked-out variants -> what the store may know of an item. The wall: leaves of the store take this and never an Item.

import { drawCoatedView } from "../drawing/coated-view.ts";
import type { Drawing } from "../drawing/drawing.ts";
import { drawFrontView } from "../drawing/front-view.ts";
import { drawMeasuredView } from "../drawing/measured-view.ts";
import { phoneSheet, storeSheet } from "../drawing/sheet.ts";
import { drawSpareView } from "../drawing/spare-view.ts";
import { parcelOf } from "../findings/billed-weight.ts";
import { type GapMovement, gapMovements } from "../findings/gap-movement.ts";
import { type Heights, heightsOf } from "../findings/heights.ts";
import { movementOf } from "../findings/movement.ts";
import { type Use, useOf } from "../findings/use.ts";
import type { Item, Piece, WorkedProse } from "../item/item.ts";
import { type FormFacts, formFacts, formsOf } from "../item/variants/forms.ts";
import type { Availability, HazardClass } from "../recipe/recipe.ts";
import type { Division } from "../units/division.ts";
import { compareLengths, type Length } from "../units/length.ts";
import type { Selling } from "../yard/shop-rates.ts";
import type { Shop } from "../yard/yard.ts";
import { finishName } from "./finish-name.ts";
import type { StorePrice } from "./store-price.ts";
import { bareWords } from "./unfinished.ts";
import { type CarriedLoad, carriedBy } from "./use-facts.ts";

/** The shop as it shows itself: no wage, no notes. */
export type StoreShop = Pick<
  Shop,
  | "name"
  | "tagline"
  | "notice"
  | "place"
  | "contact"
  | "address"
  | "ordering"
  | "about"
  | "pickup"
  | "delivery"
  | "returns"
  | "careNote"
  | "division"
>;

export type StoreCoat = {
  readonly words: string;
  readonly colour: string;
  readonly coats: number;
  readonly care: string;
};

export type StoreVariant = {
  readonly slug: string;
  /** The finish alone: the store shows the other choices in a table. */
  readonly name: string;
  readonly unfinished: boolean;
  /** What is left bare though the rest is coated, in public words. */
  readonly bare?: string;
  readonly coats: readonly StoreCoat[];
  readonly weight: number;
  readonly view: Drawing;
};

/** One thing that can be bought: a variant as it is sold. */
export type StoreOffer = {
  readonly slug: string;
  readonly name: string;
  /** What of the name isn't the finish; empty where there is no other choice. */
  readonly form: string;
  readonly overall: StoreItem["overall"];
  /** Pounds of one sold thing: of a pair, of both. */
  readonly weight: number;
  readonly availability: Availability;
  readonly price?: StorePrice;
};

/** A photograph made ready for the store: its files by width, each in both formats. */
export type StorePhoto = {
  /** The number and the words of its file's name. */
  readonly number: number;
  readonly words: string;
  readonly sizes: readonly {
    readonly width: number;
    readonly height: number;
    readonly webp: string;
    readonly jpeg: string;
  }[];
};

/** One kind of piece, as somebody needs it who has to replace one. */
export type StorePiece = {
  readonly mark: string;
  /** In one thing sold. */
  readonly count: number;
  readonly length: Length;
  readonly width: Length;
  readonly thickness: Length;
  readonly words: string;
  /** Whether its ends or edges aren't square, or something is cut into it. */
  readonly shaped: boolean;
  /** Pounds of one. */
  readonly weight: number;
  readonly view: Drawing;
};

export type StoreItem = {
  readonly title: string;
  readonly slug: string;
  readonly line?: string;
  /** The day it came into the store. */
  readonly listed?: string;
  readonly purpose?: string;
  readonly classes: readonly HazardClass[];
  readonly intro: readonly WorkedProse[];
  readonly overall: { readonly width: Length; readonly depth: Length; readonly height: Length };
  /** Public words for each kind of board: "western redcedar, not treated". */
  readonly woods: readonly string[];
  /** Public words of what comes with it that is not wood, and how many with all that is sold as one. */
  readonly fittings: readonly { readonly words: string; readonly count: number }[];
  /** Inches by which its widest board swells from dry to wet. */
  readonly swell?: number;
  /** How it is used: what the words on use, cautions and care are chosen by. */
  readonly use: Use;
  /** Packed as it is sold: whole inches, longest first. */
  readonly packed?: readonly [number, number, number];
  /** Its sizes drawn, for wide screens and for a phone. */
  readonly measured: Drawing;
  readonly measuredNarrow: Drawing;
  /** For pictures twice as wide as high: its type stays readable there. */
  readonly measuredLow: Drawing;
  /** In every finish, the standard one first; where there are other choices, those with their standard values. */
  readonly variants: readonly [StoreVariant, ...StoreVariant[]];
  /** Every form, where there are other choices than finishes. */
  readonly forms: readonly Pick<FormFacts, "name" | "overall" | "weight" | "woods">[];
  readonly sayings: Item["sayings"];
  /** Rows of letters on one thing sold: how many, how high their capitals are, how they are put on. */
  readonly rows?: { readonly count: number; readonly height: number; readonly ways: readonly string[] };
  readonly loads: readonly CarriedLoad[];
  /** Every variant, the standard one first. */
  readonly offers: readonly [StoreOffer, ...StoreOffer[]];
  readonly gapMovements: readonly GapMovement[];
  readonly heights: Heights;
  /** From the front, 1 mm to the inch: it stands beside others of its line. */
  readonly front: Drawing;
  /** Of the standard variant. */
  readonly spares: readonly StorePiece[];
  readonly photoWords: Item["photoWords"];
  readonly photos: readonly StorePhoto[];
  readonly madeFor: Item["madeFor"];
  readonly soldAs?: NonNullable<Item["soldAs"]>;
};

export const storeShop = (shop: Shop): StoreShop => ({
  name: shop.name,
  tagline: shop.tagline,
  ...(shop.notice === undefined ? {} : { notice: shop.notice }),
  place: shop.place,
  contact: shop.contact,
  ...(shop.address === undefined ? {} : { address: shop.address }),
  ordering: shop.ordering,
  ...(shop.about === undefined ? {} : { about: shop.about }),
  ...(shop.pickup === undefined ? {} : { pickup: shop.pickup }),
  ...(shop.delivery === undefined ? {} : { delivery: shop.delivery }),
  ...(shop.returns === undefined ? {} : { returns: shop.returns }),
  careNote: shop.careNote,
  division: shop.division,
});

/** What is shown of a variant's prices; undefined where it has none. */
type PriceOf = (item: Item) => StorePrice | undefined;

/** All variants of one recipe, the standard one first. How the shop packs and sells says only how large the parcel is. */
export function storeItem(
  variants: readonly [Item, ...Item[]],
  division: Division,
  selling?: Selling,
  priceOf: PriceOf = () => undefined,
): StoreItem {
  const [item] = variants;
  const movement = movementOf(item);
  const sold = item.soldAs?.count ?? 1;
  const forms = formsOf(variants);
  const [first, ...others] = forms[0].map(storeVariant) as [StoreVariant, ...StoreVariant[]];
  return {
    title: item.title,
    slug: item.slug,
    ...(item.line === undefined ? {} : { line: item.line }),
    ...(item.listed === undefined ? {} : { listed: item.listed }),
    ...(item.purpose === undefined ? {} : { purpose: item.purpose }),
    classes: item.classes,
    intro: item.intro,
    overall: item.overall,
    woods: [...new Set(item.pieces.map((piece) => piece.board.words))],
    fittings: [
      ...item.fittings.map(({ fitting, count }) => ({ words: fitting.words, count: count * sold })),
      ...[...new Set(item.cords.map(({ rope }) => rope.words))].map((words) => ({ words, count: sold })),
    ],
    ...(movement === undefined ? {} : { swell: movement.change }),
    ...(selling ? { packed: parcelOf(item, selling).sizes } : {}),
    measured: drawMeasuredView(item, division),
    measuredNarrow: drawMeasuredView(item, division, phoneSheet),
    measuredLow: drawMeasuredView(item, division, { ...storeSheet, height: storeSheet.width / 2 }),
    variants: [first, ...others],
    forms:
      forms.length < 2
        ? []
        : forms.map(formFacts).map(({ name, overall, weight, woods }) => ({ name, overall, weight, woods })),
    sayings: item.sayings,
    ...rowsOf(item),
    loads: carriedBy(item),
    offers: variants.map((one) => offerOf(one, priceOf(one))) as unknown as StoreItem["offers"],
    gapMovements: gapMovements(item),
    heights: heightsOf(item),
    front: drawFrontView(item),
    spares: item.pieces.map((piece) => spareOf(item, piece)),
    photoWords: item.photoWords,
    photos: [],
    use: useOf(item),
    madeFor: item.madeFor,
    ...(item.soldAs ? { soldAs: item.soldAs } : {}),
  };
}

function rowsOf({ textFields, soldAs }: Item): Pick<StoreItem, "rows"> {
  const [first] = textFields;
  if (!first) return {};
  return { rows: { count: textFields.length * (soldAs?.count ?? 1), height: first.height, ways: first.ways } };
}

const offerOf = (item: Item, price: StorePrice | undefined): StoreOffer => ({
  slug: item.variant.slug,
  name: item.variant.name,
  form: item.variant.formName,
  overall: item.overall,
  weight: item.soldAs?.weight ?? item.weight,
  availability: item.availability,
  ...(price ? { price } : {}),
});

const spareOf = (item: Item, piece: Piece): StorePiece => ({
  mark: piece.mark,
  count: piece.count * (item.soldAs?.count ?? 1),
  length: piece.length,
  width: piece.width,
  thickness: piece.thickness,
  words: piece.board.words,
  shaped:
    piece.outline !== undefined ||
    piece.cuts.length > 0 ||
    piece.ends.some(({ mitre, bevel }) => mitre !== 0 || bevel !== 0) ||
    piece.edges.some((edge) => compareLengths(edge, piece.length) !== 0),
  weight: piece.weight,
  view: drawSpareView(item, piece),
});

function storeVariant(item: Item): StoreVariant {
  const bare = bareWords(item);
  return {
    slug: item.variant.slug,
    name: finishName(item.variant),
    unfinished: item.variant.unfinished,
    ...(bare === undefined ? {} : { bare }),
    coats: item.variant.finish.map(({ finish, coats }) => ({
      words: finish.words,
      colour: finish.colour,
      coats,
      care: finish.care,
    })),
    weight: item.weight,
    view: drawCoatedView(item),
  };
}
