// Store item -> copy for a listing elsewhere, ready to paste: the product page's own facts in other lengths. Only what the wall lets through.
import type { ListingLimits } from "../yard/listing-limits.ts";
import { careCardLeaf } from "./care-card.ts";
import { storeEdition } from "./edition.ts";
import type { Fact } from "./leaf.ts";
import { type ProductPage, productPageLeaf } from "./product-page.ts";
import { proseText } from "./prose.ts";
import { type StagingScript, shotsOf, stagingOf } from "./shot-list.ts";
import type { StoreItem, StoreShop } from "./store-item.ts";

/** A text with its count: "54 of 80 letters". `over` says what to do where it is longer than its limit. */
export type Counted = { readonly text: string; readonly count: string; readonly over?: string };

export type ListingCopy = {
  readonly title: Counted;
  readonly short: Counted;
  /** Paragraphs with an empty line between them. */
  readonly long: Counted;
  readonly measures: readonly string[];
  readonly materials: readonly string[];
  readonly care: readonly string[];
  /** As the store shows them: what is asked elsewhere may have other fees in it. */
  readonly prices: readonly string[];
  readonly keywords: readonly string[];
  readonly altTexts: readonly { readonly picture: string; readonly alt: Counted }[];
  readonly shots: readonly string[];
  readonly scripts: readonly [StagingScript, StagingScript];
};

export function listingCopy(item: StoreItem, shop: StoreShop, limits: ListingLimits): ListingCopy {
  const page = productPageLeaf(item, shop);
  const cards = item.variants.map((variant) => careCardLeaf(item, variant, shop));
  const care = [...new Set(cards.flatMap((card) => card.care))].map(plain);
  const wood = [...new Set(page.wood.map((words) => plain(words)))];
  const [standard] = page.finishes;
  const first = [page.purpose ?? sentence(page.description), ...(standard?.unfinished ? ["Unfinished wood."] : [])];
  const more = [
    [`${formOf(page)}${sizesText(page.sizes)}.`, ...boxOf(page.sizes).map((box) => `${formOf(page)}${box}.`)],
    [`${capital(wood[0] ?? "wood")}.`],
    page.sizes.filter(({ name }) => name === "Weight").map(({ value }) => `Weighs ${value}.`),
  ];
  return {
    title: counted(longestOf(titlesOf(page, wood), limits.title), limits.title, "Shorten the recipe's title."),
    short: counted(joined(first.map(plain), more, limits.short), limits.short, "Shorten the purpose."),
    long: longText(item, page, care, limits.long),
    measures: [
      ...measuredOf(page).map(({ name, value }) => plain(`${formOf(page)}${name}: ${value}`)),
      ...rowTexts(page)
        .slice(1)
        .map((text) => plain(capital(text))),
    ],
    materials: [
      ...wood.map(capital),
      ...page.finishes.map(({ name, coats, unfinished }) =>
        plain(`${capital(name)}: ${unfinished ? "no finish, bare wood" : coats.join("; ")}`),
      ),
      ...page.included.map((words) => plain(`What you get: ${words}`)),
    ],
    care,
    prices: page.offers.map(({ name, price, availability }) =>
      plain(`${capital(name)}: ${price}, ${availability.toLowerCase()}`),
    ),
    keywords: keywordsOf(item, wood, limits),
    altTexts: altTexts(item, page, limits["alt-text"]),
    shots: shotsOf(item, page).map(plain),
    scripts: stagingOf(item, page).map(({ title, steps }) => ({
      title,
      steps: steps.map(plain),
    })) as unknown as ListingCopy["scripts"],
  };
}

/** What can be measured, and the box it comes in. */
const measuredOf = (page: ProductPage): readonly Fact[] => [
  ...page.sizes.filter(({ name }) => name !== "These are of"),
  ...page.fit.filter(({ name }) => name === "Packed size"),
];

/** Signs that hold wherever they are pasted: 17 9/16 in, 30 x 18. */
const plain = (text: string): string =>
  text.replaceAll("\u2044", "/").replaceAll("\u00a0", " ").replaceAll("×", "x").replace(/\s+/g, " ").trim();

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

const sentence = (text: string): string => /^.*?[.!?](?=\s|$)/.exec(text.replace(/\s+/g, " "))?.[0] ?? text;

/** Letters as a reader counts them. */
const lettersOf = (text: string): number => [...text].length;

function counted(text: string, most: number, over: string): Counted {
  const letters = lettersOf(text);
  return {
    text,
    count: `${letters} of ${most} letters`,
    ...(letters > most ? { over: `${letters - most} too many. ${over}` } : {}),
  };
}

const longestOf = (candidates: readonly string[], most: number): string =>
  candidates.find((text) => lettersOf(text) <= most) ?? candidates.at(-1) ?? "";

const sizeOf = (sizes: readonly Fact[], name: string): string => sizes.find((size) => size.name === name)?.value ?? "";

/** "30 in (762 mm) wide, 18 in (457 mm) deep, 26 in (660 mm) high". */
export const sizesText = (sizes: readonly Fact[]): string =>
  [
    ["Width", "wide"],
    ["Depth", "deep"],
    ["Height", "high"],
  ]
    .flatMap(([name = "", word]) =>
      sizeOf(sizes, name) === "" ? [] : [`${sizeOf(sizes, name).replace(/ each$/, "")} ${word}`],
    )
    .join(", ");

/** "small: width 12 in (305 mm), …" of each row of the choices. */
const rowTexts = ({ choices }: ProductPage): string[] =>
  (choices?.rows ?? []).map(
    ([name = "", ...rest]) =>
      `${name}: ${rest.map((cell, i) => `${choices?.heads[i + 1]?.toLowerCase() ?? ""} ${cell}`).join(", ")}`,
  );

/** "Small: " where the sizes told are those of one form among others. */
const formOf = ({ choices }: ProductPage): string => (choices ? `${capital(choices.rows[0]?.[0] ?? "")}: ` : "");

/** "30 x 18 x 26 in", if all three are told. */
function boxOf(sizes: readonly Fact[]): string[] {
  const inches = ["Width", "Depth", "Height"].map((name) => plain(sizeOf(sizes, name)).replace(/ in \(.*/, ""));
  return inches.includes("") ? [] : [`${inches.join(" x ")} in`];
}

/** From the fullest to the barest; a size only where there is one. */
function titlesOf({ title, sizes, choices }: ProductPage, [wood = ""]: readonly string[]): string[] {
  const kind = wood.split(",")[0] ?? "";
  const box = choices ? [] : boxOf(sizes);
  const woods = kind === "" ? [] : [kind];
  return [[title, ...woods, ...box], [title, ...box], [title, ...woods], [title]].map((parts) => parts.join(", "));
}

/** What comes first, and after it as much as there is room for, each in the fullest of its forms that fits. */
function joined(first: readonly string[], more: readonly (readonly string[])[], most: number): string {
  let text = first.join(" ");
  for (const forms of more) {
    const fits = forms.map((form) => `${text} ${plain(form)}`).find((longer) => lettersOf(longer) <= most);
    text = fits ?? text;
  }
  return text;
}

/** What goes first where it is too long; notices, cautions and how to order always stay. */
type Paragraph = { readonly text: string; readonly drop?: number };

function longText(item: StoreItem, page: ProductPage, care: readonly string[], most: number): Counted {
  const figure = storeEdition(page.shop.division).figure;
  const bare = page.finishes.filter(({ unfinished }) => unfinished);
  const optional = (text: string, drop: number): Paragraph[] => (text === "" ? [] : [{ text, drop }]);
  const always = (text: string): Paragraph[] => (text === "" ? [] : [{ text }]);
  const listed = (lead: string, texts: readonly string[]): string =>
    texts.length === 0 ? "" : `${lead}: ${texts.join("; ")}.`;
  const paragraphs = [
    ...always(page.purpose ?? ""),
    ...item.intro.flatMap((prose) => optional(proseText(prose, figure), 3)),
    ...always(
      formOf(page) +
        measuredOf(page)
          .map(({ name, value }) => `${name}: ${value}`)
          .join(". ")
          .concat("."),
    ),
    ...always(listed("Wood", page.wood)),
    ...always(listed("What you get", page.included)),
    ...always(listed("You can choose", rowTexts(page))),
    ...always(
      listed(
        "Finishes",
        page.finishes.map(({ name, coats, unfinished }) => `${name} (${unfinished ? "bare wood" : coats.join(", ")})`),
      ),
    ),
    ...bare.flatMap(({ name, unfinished }) =>
      always(unfinished ? `${unfinished.title} (${name}): ${unfinished.says}` : ""),
    ),
    ...always(page.madeFor.length === 0 ? "" : `Made ${page.madeFor.join(", ")}.`),
    ...always(page.notMadeFor.length === 0 ? "" : `Not made ${page.notMadeFor.join(", ")}.`),
    ...page.cautions.flatMap((one) => always(`${one.signal}: ${one.hazard} ${one.consequence} ${one.avoidance}`)),
    ...page.duties.flatMap(always),
    ...page.overTime.flatMap((text) => optional(text, 1)),
    ...optional(care.join(" "), 2),
    ...page.terms.flatMap(({ value }) => always(value)),
    ...always(page.shop.notice ?? ""),
  ].map((one) => ({ ...one, text: plain(one.text) }));
  const textOf = (dropped: number): string =>
    paragraphs
      .filter(({ drop }) => drop === undefined || drop > dropped)
      .map(({ text }) => text)
      .join("\n\n");
  const kept = [0, 1, 2, 3].find((dropped) => lettersOf(textOf(dropped)) <= most) ?? 3;
  return counted(
    textOf(kept),
    most,
    "All that may go is gone: what is left has to be said. Shorten the purpose, or list it where there is room.",
  );
}

/** Words for what it is, what of and in which finish; nothing that isn't so. */
function keywordsOf(item: StoreItem, wood: readonly string[], limits: ListingLimits): string[] {
  const kinds = wood.map((words) => words.split(",")[0] ?? "");
  const title = item.title.toLowerCase();
  const words = title.split(/[^\p{L}\p{N}]+/u).filter((word) => lettersOf(word) > 3);
  const finishes = item.variants.map(({ name }) => name.replaceAll("-", " "));
  const noun = words.at(-1) ?? title;
  const all = [
    title,
    ...kinds,
    ...kinds.map((kind) => `${kind} ${noun}`),
    ...(item.line === undefined ? [] : [item.line.toLowerCase()]),
    ...words,
    ...finishes.map((finish) => `${finish} ${noun}`),
  ];
  return [...new Set(all.map(plain))]
    .filter((word) => word !== "" && lettersOf(word) <= limits.keyword)
    .slice(0, limits.keywords);
}

function altTexts(item: StoreItem, page: ProductPage, most: number): ListingCopy["altTexts"] {
  const over = "Say less of it in the recipe's title.";
  const title = item.title;
  const drawn = (name: string, from: string) => [
    `Drawing: ${from}`,
    `Drawing: ${title}, ${name}, from the front right, from above.`,
    `Drawing: ${title}, ${name}`,
  ];
  return [
    {
      picture: "measured drawing",
      alt: counted(
        longestOf(
          [`Drawing with sizes: ${title}, ${sizesText(page.sizes)}.`, `Drawing with sizes: ${title}.`].map(plain),
          most,
        ),
        most,
        over,
      ),
    },
    ...item.variants.map((variant) => ({
      picture: `drawing in ${variant.name}`,
      alt: counted(longestOf(drawn(variant.name, lowerThe(variant.view.description)).map(plain), most), most, over),
    })),
    {
      picture: "choices",
      alt: counted(
        longestOf(
          [
            `Drawings side by side: ${title} in ${item.variants.map(({ name }) => name).join(", ")}.`,
            `Drawings side by side: ${title} in ${item.variants.length} finishes.`,
          ].map(plain),
          most,
        ),
        most,
        over,
      ),
    },
    {
      picture: "what is included",
      alt: counted(
        longestOf(
          [`Drawing with a list: ${page.included.join("; ")}.`, `Drawing with a list of what you get: ${title}.`].map(
            plain,
          ),
          most,
        ),
        most,
        over,
      ),
    },
    ...page.photos.map(({ image: { alt }, caption }) => ({
      picture: `photograph: ${caption}`,
      alt: counted(longestOf([alt, caption].map(plain), most), most, "Say less of it in the recipe, under photos."),
    })),
  ];
}

const lowerThe = (text: string): string => text.replace(/^The /, "the ");
