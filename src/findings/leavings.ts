// A board as it lies -> the rectangles of it that no piece takes.

import { compareLengths, type Length, minus, plus, zero } from "../units/length.ts";
import type { PlannedBoard, PlannedPiece } from "./board-plan.ts";
import type { Point } from "./saw-cuts.ts";

/** Corners from the board's fresh end and lower edge, inches. */
export type Leaving = { readonly from: Point; readonly to: Point };

/** Behind the last piece of each strip or length, beside the last of these, and beside or behind pieces smaller than they are. */
export function leavings({ width, stock, order, strips, left }: PlannedBoard): Leaving[] {
  const rip = order === "rip";
  const found = strips.flatMap((strip): Leaving[] => {
    const far = plus(strip.from, strip.size);
    const behind = minus(rip ? stock.usable : width, strip.left);
    return [
      box(rip, behind, plus(behind, strip.left), strip.from, far),
      ...strip.pieces.map((piece) => besidePiece(rip, piece, far)),
    ];
  });
  const room = rip ? width : stock.usable;
  const whole = rip ? stock.usable : width;
  return [...found, box(rip, zero, whole, minus(room, left), room)].filter(
    ({ from, to }) => compareLengths(to[0], from[0]) > 0 && compareLengths(to[1], from[1]) > 0,
  );
}

/** `a` to `b` the way second cuts are counted, `c` to `d` the way first cuts are. */
const box = (rip: boolean, a: Length, b: Length, c: Length, d: Length): Leaving =>
  rip ? { from: [a, c], to: [b, d] } : { from: [c, a], to: [d, b] };

function besidePiece(rip: boolean, { at, across, length, width }: PlannedPiece, far: Length): Leaving {
  return rip
    ? { from: [at, plus(across, width)], to: [plus(at, length), far] }
    : { from: [plus(at, length), across], to: [far, plus(across, width)] };
}
