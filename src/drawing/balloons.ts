// What is seen of each piece -> its mark in a circle outside the picture, in two columns, a leader to a dot on the piece.
import { cross } from "./collision.ts";
import type { DotSpot } from "./dot-spots.ts";
import type { Mark, Paper } from "./drawing.ts";
import { spread } from "./spread.ts";
import { textWidth } from "./text-width.ts";

/** Places on paper where a piece's dot may lie, the best first. */
export type Callout = { readonly text: string; readonly spots: readonly DotSpot[] };

export type Columns = {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly radius: number;
};

const usualRadius = 3.4;
/** The type of a mark with words in it ("B right") and its room to the rim, mm. */
export const wordType = 2.8;
const wordRoom = 0.6;

/** All balloons of a drawing are as large as its longest mark asks. */
export const balloonRadius = (marks: readonly string[]): number =>
  Math.max(
    usualRadius,
    ...marks.filter((mark) => mark.length > 2).map((mark) => textWidth(mark, wordType, true) / 2 + wordRoom),
  );

const dotRadius = 0.7;
/** From the picture to the rim of a column's balloons, and the least from a balloon to the edge of the sheet, mm. */
const beside = 8;
const sheetEdge = 2;
/** From middle to middle of neighbours in a column. */
const stepOf = (radius: number): number => 2 * radius + 2;

type Placed = { readonly text: string; readonly dot: Paper; balloon: Paper };

/** Columns that stand close outside a picture and inside its sheet. */
export const columnsBeside = (
  picture: { readonly left: number; readonly width: number },
  sheetWidth: number,
  top: number,
  bottom: number,
  radius: number,
): Columns => ({
  left: Math.max(sheetEdge + radius, picture.left - radius - beside),
  right: Math.min(sheetWidth - sheetEdge - radius, picture.left + picture.width + radius + beside),
  top,
  bottom,
  radius,
});

/** Columns stand at u = left and u = right. No two balloons overlap and no leader crosses another. */
export function drawBalloons(callouts: readonly Callout[], columns: Columns): Mark[] {
  const { radius } = columns;
  const middle = (columns.left + columns.right) / 2;
  const dots = callouts.map((callout) => ({ text: callout.text, dot: chooseSpot(callout, columns) }));
  const ordered = [...dots].sort((a, b) => a.dot[0] - b.dot[0]);
  const natural = ordered.filter((entry) => entry.dot[0] < middle).length;
  const most = Math.max(Math.floor((columns.bottom - columns.top) / stepOf(radius)), Math.ceil(ordered.length / 2));
  const lefts = Math.max(ordered.length - most, Math.min(most, natural));
  const placed = [
    ...inColumn(ordered.slice(0, lefts), columns.left, columns),
    ...inColumn(ordered.slice(lefts), columns.right, columns),
  ];
  untangle(placed);
  for (const entry of placed) {
    const others = placed.filter((other) => other !== entry);
    const isFree = (moved: Paper): boolean =>
      moved[1] - radius >= columns.top &&
      moved[1] + radius <= columns.bottom &&
      others.every(
        ({ dot, balloon }) =>
          !cross(entry.dot, moved, dot, balloon) &&
          Math.hypot(moved[0] - balloon[0], moved[1] - balloon[1]) >= 2 * radius,
      );
    entry.balloon = offLevel(entry).find(isFree) ?? entry.balloon;
  }
  return placed
    .sort((a, b) => (a.text < b.text ? -1 : 1))
    .flatMap(({ text, dot, balloon }): Mark[] => {
      const length = Math.hypot(dot[0] - balloon[0], dot[1] - balloon[1]);
      const rim: Paper = [
        balloon[0] + ((dot[0] - balloon[0]) / length) * radius,
        balloon[1] + ((dot[1] - balloon[1]) / length) * radius,
      ];
      return [
        { kind: "lines", line: "dimension", chains: [[rim, dot]] },
        { kind: "dot", at: dot, radius: dotRadius },
        { kind: "balloon", at: balloon, text, radius },
      ];
    });
}

/** What a dot on a broad face, not on an end or an edge, and each other piece that a leader keeps clear of are worth, mm of leader. */
const broadFace = 15;
const clearOfOne = 8;

/** Room counts up to 1.5 mm, a broad face, and a way out over no other piece; then the shorter leader wins. */
function chooseSpot(callout: Callout, columns: Columns): Paper {
  const way = ({ at, crossed }: DotSpot): number =>
    Math.min(at[0] - columns.left + crossed.left * clearOfOne, columns.right - at[0] + crossed.right * clearOfOne);
  const worth = (spot: DotSpot): number => Math.min(spot.room, 1.5) * 30 + (spot.broad ? broadFace : 0) - way(spot);
  const best = [...callout.spots].sort((a, b) => worth(b) - worth(a))[0];
  if (best === undefined) throw new Error(`nothing of ${callout.text} is seen`);
  return best.at;
}

function inColumn(entries: readonly { text: string; dot: Paper }[], u: number, columns: Columns): Placed[] {
  const sorted = [...entries].sort((a, b) => a.dot[1] - b.dot[1]);
  // A leader is never level: the balloon is wished a little above its dot.
  const places = spread(
    sorted.map((entry) => entry.dot[1] - 4),
    stepOf(columns.radius),
    columns.top + columns.radius,
    columns.bottom - columns.radius,
  );
  return sorted.map((entry, i) => ({ ...entry, balloon: [u, places[i] as number] }));
}

/** A leader that runs all but level is tilted by moving its balloon a little up, or else down: less than the room between two. */
function offLevel({ dot, balloon }: Placed): readonly Paper[] {
  const [across, up] = [Math.abs(dot[0] - balloon[0]), dot[1] - balloon[1]];
  const least = across * Math.tan((1.2 * Math.PI) / 180);
  if (Math.abs(up) >= least) return [balloon];
  return [-Math.min(1.9, least - up), Math.min(1.9, least + up)].map((by): Paper => [balloon[0], balloon[1] + by]);
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
