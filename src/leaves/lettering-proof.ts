// What is made for an order -> the proof that its buyer is sent: the letters as they will stand. Nothing of the buyer or the price is on it.
import type { LetterFont } from "../drawing/lettering/letter-font.ts";
import { drawLettered } from "../drawing/lettering/lettered-view.ts";
import { phoneSheet, storeSheet } from "../drawing/sheet.ts";
import { formatSvg } from "../drawing/svg.ts";
import type { Ordered } from "../findings/ordered.ts";
import type { Item } from "../item/item.ts";
import { storeEdition } from "./edition.ts";
import type { Fact, Link, Picture, Table } from "./leaf.ts";
import { indexPath } from "./paths.ts";
import { lettersOf, spelled } from "./spelled.ts";
import type { StoreShop } from "./store-item.ts";

/** In public words. */
const finishWords = ({ variant }: Item): string =>
  variant.finish.length === 0
    ? "none, bare wood"
    : [...new Set(variant.finish.map(({ finish }) => finish.words))].join("; ");

export type LetteringProof = {
  readonly title: string;
  readonly description: string;
  readonly shop: StoreShop;
  readonly home: Link;
  readonly facts: readonly Fact[];
  readonly pictures: readonly Picture[];
  readonly rows: Table;
  readonly ask: readonly string[];
  readonly notes: readonly string[];
};

/** Its words are public words: title, finish in words, sizes in both units. */
export function letteringProofLeaf({ item, words }: Ordered, shop: StoreShop, font: LetterFont): LetteringProof {
  const edition = storeEdition(shop.division);
  const { width, depth, height } = item.overall;
  const way = item.textFields[0]?.ways[0];
  const drawn = drawLettered(item, font, storeSheet);
  const narrow = drawLettered(item, font, phoneSheet);
  return {
    title: "Please check these words",
    description: `How the words will stand on the ${item.title.toLowerCase()}.`,
    shop,
    home: { path: indexPath, text: shop.name },
    facts: [
      { name: "What", value: item.title },
      { name: "Finish", value: finishWords(item) },
      { name: "Wide, deep, high", value: [width, depth, height].map(edition.length).join(", ") },
      ...(way ? [{ name: "Letters put on by", value: way }] : []),
    ],
    pictures: drawn.map((drawing, i) => ({
      caption: drawing.title,
      svg: { html: formatSvg(drawing) },
      ...(narrow[i] ? { narrow: { html: formatSvg(narrow[i]) } } : {}),
    })),
    rows: {
      caption: "The words, row by row",
      heads: ["Row", "Says", "Letter by letter", "Letters", ...(item.textFields.length > 0 ? ["Capitals high"] : [])],
      rows: words.map((text, i) => {
        const field = item.textFields[i];
        return [
          String(i + 1),
          text,
          spelled(text),
          String(lettersOf(text).filter((letter) => letter.trim() !== "").length),
          ...(field ? [edition.length(field.height)] : []),
        ];
      }),
    },
    ask: [
      "Read every row letter by letter, capitals, blanks and signs too.",
      'If all is right, reply "yes". We put the letters on when you have.',
      "If not, reply with the number of the row and how it should read.",
    ],
    notes: [
      "The drawing shows where the letters stand and how high they are, in a plain face; letters of a stencil or a cutter differ a little in shape. The wood is drawn bare so that they can be read.",
      "What is made with your own words is made for you: look before you say yes.",
    ],
  };
}
