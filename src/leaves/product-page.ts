// Store item -> product page: what the buyer sees and needs to know, every figure already text.
import { lighten } from "../drawing/lighten.ts";
import { cautionsForUse } from "../findings/cautions.ts";
import type { Length } from "../units/length.ts";
import { formatDollars } from "../units/money.ts";
import { availabilityOfAll, availabilityWords } from "./availability-words.ts";
import { type Edition, storeEdition } from "./edition.ts";
import { fitFacts } from "./fit.ts";
import { formsForStore } from "./forms-table.ts";
import { includedOf } from "./included.ts";
import type { CautionText, Fact, Image, Link, Markup, Notice, Photo, Picture, Table } from "./leaf.ts";
import { type OnTheWeb, onTheWeb } from "./on-the-web.ts";
import { type OrderByMessage, orderByMessage, orderLetter } from "./order-by-message.ts";
import { overTime } from "./over-time.ts";
import { aboutPath, careCardPath, carePath, indexPath, linePagePath, productPagePath, sparesPath } from "./paths.ts";
import { photosOf } from "./photos.ts";
import { pictureOf } from "./picture.ts";
import { dataMarkup, productData } from "./product-data.ts";
import { proseBlock, proseText } from "./prose.ts";
import { lookImage } from "./store-images.ts";
import type { StoreItem, StoreOffer, StoreShop, StoreVariant } from "./store-item.ts";
import { priceRange, priceText, priceWords } from "./store-price.ts";
import { unfinishedNotice } from "./unfinished.ts";
import { useFacts } from "./use-facts.ts";
import { madeFor, notMadeFor } from "./uses.ts";
import { type Origin, originsOf } from "./where-from.ts";
import { whomFacts } from "./whom-for.ts";

export type ProductPage = {
  readonly title: string;
  /** For search and link previews, one line. */
  readonly description: string;
  readonly shop: StoreShop;
  readonly line?: Link;
  readonly purpose?: string;
  readonly intro: readonly Markup[];
  /** "$84.00 to $112.00" and what is in it. */
  readonly price?: { readonly text: string; readonly says: string };
  readonly availability: string;
  /** Where there are none yet, the drawing that says it is one stands in their place. */
  readonly photos: readonly Photo[];
  readonly look: Image;
  readonly lookNote: string;
  readonly measured: Picture;
  /** Says that the pictures are drawings. */
  readonly pictureNote: string;
  readonly sizes: readonly Fact[];
  /** Whether it goes through a door and into a car; empty where the shop says nothing of packing. */
  readonly fit: readonly Fact[];
  readonly offers: readonly OfferLine[];
  /** What differs between the choices other than finishes. */
  readonly choices?: Table;
  /** What words of the buyer's own cost on top. */
  readonly ownWords?: string;
  readonly wood: readonly string[];
  readonly included: readonly string[];
  readonly finishes: readonly Finish[];
  readonly madeFor: readonly string[];
  readonly notMadeFor: readonly string[];
  readonly whom: readonly Fact[];
  readonly overTime: readonly string[];
  readonly cautions: readonly CautionText[];
  /** What comes with a thing for children. */
  readonly duties: readonly string[];
  readonly order: OrderByMessage;
  readonly terms: readonly Fact[];
  readonly origins: readonly Origin[];
  readonly links: readonly Link[];
  readonly home: Link;
  readonly data: Markup;
  readonly web?: OnTheWeb;
};

/** One variant that can be bought. `letter` opens a mail that is already written. */
export type OfferLine = {
  readonly name: string;
  readonly price: string;
  readonly availability: string;
  readonly weight: string;
  readonly letter?: string;
  /** What stands in its place. */
  readonly instead: string;
  /** For those who don't see that all the links lead to different letters. */
  readonly letterText: string;
};

type Finish = {
  readonly name: string;
  readonly standard: boolean;
  /** "two coats of white water-based paint", each on its own line; then "left bare: part of it", where that is so. */
  readonly coats: readonly string[];
  readonly picture: Image;
  readonly price?: string;
  readonly unfinished?: Notice;
  readonly care: Link;
};

/** `feed`: whether the store has one. */
export function productPageLeaf(item: StoreItem, shop: StoreShop, feed = false): ProductPage {
  const edition = storeEdition(shop.division);
  const [standard] = item.variants;
  const description = item.purpose ?? item.intro.map((prose) => proseText(prose, edition.figure)).join(" ");
  const web = onTheWeb(shop, { path: productPagePath(item.slug), kind: "product", item, hasFeed: feed });
  const cautions = cautionsForUse(item.use, edition.weight);
  const price = priceOf(item);
  return {
    title: item.title,
    description,
    shop,
    ...(item.line === undefined ? {} : { line: { path: linePagePath(item.line), text: item.line } }),
    ...(item.purpose === undefined ? {} : { purpose: item.purpose }),
    intro: item.intro.map((prose) => proseBlock(prose, edition.figure)),
    ...(price ? { price } : {}),
    availability: availabilityOfAll(item.offers),
    photos: photosOf(item),
    look: lookImage(item, standard),
    lookNote: `In the finish ${standard.name}. A drawing, not a photograph: grain and colour of the wood differ.`,
    measured: { ...pictureOf(lighten(item.measured)), narrow: pictureOf(lighten(item.measuredNarrow)).svg },
    pictureNote: "Drawn from the measurements it is built to. A drawing, not a photograph.",
    sizes: sizesOf(item, edition),
    fit: item.packed ? fitFacts(item.packed) : [],
    offers: item.offers.map((offer) => offerLine(item, offer, shop, edition)),
    ...(item.forms.length > 1 ? { choices: formsForStore(item.forms, edition.length, edition.weight) } : {}),
    ...ownWordsOf(item),
    wood: item.woods,
    included: includedOf(item),
    finishes: item.variants.map((variant) => finishOf(item, variant, variant === standard)),
    madeFor: madeFor(item.use, edition.weight),
    notMadeFor: notMadeFor(item.use),
    whom: whomFacts(item, edition.length),
    overTime: overTime(item),
    cautions,
    duties: item.classes.includes("C") ? childDuties : [],
    order: orderByMessage(item, shop),
    terms: termsOf(shop),
    origins: originsOf(
      item,
      cautions.map(({ source }) => source),
    ),
    links: [
      { path: sparesPath(item.slug), text: "A piece broke? Its size and wood" },
      { path: carePath, text: "How to look after our wood" },
      { path: aboutPath, text: `About ${shop.name}` },
    ],
    home: { path: indexPath, text: shop.name },
    data: dataMarkup(productData(item, shop, description)),
    ...(web ? { web } : {}),
  };
}

function priceOf({ offers }: StoreItem): ProductPage["price"] {
  const prices = offers.flatMap(({ price }) => (price ? [price] : []));
  const text = priceRange(prices);
  const [first] = prices;
  return text !== undefined && first ? { text, says: capital(priceWords(first)) } : undefined;
}

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

function ownWordsOf({ offers, sayings, rows }: StoreItem): Pick<ProductPage, "ownWords"> {
  const more = offers[0].price?.ownWords;
  return more && (sayings.length > 0 || rows)
    ? { ownWords: `With your own words on it: ${formatDollars(more)} more than the price shown.` }
    : {};
}

/** Of what is sold as several, the sizes are those of one, and both weights are told. */
function sizesOf(item: StoreItem, edition: Edition): Fact[] {
  const { width, depth, height } = item.overall;
  const [standard] = item.variants;
  const each = item.soldAs ? " each" : "";
  const size = (name: string, length: Length): Fact => ({
    name,
    value: `${edition.length(length)}${each}`,
    from: "from-sizes",
  });
  return [
    ...(item.forms.length > 1 ? [{ name: "These are of", value: item.offers[0].form }] : []),
    size("Width", width),
    size("Depth", depth),
    size("Height", height),
    ...(item.heights.hung === undefined ? [] : [size("Height as it hangs", item.heights.hung)]),
    { name: "Weight", value: `about ${edition.weight(standard.weight)}${each}`, from: "from-weight" },
    ...(item.rows ? [{ name: "Words on it", value: rowsText(item.rows, edition) }] : []),
    ...useFacts(item, edition.weight).map((fact) =>
      fact.name === "Meant to carry" ? { ...fact, from: "from-load" } : fact,
    ),
  ];
}

/** "5 rows, letters 1 1/2 in (38 mm) high, by stencil, film or engraving: tell us what each is to say". */
function rowsText({ count, height, ways }: NonNullable<StoreItem["rows"]>, { length }: Edition): string {
  const by = [ways.slice(0, -1).join(", "), ways.at(-1) ?? ""].filter((part) => part !== "").join(" or ");
  const rows = count === 1 ? "one row" : `${count} rows`;
  return `${rows}, letters ${length(height)} high${by === "" ? "" : `, by ${by}`}: tell us what ${count === 1 ? "it is" : "each is"} to say`;
}

const offerLine = (item: StoreItem, offer: StoreOffer, shop: StoreShop, { weight }: Edition): OfferLine => {
  const letter = orderLetter(item, offer, shop);
  return {
    name: offer.name,
    price: offer.price ? priceText(offer.price) : "ask us",
    availability: availabilityWords(offer.availability),
    weight: `about ${weight(offer.weight)}`,
    ...(letter === undefined ? {} : { letter }),
    instead: offer.availability.kind === "sold" ? "not any more" : "see below",
    letterText: `${item.title}, ${offer.name}`,
  };
};

/** How it gets to the buyer and back, as the shop says it. */
const termsOf = ({ ordering, pickup, delivery, returns }: StoreShop): Fact[] => [
  { name: "Time", value: ordering },
  ...(pickup === undefined ? [] : [{ name: "Pickup", value: pickup }]),
  ...(delivery === undefined ? [] : [{ name: "Delivery", value: delivery }]),
  ...(returns === undefined ? [] : [{ name: "Returns", value: returns }]),
];

/** Only what has the evidence for it comes here. */
const childDuties = [
  "Each one carries a lasting label with maker, place, date and lot: keep it on, so that you can be reached.",
  "A certificate says which safety rules it was made to; ask for it.",
];

/** The price of a finish is that of its standard form. */
function finishOf(item: StoreItem, variant: StoreVariant, standard: boolean): Finish {
  const { price, form = "" } = item.offers.find(({ slug }) => slug === variant.slug) ?? {};
  return {
    name: variant.name,
    standard,
    coats: [
      ...variant.coats.map(({ words, coats }) => `${coats === 1 ? "one coat" : `${coats} coats`} of ${words}`),
      ...(variant.bare === undefined ? [] : [`left bare: ${variant.bare}`]),
    ],
    picture: lookImage(item, variant),
    ...(price ? { price: `${form === "" ? "" : `${form}: `}${priceText(price)}` } : {}),
    ...(variant.unfinished ? { unfinished: unfinishedNotice } : {}),
    care: { path: careCardPath(item.slug, variant.slug), text: `Care card: ${variant.name}` },
  };
}
