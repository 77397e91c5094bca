// Front views of several things, each at the same scale -> one drawing in which they stand side by side on the ground, with names and sizes.
import type { Drawing, Mark, Paper } from "./drawing.ts";
import { withFractions } from "./paper-text.ts";
import type { Sheet } from "./sheet.ts";
import { textWidth, wrapText } from "./text-width.ts";

export type Standing = { readonly front: Drawing; readonly name: string; readonly sizes: readonly string[] };

const edge = 2;
const gap = 8;

/** Everything moved and made larger or smaller. */
export function moved(marks: readonly Mark[], by: Paper, times: number): Mark[] {
  const point = ([u, v]: Paper): Paper => [by[0] + u * times, by[1] + v * times];
  return marks.map((mark) => movedMark(mark, point, times));
}

function movedMark(mark: Mark, point: (p: Paper) => Paper, times: number): Mark {
  switch (mark.kind) {
    case "region":
      return { ...mark, loops: mark.loops.map((loop) => loop.map(point)) };
    case "lines":
      return { ...mark, chains: mark.chains.map((chain) => chain.map(point)) };
    case "arrowhead":
      return { ...mark, tip: point(mark.tip), size: mark.size * times };
    case "dot":
    case "balloon":
      return { ...mark, at: point(mark.at), radius: mark.radius * times };
    case "text":
      return { ...mark, at: point(mark.at), size: mark.size * times };
  }
}

/**
 * As many to a row as there is room for at one scale for all: the largest at which the widest has a row to itself and nothing is
 * higher than the sheet. Names and sizes stand under each.
 */
export function drawFrontsSideBySide(
  id: string,
  title: string,
  standing: readonly Standing[],
  { width, height: tallest, type }: Pick<Sheet, "width" | "height" | "type">,
): Drawing {
  const room = width - 2 * edge;
  const scale = scaleFor(standing, room, tallest, type);
  const columns = standing.map((one) => columnOf(one, scale, type));
  const rows: (typeof columns)[] = [];
  for (const column of columns) {
    const row = rows.at(-1);
    const taken = row?.reduce((sum, one) => sum + one.width + gap, 0) ?? Number.POSITIVE_INFINITY;
    if (row && taken + column.width <= room + 1e-6) row.push(column);
    else rows.push([column]);
  }
  const marks: Mark[] = [];
  let top = edge;
  for (const row of rows) {
    const ground = top + Math.max(...row.map(({ height }) => height));
    const spare = room - row.reduce((sum, one) => sum + one.width, 0) - gap * (row.length - 1);
    let left = edge + spare / 2;
    for (const column of row) {
      marks.push(
        ...moved(column.front.marks, [left + (column.width - column.drawn) / 2, ground - column.height], scale),
      );
      column.texts.forEach((text, i) => {
        marks.push({
          kind: "text",
          at: [left + column.width / 2, ground + type * 1.6 + i * type * 1.25],
          text,
          size: type,
          anchor: "middle",
          strong: i < column.names,
        });
      });
      left += column.width + gap;
    }
    marks.push({
      kind: "lines",
      line: "light",
      chains: [
        [
          [edge, ground],
          [width - edge, ground],
        ],
      ],
    });
    top = ground + type * (1.6 + 1.25 * Math.max(...row.map(({ texts }) => texts.length))) + 2;
  }
  return {
    id,
    title,
    description: `Side by side on the ground, all to one scale: ${standing.map(({ name, sizes }) => `${name}, ${sizes.join(", ")}`).join("; ")}.`,
    width,
    height: top,
    scale,
    pen: 0.25,
    marks,
  };
}

/** Tried from large to small in steps of a twentieth, so that all of a short line stand in one row if that leaves them half as large as alone. */
function scaleFor(standing: readonly Standing[], room: number, tallest: number, type: number): number {
  const widest = Math.max(...standing.map(({ front }) => front.width));
  const highest = Math.max(...standing.map(({ front }) => front.height));
  const alone = Math.min(room / widest, tallest / highest);
  for (let times = 1; times >= 0.5; times -= 0.05) {
    const all = standing.map((one) => columnOf(one, alone * times, type).width);
    if (all.reduce((sum, one) => sum + one, 0) + gap * (all.length - 1) <= room) return alone * times;
  }
  return alone * 0.75;
}

function columnOf({ front, name, sizes }: Standing, scale: number, type: number) {
  const drawn = front.width * scale;
  const least = Math.max(...sizes.map((size) => textWidth(withFractions(size), type, false)));
  const width = Math.max(drawn, least, type * 9);
  const names = wrapText(name, type, width);
  return {
    front,
    drawn,
    height: front.height * scale,
    width,
    names: names.length,
    texts: [...names, ...sizes.map(withFractions)],
  };
}
