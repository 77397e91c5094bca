// Store item -> product page: what the buyer sees and needs to know, every figure already text.
import { cautionsForUse } from "../findings/cautions.ts";
import { smallChange, storeEdition, threeSizes } from "./edition.ts";
import { formsForStore } from "./forms-table.ts";
import type { CautionText, Fact, Link, Markup, Notice, Picture, Table } from "./leaf.ts";
import { type OnTheWeb, onTheWeb } from "./on-the-web.ts";
import { careCardPath, indexPath, productPagePath } from "./paths.ts";
import { pictureOf } from "./picture.ts";
import { dataMarkup, productData } from "./product-data.ts";
import { proseBlock, proseText } from "./prose.ts";
import type { StoreItem, StoreShop, StoreVariant } from "./store-item.ts";
import { unfinishedNotice } from "./unfinished.ts";
import { useFacts } from "./use-facts.ts";
import { madeFor, notMadeFor } from "./uses.ts";

export type ProductPage = {
  readonly title: string;
  /** For search and link previews, one line. */
  readonly description: string;
  readonly shop: StoreShop;
  readonly line?: string;
  readonly purpose?: string;
  readonly intro: readonly Markup[];
  readonly measured: Picture;
  /** Says that the pictures are drawings. */
  readonly pictureNote: string;
  readonly sizes: readonly Fact[];
  /** What differs between the choices other than finishes. */
  readonly choices?: Table;
  readonly wood: readonly string[];
  readonly included: readonly string[];
  readonly finishes: readonly Finish[];
  readonly madeFor: readonly string[];
  readonly notMadeFor: readonly string[];
  readonly overTime: readonly string[];
  readonly cautions: readonly CautionText[];
  /** What comes with a thing for children. */
  readonly duties: readonly string[];
  readonly home: Link;
  readonly data: Markup;
  readonly web?: OnTheWeb;
};

type Finish = {
  readonly name: string;
  readonly standard: boolean;
  /** "two coats of white water-based paint", each on its own line; then "left bare: part of it", where that is so. */
  readonly coats: readonly string[];
  readonly picture: Picture;
  readonly unfinished?: Notice;
  readonly care: Link;
};

/** `feed`: whether the store has one. */
export function productPageLeaf(item: StoreItem, shop: StoreShop, feed = false): ProductPage {
  const edition = storeEdition(shop.division);
  const { width, depth, height } = item.overall;
  const [standard] = item.variants;
  const sizes = [
    { name: "Width", value: edition.length(width) },
    { name: "Depth", value: edition.length(depth) },
    { name: "Height", value: edition.length(height) },
    { name: "Weight", value: `about ${edition.weight(standard.weight)}` },
    ...(item.packed ? [packedFact(item.packed)] : []),
    ...useFacts(item, edition.weight),
  ];
  const description = item.purpose ?? item.intro.map((prose) => proseText(prose, edition.figure)).join(" ");
  const web = onTheWeb(shop, { path: productPagePath(item.slug), kind: "product", item, hasFeed: feed });
  return {
    title: item.title,
    description,
    shop,
    ...(item.line === undefined ? {} : { line: item.line }),
    ...(item.purpose === undefined ? {} : { purpose: item.purpose }),
    intro: item.intro.map((prose) => proseBlock(prose, edition.figure)),
    measured: { ...pictureOf(item.measured), narrow: pictureOf(item.measuredNarrow).svg },
    pictureNote:
      "Drawn from the measurements it is built to. A drawing, not a photograph: grain and colour of the wood differ.",
    sizes,
    ...(item.forms.length > 1 ? { choices: formsForStore(item.forms, edition.length, edition.weight) } : {}),
    wood: item.woods,
    included: item.fittings.map(({ words, count }) => (count === 1 ? words : `${count} × ${words}`)),
    finishes: item.variants.map((variant) => finishOf(item, variant, variant === standard)),
    madeFor: madeFor(item.use, edition.weight),
    notMadeFor: notMadeFor(item.use),
    overTime: overTime(item),
    cautions: cautionsForUse(item.use, edition.weight),
    duties: item.classes.includes("C") ? childDuties : [],
    home: { path: indexPath, text: shop.name },
    data: dataMarkup(productData(item, shop, description)),
    ...(web ? { web } : {}),
  };
}

/** Will it fit: the box to hold against a car or a door; each size from the model, with the padding. */
function packedFact(packed: NonNullable<StoreItem["packed"]>): Fact {
  const [, middle, short] = packed;
  const both = (sizes: readonly number[]) =>
    `${threeSizes(sizes, { unit: "in", per: 8 })} (${threeSizes(sizes, { unit: "mm" })})`;
  return {
    name: "Packed size",
    // Three sizes on one line are too wide for the smallest phone.
    value: `${both(packed)}; it goes through an opening of ${both([middle, short])}`.replaceAll("\u00a0×", " ×"),
  };
}

/** Only what has the evidence for it comes here. */
const childDuties = [
  "Each one carries a lasting label with maker, place, date and lot: keep it on, so that you can be reached.",
  "A certificate says which safety rules it was made to; ask for it.",
];

const finishOf = (item: StoreItem, variant: StoreVariant, standard: boolean): Finish => ({
  name: variant.name,
  standard,
  coats: [
    ...variant.coats.map(({ words, coats }) => `${coats === 1 ? "one coat" : `${coats} coats`} of ${words}`),
    ...(variant.bare === undefined ? [] : [`left bare: ${variant.bare}`]),
  ],
  picture: pictureOf(variant.view),
  ...(variant.unfinished ? { unfinished: unfinishedNotice } : {}),
  care: { path: careCardPath(item.slug, variant.slug), text: `Care card: ${variant.name}` },
});

function overTime(item: StoreItem): string[] {
  const swelling =
    item.swell === undefined
      ? []
      : [
          `Wood swells when it is wet and shrinks when it is dry: over a year outdoors a board's width changes by up to ${smallChange(item.swell)}${item.use.hasGaps ? ", and the gaps close and open by as much" : ""}.`,
        ];
  const bare = item.variants.some((variant) => variant.unfinished || variant.bare !== undefined)
    ? ["Bare wood in the open turns silver grey, sooner on the side that gets the sun and the rain."]
    : [];
  return [...swelling, ...bare];
}
