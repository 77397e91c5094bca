// An end that isn't square -> its angle on paper: the blank's square end in thin line, an arc to the cut, the degrees outside.
import type { Mark, Paper } from "./drawing.ts";
import { baseline, textWidth } from "./text-width.ts";

/** Degrees to a tenth, as a saw's scale can be set: "14°", "35.3°". */
export const formatDegrees = (degrees: number): string => `${Math.round(Math.abs(degrees) * 10) / 10}°`;

/** Whether an angle is one that a saw can be set to; less is square. */
export const isSlanted = (degrees: number): boolean => Math.abs(degrees) >= 0.05;

/** Room from the blank's end to the label's far side, mm. */
export const angleRoom = (degrees: number, size: number): number =>
  isSlanted(degrees) ? textWidth(formatDegrees(degrees), size, false) + 2 : 0;

const farthestArc = 11;

/**
 * `long` and `short` are the two corners of the cut on paper; the blank's square end runs through `long`. The degrees stand
 * outside it, `side` -1 to the left and 1 to the right.
 */
export function drawEndAngle(long: Paper, short: Paper, side: -1 | 1, degrees: number, size: number): Mark[] {
  const square: Paper = [long[0], short[1]];
  const height = Math.abs(short[1] - long[1]);
  const radius = Math.min(farthestArc, height * 0.75);
  const down = short[1] > long[1] ? 1 : -1;
  const whole = Math.atan2(Math.abs(short[0] - long[0]), height);
  const arc = Array.from({ length: 9 }, (_, i): Paper => {
    const angle = (whole * i) / 8;
    return [long[0] - side * radius * Math.sin(angle), long[1] + down * radius * Math.cos(angle)];
  });
  const chains: Paper[][] = [[long, square, short], ...(radius * whole < 1 ? [] : [arc])];
  // Beside its arc, which on a tall end is near the long corner.
  const middle = long[1] + down * Math.max(size * 0.6, Math.min(height * 0.7, radius));
  const at: Paper = [long[0] + side * 1.2, middle + baseline(size)];
  return [
    { kind: "lines", line: "path", chains: chains.slice(0, 1) },
    { kind: "lines", line: "dimension", chains: chains.slice(1) },
    { kind: "text", at, text: formatDegrees(degrees), size, anchor: side < 0 ? "end" : "start" },
  ];
}
