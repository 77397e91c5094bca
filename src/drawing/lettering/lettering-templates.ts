// Rows of letters on an item -> patterns at true size: bridged for a stencil, mirrored for film, plain for engraving.
import { bridged, type Letters } from "../../geometry/letter-shapes.ts";
import type { Vec2 } from "../../geometry/shape.ts";
import type { Item, TextField } from "../../item/item.ts";
import type { TextWay } from "../../recipe/recipe.ts";
import type { Mark, Paper } from "../drawing.ts";
import { closedChain, rectangle, type Template } from "../full-size/template.ts";
import { idPart, listed } from "../paper-text.ts";
import { mmPerInch } from "../sheet.ts";
import type { LetterFont } from "./letter-font.ts";
import { setRow } from "./set-row.ts";

/** Bridges are this part of the capitals' height wide, and this wide at least, mm; common practice, no source. */
const bridgePart = 0.06;
const leastBridge = 1.5;

/** Room over the capitals for accents, and under the line for tails, as parts of the capitals' height. */
const over = 0.4;
const under = 0.36;
const edge = 2;
/** Free at each end of the letters, mm. */
const beside = 8;

/** How letters are put on by each way. */
const how: Readonly<Record<TextWay, string>> = {
  stencil:
    "Cut the letters out, leave the bridges standing, and lay the stencil with its cross on the middle of the row.",
  film: "The letters are mirrored: cut them from the back of the film, and press it on with the cross on the middle of the row.",
  engraving: "Lay it with its cross on the middle of the row and trace the letters, or follow them with the cutter.",
};

/** Mirrored film, a bridged stencil, or the letters as they are read. */
export const wayLetters = (letters: Letters, way: TextWay, capHeight: number): Letters =>
  way === "stencil" ? bridged(letters, Math.max(leastBridge, capHeight * bridgePart)) : letters;

export function rowTemplate(
  item: Pick<Item, "slug">,
  field: Pick<TextField, "width" | "height">,
  saying: string,
  way: TextWay,
  of: string,
  font: LetterFont,
): Template {
  const capHeight = field.height * mmPerInch;
  const row = setRow(font, saying, capHeight);
  // The row may be much wider than what it says; its middle is all that is needed to place it.
  const width = Math.min(field.width * mmPerInch, row.width + 2 * beside);
  const start = (width - row.width) / 2;
  const line = edge + capHeight * (1 + over);
  const paper = ([u, v]: Vec2): Paper => {
    const right = start + u;
    return [edge + (way === "film" ? width - right : right), line - v];
  };
  const loops = wayLetters(row.letters, way, capHeight).flatMap(({ outer, counters }) => [outer, ...counters]);
  const middle = edge + width / 2;
  const high = line - capHeight / 2;
  const marks: Mark[] = [
    { kind: "lines", line: "visible", chains: loops.map((loop) => closedChain(loop.map(paper))) },
    { kind: "lines", line: "dimension", chains: [closedChain(rectangle(edge, line - capHeight, width, capHeight))] },
    {
      kind: "lines",
      line: "path",
      chains: [
        [
          [middle, edge],
          [middle, line + capHeight * under],
        ],
        [
          [edge, high],
          [edge + width, high],
        ],
      ],
    },
  ];
  return {
    id: `${item.slug}-letters-${idPart(of)}-${idPart(saying)}-${way}`,
    title: `Letters of ${of}, ${way}${way === "film" ? ", mirrored" : ""}: ${saying}`,
    how: how[way],
    width: width + 2 * edge,
    height: capHeight * (1 + over + under) + 2 * edge,
    marks,
  };
}

/** Every different row of the item as it stands, by one way of putting it on. */
export function letteringTemplates(item: Item, font: LetterFont, way: (field: TextField) => TextWay): Template[] {
  const rows = new Map<string, { field: TextField; marks: string[] }>();
  for (const field of item.textFields) {
    const mark = item.members.find(({ id }) => id === field.member)?.mark ?? field.member;
    const key = [field.says, field.width.toFixed(4), field.height.toFixed(4)].join("|");
    const known = rows.get(key);
    if (known === undefined) rows.set(key, { field, marks: [mark] });
    else if (!known.marks.includes(mark)) known.marks.push(mark);
  }
  return [...rows.values()].map(({ field, marks }) =>
    rowTemplate(item, field, field.says, way(field), listed(marks), font),
  );
}
