// A piece -> the sticker for one of it: its mark, name and size, which way its grain runs, the item, and room for the lot.
import type { Item, Piece } from "../item/item.ts";
import type { Division } from "../units/division.ts";
import type { Drawing, Mark, Paper } from "./drawing.ts";
import { idPart, paperLength, unitWords } from "./paper-text.ts";
import { textWidth } from "./text-width.ts";

/** mm: two and a half inches by one and a half, three beside each other on a page. */
const width = 54;
const height = 32;
const inset = 3;
const rim = 0.6;
const small = 3.2;

/** `number` of `of`: each of a kind has its own. */
export function drawSticker(item: Item, piece: Piece, number: number, division: Division): Drawing {
  const size = [piece.length, piece.width, piece.thickness].map((one) => paperLength(one, division)).join(" × ");
  const left = inset + textWidth(piece.mark, markSize(piece.mark), true) + 4;
  const line = (text: string, row: number, strong = false): Mark => ({
    kind: "text",
    at: [left, 7.2 + row * 5],
    text: fitted(text, width - left - inset, strong),
    size: small,
    anchor: "start",
    ...(strong ? { strong } : {}),
  });
  return {
    id: `${item.slug}-sticker-${idPart(piece.mark)}-${number}`,
    title: `Sticker: ${piece.mark}, ${number} of ${piece.count}`,
    description: `${piece.name}, ${size} ${unitWords(division)}, of the ${item.title.toLowerCase()}; an arrow along the grain; a line for the lot.`,
    width,
    height,
    pen: 0.35,
    marks: [
      ...frame(),
      { kind: "text", at: [inset, 12], text: piece.mark, size: markSize(piece.mark), anchor: "start", strong: true },
      line(`${size} ${division.unit}`, 0, true),
      line(piece.name, 1),
      line(`${number} of ${piece.count}`, 2),
      ...grainArrow(),
      { kind: "text", at: [inset, height - 3], text: fitted(item.title, 30, false), size: small, anchor: "start" },
      { kind: "text", at: [35, height - 3], text: "Lot", size: small, anchor: "start" },
      {
        kind: "lines",
        line: "dimension",
        chains: [
          [
            [40.5, height - 2.6],
            [width - inset, height - 2.6],
          ],
        ],
      },
    ],
  };
}

/** A letter stands out; "A right" has to leave room for the size beside it. */
const markSize = (mark: string): number => (mark.length > 3 ? 4 : 9);

const frame = (): Mark[] => [
  {
    kind: "lines",
    line: "light",
    chains: [
      [
        [rim, rim],
        [width - rim, rim],
        [width - rim, height - rim],
        [rim, height - rim],
        [rim, rim],
      ],
    ],
  },
];

/** Along the grain, so that a sticker is put on with it. */
function grainArrow(): Mark[] {
  const v = 22;
  const ends: readonly [Paper, Paper] = [
    [inset + 14, v],
    [width - inset, v],
  ];
  return [
    { kind: "lines", line: "dimension", chains: [[...ends]] },
    { kind: "arrowhead", tip: ends[0], way: [-1, 0], size: 2.5 },
    { kind: "arrowhead", tip: ends[1], way: [1, 0], size: 2.5 },
    { kind: "text", at: [inset, v + 1.1], text: "grain", size: small, anchor: "start" },
  ];
}

/** What runs on is cut at a word's end, so that nothing runs off the sticker. */
function fitted(text: string, room: number, strong: boolean): string {
  let said = text;
  while (textWidth(said, small, strong) > room && said.length > 1)
    said = `${said.slice(0, said.endsWith("…") ? -2 : -1).trimEnd()}…`;
  return said;
}
