// Two points and a value -> a dimension line with its extension lines, arrows and value (ISO 129-1).
import type { Mark, Paper } from "./drawing.ts";
import { capHeight, descent, textWidth } from "./text-width.ts";

/** The extension line starts this far from the outline and runs this far past the dimension line (mm). */
export const gapAtOutline = 1;
const runPast = 2;
export const arrowSize = 2.4;
/** Between a dimension line and the foot of its value. */
const lift = 0.8;

const along = (from: Paper, way: Paper, by: number): Paper => [from[0] + way[0] * by, from[1] + way[1] * by];

/** Degrees, anti-clockwise, at which text along a line reads from below or from the right. */
function readingTurn(a: Paper, b: Paper): number {
  const turn = (-Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI;
  const upright = turn > 90.001 ? turn - 180 : turn <= -89.999 ? turn + 180 : turn;
  return Math.round(upright * 100) / 100 + 0;
}

/**
 * The distance a to b, drawn `off` mm away along the unit `outward`. The value stands over the middle of its line,
 * read from below or from the right; arrows stand outside where the line is too short for them.
 */
export function drawDimension(a: Paper, b: Paper, outward: Paper, off: number, value: string, size: number): Mark[] {
  const from = along(a, outward, off);
  const to = along(b, outward, off);
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const way: Paper = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const back: Paper = [-way[0], -way[1]];
  const outside = length < 3 * arrowSize;
  const turn = readingTurn(from, to);
  const angle = (turn * Math.PI) / 180;
  // Up as the reader sees it.
  const over: Paper = [-Math.sin(angle), -Math.cos(angle)];
  const middle: Paper = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const beside = textWidth(value, size, false) > length - 1;
  const tail = outside ? 2 * arrowSize : 0;
  const chains: Paper[][] = [
    [along(a, outward, gapAtOutline), along(a, outward, off + runPast)],
    [along(b, outward, gapAtOutline), along(b, outward, off + runPast)],
    [along(from, back, tail), along(to, way, tail)],
  ];
  const foot = beside && outside ? lift + descent * size : lift;
  return [
    { kind: "lines", line: "dimension", chains },
    { kind: "arrowhead", tip: from, way: outside ? way : back, size: arrowSize },
    { kind: "arrowhead", tip: to, way: outside ? back : way, size: arrowSize },
    { kind: "text", at: along(middle, over, foot), text: value, size, anchor: "middle", turn },
  ];
}

/** A second value for the same dimension, under the middle of its line. */
export function drawUnderValue(a: Paper, b: Paper, outward: Paper, off: number, value: string, size: number): Mark {
  const from = along(a, outward, off);
  const to = along(b, outward, off);
  const turn = readingTurn(from, to);
  const angle = (turn * Math.PI) / 180;
  const under: Paper = [Math.sin(angle), Math.cos(angle)];
  const middle: Paper = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  return { kind: "text", at: along(middle, under, lift + capHeight * size), text: value, size, anchor: "middle", turn };
}
