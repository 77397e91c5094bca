// Store items -> the store's front page: every piece of goods with its picture, sizes and price, and what they can be sifted by.
import { inches } from "../units/length.ts";
import { availabilityOfAll } from "./availability-words.ts";
import { setFractions, threeSizes } from "./edition.ts";
import { hasFeed } from "./feed.ts";
import type { Image, Link, Photo } from "./leaf.ts";
import { linesOf } from "./line-page.ts";
import { type OnTheWeb, onTheWeb } from "./on-the-web.ts";
import { aboutPath, carePath, indexPath, linePagePath, productPagePath } from "./paths.ts";
import { photosOf } from "./photos.ts";
import { lookImage } from "./store-images.ts";
import type { StoreItem, StoreShop } from "./store-item.ts";
import { priceRange } from "./store-price.ts";

export type StoreIndex = {
  readonly title: string;
  readonly description: string;
  readonly shop: StoreShop;
  readonly web?: OnTheWeb;
  readonly sieves: readonly Sieve[];
  readonly goods: readonly Good[];
  readonly lines: readonly Link[];
  readonly links: readonly Link[];
};

/**
 * One question with its answers; the style sheet hides what doesn't fit the chosen one. `id` is `line-1`, `use-2` …: the style
 * sheet knows so many of each. The first answer lets everything through.
 */
export type Sieve = {
  readonly name: string;
  readonly legend: string;
  readonly answers: readonly { readonly id: string; readonly text: string }[];
};

type Good = {
  readonly link: Link;
  readonly look: Image;
  readonly photo?: Photo;
  readonly line?: Link;
  readonly purpose?: string;
  readonly inch: string;
  readonly metric: string;
  /** "3 sizes, 2 finishes: oil, limewash". */
  readonly choice: string;
  readonly price?: string;
  readonly availability: string;
  /** The answers that it fits. */
  readonly fits: readonly string[];
};

/** The style sheet has rules for so many answers of one question. */
export const mostAnswers = 12;

/** Goods keep the order they come in, those of one line together. */
export function storeIndexLeaf(items: readonly StoreItem[], shop: StoreShop): StoreIndex {
  const web = onTheWeb(shop, { path: indexPath, kind: "website", hasFeed: hasFeed(items, shop) });
  const lines = linesOf(items);
  const inLines = [...lines.flatMap((line) => line.items), ...items.filter(({ line }) => line === undefined)];
  const questions = questionsFor(items).filter(({ answers }) => answers.length > 1);
  return {
    title: shop.name,
    description: shop.tagline,
    shop,
    ...(web ? { web } : {}),
    sieves: questions.map(({ name, legend, answers }) => ({
      name,
      legend,
      answers: [{ id: `${name}-0`, text: "all" }, ...answers.map(({ text }, i) => ({ id: `${name}-${i + 1}`, text }))],
    })),
    goods: inLines.map((item) => good(item, shop, questions)),
    lines: lines.map(({ line }) => ({ path: linePagePath(line), text: line })),
    links: [
      { path: aboutPath, text: `About ${shop.name}` },
      { path: carePath, text: "How to look after our wood" },
    ],
  };
}

type Question = {
  readonly name: string;
  readonly legend: string;
  readonly answers: readonly { readonly text: string; readonly fits: (item: StoreItem) => boolean }[];
};

const uses: readonly { readonly text: string; readonly fits: (item: StoreItem) => boolean }[] = [
  { text: "outdoors", fits: ({ classes }) => classes.includes("X") },
  { text: "to hang", fits: ({ classes }) => classes.includes("H") },
  { text: "to carry weight", fits: ({ classes }) => classes.includes("L") },
  { text: "for plants and food", fits: ({ classes, madeFor }) => classes.includes("F") || madeFor.includes("plants") },
  { text: "for animals", fits: ({ classes }) => classes.includes("A") },
  { text: "for children", fits: ({ classes }) => classes.includes("C") },
];

/** By its longest side, inches: what one hand carries, what goes into most cars, and what doesn't. Common practice, no source. */
const longest = (item: StoreItem): number => Math.max(...Object.values(item.overall).map(inches));
const sizes: Question["answers"] = [
  { text: "up to 18 in (457 mm)", fits: (item) => longest(item) <= 18 },
  { text: "up to 36 in (914 mm)", fits: (item) => longest(item) > 18 && longest(item) <= 36 },
  { text: "larger", fits: (item) => longest(item) > 36 },
];

/** Dollars that a price is asked to stay under. */
const limits = [25, 50, 100, 200, 400, 800];

const cheapest = ({ offers }: StoreItem): number | undefined =>
  offers
    .flatMap(({ price }) => (price ? [price.amount.valueOf()] : []))
    .sort((a, b) => a - b)
    .at(0);

/** Answers that no goods fit, or all of them, are left out. */
function questionsFor(items: readonly StoreItem[]): Question[] {
  const telling = (answers: Question["answers"]) =>
    answers.filter(({ fits }) => items.some(fits) && !items.every(fits)).slice(0, mostAnswers);
  return [
    { name: "use", legend: "Use", answers: telling(uses) },
    {
      name: "line",
      legend: "Line",
      answers: telling(linesOf(items).map(({ line }) => ({ text: line, fits: (item) => item.line === line }))),
    },
    { name: "size", legend: "Longest side", answers: telling(sizes) },
    {
      name: "price",
      legend: "Price",
      answers: telling(
        limits.map((limit) => ({
          text: `under $${limit}`,
          fits: (item) => (cheapest(item) ?? Number.POSITIVE_INFINITY) < limit,
        })),
      ),
    },
  ];
}

function choiceText({ forms, variants }: StoreItem): string {
  const sizes = new Set(forms.map(({ overall }) => Object.values(overall).map(inches).join(" ")));
  const word = sizes.size === forms.length ? "sizes" : "versions";
  const finishes = `${variants.length === 1 ? "1 finish" : `${variants.length} finishes`}: ${variants.map(({ name }) => name).join(", ")}`;
  return forms.length < 2 ? finishes : `${forms.length} ${word}, ${finishes}`;
}

function good(item: StoreItem, shop: StoreShop, questions: readonly Question[]): Good {
  const sizes = [item.overall.width, item.overall.depth, item.overall.height];
  const inch = shop.division.unit === "in" ? shop.division : ({ unit: "in", per: 16 } as const);
  const price = priceRange(item.offers.flatMap((offer) => (offer.price ? [offer.price] : [])));
  const [photo] = photosOf(item);
  return {
    link: { path: productPagePath(item.slug), text: item.title },
    look: lookImage(item, item.variants[0]),
    ...(photo ? { photo } : {}),
    ...(item.line === undefined ? {} : { line: { path: linePagePath(item.line), text: item.line } }),
    ...(item.purpose === undefined ? {} : { purpose: item.purpose }),
    inch: setFractions(threeSizes(sizes, inch)),
    metric: threeSizes(sizes, { unit: "mm" }),
    choice: choiceText(item),
    ...(price === undefined ? {} : { price }),
    availability: availabilityOfAll(item.offers),
    fits: questions.flatMap(({ name, answers }) =>
      answers.flatMap(({ fits }, i) => (fits(item) ? [`${name}-${i + 1}`] : [])),
    ),
  };
}
