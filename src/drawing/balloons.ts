// What is seen of each piece -> its mark in a circle outside the picture, in two columns, a leader to a dot on the piece.
import { cross } from "./collision.ts";
import type { Mark, Paper } from "./drawing.ts";
import { spread } from "./spread.ts";

/** Places on paper where a piece's dot may lie, the best first; `room` is the way to the nearest outline, mm. */
export type Callout = {
  readonly text: string;
  readonly spots: readonly { readonly at: Paper; readonly room: number }[];
};

export type Columns = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

export const balloonRadius = 3.4;
const dotRadius = 0.7;
/** From the picture to the middle of a column, and the least from a balloon to the edge of the sheet, mm. */
const beside = balloonRadius + 8;
const sheetEdge = 2;
/** From middle to middle of neighbours in a column. */
const step = 2 * balloonRadius + 2;

type Placed = { readonly text: string; readonly dot: Paper; balloon: Paper };

/** Columns that stand close outside a picture and inside its sheet. */
export const columnsBeside = (
  picture: { readonly left: number; readonly width: number },
  sheetWidth: number,
  top: number,
  bottom: number,
): Columns => ({
  left: Math.max(sheetEdge + balloonRadius, picture.left - beside),
  right: Math.min(sheetWidth - sheetEdge - balloonRadius, picture.left + picture.width + beside),
  top,
  bottom,
});

/** Columns stand at u = left and u = right. No two balloons overlap and no leader crosses another. */
export function drawBalloons(callouts: readonly Callout[], columns: Columns): Mark[] {
  const middle = (columns.left + columns.right) / 2;
  const dots = callouts.map((callout) => ({ text: callout.text, dot: chooseSpot(callout, columns) }));
  const ordered = [...dots].sort((a, b) => a.dot[0] - b.dot[0]);
  const natural = ordered.filter((entry) => entry.dot[0] < middle).length;
  const most = Math.max(Math.floor((columns.bottom - columns.top) / step), Math.ceil(ordered.length / 2));
  const lefts = Math.max(ordered.length - most, Math.min(most, natural));
  const placed = [
    ...inColumn(ordered.slice(0, lefts), columns.left, columns),
    ...inColumn(ordered.slice(lefts), columns.right, columns),
  ];
  untangle(placed);
  return placed
    .sort((a, b) => (a.text < b.text ? -1 : 1))
    .flatMap(({ text, dot, balloon }): Mark[] => {
      const length = Math.hypot(dot[0] - balloon[0], dot[1] - balloon[1]);
      const rim: Paper = [
        balloon[0] + ((dot[0] - balloon[0]) / length) * balloonRadius,
        balloon[1] + ((dot[1] - balloon[1]) / length) * balloonRadius,
      ];
      return [
        { kind: "lines", line: "dimension", chains: [[rim, dot]] },
        { kind: "dot", at: dot, radius: dotRadius },
        { kind: "balloon", at: balloon, text, radius: balloonRadius },
      ];
    });
}

/** Room counts up to 1.5 mm; then the shorter leader wins. */
function chooseSpot(callout: Callout, columns: Columns): Paper {
  const worth = (spot: Callout["spots"][number]): number =>
    Math.min(spot.room, 1.5) * 30 - Math.min(spot.at[0] - columns.left, columns.right - spot.at[0]);
  const best = [...callout.spots].sort((a, b) => worth(b) - worth(a))[0];
  if (best === undefined) throw new Error(`nothing of ${callout.text} is seen`);
  return best.at;
}

function inColumn(entries: readonly { text: string; dot: Paper }[], u: number, columns: Columns): Placed[] {
  const sorted = [...entries].sort((a, b) => a.dot[1] - b.dot[1]);
  // A leader is never level: the balloon is wished a little above its dot.
  const places = spread(
    sorted.map((entry) => entry.dot[1] - 4),
    step,
    columns.top + balloonRadius,
    columns.bottom - balloonRadius,
  );
  return sorted.map((entry, i) => ({ ...entry, balloon: [u, places[i] as number] }));
}

/** Two crossing leaders change balloons; each change makes the sum of all leaders shorter, so this ends. */
function untangle(placed: Placed[]): void {
  for (let again = true; again; ) {
    again = false;
    placed.forEach((a, i) => {
      for (const b of placed.slice(i + 1)) {
        if (!cross(a.dot, a.balloon, b.dot, b.balloon)) continue;
        [a.balloon, b.balloon] = [b.balloon, a.balloon];
        again = true;
      }
    });
  }
}
