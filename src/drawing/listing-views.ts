// Drawings of one thing -> pictures for a listing, each as high and as wide as is asked for: the whole, its sizes, its choices, what comes with it.
import type { Drawing, Mark } from "./drawing.ts";
import { extentOf } from "./extent.ts";
import { moved } from "./fronts.ts";
import { textWidth, wrapText } from "./text-width.ts";

/** Pixels that a picture has. */
export type PixelSize = { readonly width: number; readonly height: number };

/** The shorter side of every picture, paper mm: type of 4 mm is then a thirtieth of it, and can be read on a phone. */
const shortSide = 120;
const type = 4;
const line = type * 1.3;
const edge = 5;

type Paper = { readonly width: number; readonly height: number };
type Box = { readonly left: number; readonly top: number; readonly width: number; readonly height: number };

const paperFor = ({ width, height }: PixelSize): Paper => {
  const perPixel = shortSide / Math.min(width, height);
  return { width: width * perPixel, height: height * perPixel };
};

/** As large as its box lets it be, in the middle of it; `times` is how much larger than it was. */
function fitted(drawing: Drawing, box: Box): { readonly marks: Mark[]; readonly times: number } {
  const { left, right, top, bottom } = extentOf(drawing.marks);
  const times = Math.min(box.width / (right - left), box.height / (bottom - top));
  const u = box.left + (box.width - (right - left) * times) / 2 - left * times;
  const v = box.top + (box.height - (bottom - top) * times) / 2 - top * times;
  return { marks: moved(drawing.marks, [u, v], times), times };
}

const words = (text: string, u: number, v: number, strong = false): Mark => ({
  kind: "text",
  at: [u, v],
  text,
  size: type,
  anchor: "middle",
  strong,
});

type Named = { readonly id: string; readonly title: string; readonly description: string };

const picture = ({ id, title, description }: Named, paper: Paper, pen: number, marks: readonly Mark[]): Drawing => ({
  ...{ id, title, description, ...paper, marks },
  pen,
});

/** Lines of text at the foot of a picture, and how much room they take. */
function foot(text: readonly string[], paper: Paper): { readonly marks: Mark[]; readonly height: number } {
  const lines = text.flatMap((one) => wrapText(one, type, paper.width - 2 * edge));
  const top = paper.height - edge - (lines.length - 1) * line;
  return {
    marks: lines.map((one, i) => words(one, paper.width / 2, top + i * line)),
    height: lines.length === 0 ? 0 : lines.length * line + 2,
  };
}

/** One drawing alone, with a line under it. */
export function drawAlone(named: Named, drawing: Drawing, says: string, size: PixelSize): Drawing {
  const paper = paperFor(size);
  const below = foot([says], paper);
  const box = { left: edge, top: edge, width: paper.width - 2 * edge, height: paper.height - 2 * edge - below.height };
  const { marks, times } = fitted(drawing, box);
  return picture(named, paper, (drawing.pen ?? 0.35) * times, [...marks, ...below.marks]);
}

/** Several drawings in rows and columns, each with its name under it, and lines under all. */
export function drawSeveral(
  named: Named,
  several: readonly { readonly drawing: Drawing; readonly name: string }[],
  says: readonly string[],
  size: PixelSize,
): Drawing {
  const paper = paperFor(size);
  const below = foot(says, paper);
  const room = { width: paper.width - 2 * edge, height: paper.height - 2 * edge - below.height };
  const columns = bestColumns(several.length, room);
  const rows = Math.ceil(several.length / columns);
  const cell = { width: room.width / columns, height: room.height / rows };
  const names = several.map(({ name }) => wrapText(name, type, cell.width - 2));
  const high = Math.max(...names.map((lines) => lines.length)) * line;
  const placed = several.map(({ drawing }, i) => {
    const left = edge + (i % columns) * cell.width + cell.width * 0.05;
    const top = edge + Math.floor(i / columns) * cell.height;
    return fitted(drawing, { left, top, width: cell.width * 0.9, height: cell.height - high - 3 });
  });
  const labels = names.flatMap((lines, i) => {
    const middle = edge + ((i % columns) + 0.5) * cell.width;
    const top = edge + (Math.floor(i / columns) + 1) * cell.height - high + type * 0.7;
    return lines.map((one, n) => words(one, middle, top + n * line, true));
  });
  const pen = (several[0]?.drawing.pen ?? 0.35) * Math.min(...placed.map(({ times }) => times));
  return picture(named, paper, pen, [...placed.flatMap(({ marks }) => marks), ...labels, ...below.marks]);
}

/** So many columns that the cells come nearest to squares. */
function bestColumns(count: number, { width, height }: { readonly width: number; readonly height: number }): number {
  const off = (columns: number): number => {
    const rows = Math.ceil(count / columns);
    return Math.abs(Math.log(width / columns / (height / rows)));
  };
  return Array.from({ length: count }, (_, i) => i + 1).reduce((best, one) => (off(one) < off(best) ? one : best), 1);
}

/** A drawing with a list beside it, or under it where the picture is high. */
export function drawWithList(
  named: Named,
  drawing: Drawing,
  list: { readonly head: string; readonly items: readonly string[] },
  size: PixelSize,
): Drawing {
  const paper = paperFor(size);
  const beside = paper.width > paper.height * 1.2;
  const room = beside ? paper.width / 2 - 2 * edge : paper.width - 2 * edge;
  const lines = list.items.flatMap((item) =>
    wrapText(`– ${item}`, type, room).map((text, i) => (i === 0 ? text : `   ${text}`)),
  );
  const high = (lines.length + 1.4) * line;
  const left = beside ? paper.width / 2 + edge : Math.max(edge, (paper.width - widthOf(lines)) / 2);
  const top = beside ? (paper.height - high) / 2 + type : paper.height - edge - high + type;
  const at = (text: string, v: number, strong: boolean): Mark => ({
    ...{ kind: "text", at: [left, v], text, size: type, anchor: "start", strong },
  });
  const box = beside
    ? { left: edge, top: edge, width: paper.width / 2 - 2 * edge, height: paper.height - 2 * edge }
    : { left: edge, top: edge, width: paper.width - 2 * edge, height: paper.height - 3 * edge - high };
  const { marks, times } = fitted(drawing, box);
  return picture(named, paper, (drawing.pen ?? 0.35) * times, [
    ...marks,
    at(list.head, top, true),
    ...lines.map((text, i) => at(text, top + (i + 1.4) * line, false)),
  ]);
}

const widthOf = (lines: readonly string[]): number => Math.max(...lines.map((text) => textWidth(text, type, false)));
