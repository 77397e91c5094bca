// Planned board -> its picture: the board lying flat, its trimmed end, strips across it, pieces along them, what is left crossed out.
import type { PlannedBoard } from "../findings/board-plan.ts";
import { type Exact, inches, type Length } from "../units/length.ts";
import type { Drawing, Mark, Paper } from "./drawing.ts";
import { binderSheet, wide } from "./sheet.ts";
import { baseline, textWidth } from "./text-width.ts";

/** A strip is drawn at least this high, so that its letters fit (paper mm). */
const leastHeight = 4.4;

/**
 * Lengths are to scale over the sheet's width; widths are to the same scale unless letters need more room, then all the
 * board's widths are drawn larger alike. The end that is trimmed first is at the left.
 */
export function drawBoard(
  itemSlug: string,
  planned: PlannedBoard,
  kerf: Exact,
  length: (inches: Length) => string,
): Drawing {
  const along = (binderSheet.width - wide) / inches(planned.stock.length);
  const narrowest = Math.min(...planned.strips.map((strip) => inches(strip.size)));
  const across = Math.max(along, leastHeight / narrowest);
  const height = inches(planned.board.width) * across;
  const edge = wide / 2;
  const saw = inches(kerf);
  const marks: Mark[] = [];
  const foot = edge + inches(planned.endLoss) * along;
  if (foot > edge) marks.push(...crossedOut([edge, edge], [foot, edge + height]));
  let v = edge;
  for (const strip of planned.strips) {
    const below = v + inches(strip.size) * across;
    let u = foot;
    for (const { mark, size } of strip.pieces) {
      const right = u + inches(size) * along;
      marks.push(...boxed("wood", [u, v], [right, below]), ...label(mark, length(size), [u, v], [right, below]));
      u = right + saw * along;
    }
    const end = edge + inches(planned.stock.length) * along;
    if (inches(strip.leftLength) > 0) marks.push(...crossedOut([u, v], [end, below]));
    v = below + saw * across;
  }
  if (v < edge + height) marks.push(...boxed("figure", [foot, v], [binderSheet.width - edge, edge + height]));
  return {
    id: `${itemSlug}-board-${planned.number}`,
    title: `Board ${planned.number}: ${planned.board.name}`,
    description: [
      ...(foot > edge ? [`${length(planned.endLoss)} trimmed off the left end.`] : []),
      ...planned.strips.map(
        (strip, i) => `Strip ${i + 1}: ${strip.pieces.map(({ mark, size }) => `${mark} ${length(size)}`).join(", ")}.`,
      ),
    ].join(" "),
    width: binderSheet.width,
    height: height + wide,
    marks,
  };
}

type Corner = Paper;

const rectangle = ([u0, v0]: Corner, [u1, v1]: Corner): Paper[] => [
  [u0, v0],
  [u1, v0],
  [u1, v1],
  [u0, v1],
];

function boxed(tone: "wood" | "figure", from: Corner, to: Corner): Mark[] {
  const loop = rectangle(from, to);
  return [
    { kind: "region", tone: { kind: tone }, shade: 0, loops: [loop] },
    { kind: "lines", line: "light", chains: [[...loop, loop[0] as Paper]] },
  ];
}

const crossedOut = (from: Corner, to: Corner): Mark[] => [
  ...boxed("figure", from, to),
  { kind: "lines", line: "light", chains: [[from, to]] },
];

/** The mark, and its length where there is room for both; the mark alone in a short piece. */
function label(mark: string, size: string, from: Corner, to: Corner): Mark[] {
  const room = to[0] - from[0] - 1;
  const type = Math.min(binderSheet.type, (to[1] - from[1]) * 0.72);
  const whole = `${mark}  ${size}`;
  const text = textWidth(whole, type, true) <= room ? whole : mark;
  if (textWidth(text, type, true) > room) return [];
  const at: Paper = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2 + baseline(type)];
  return [{ kind: "text", at, text, size: type, anchor: "middle", strong: true }];
}
