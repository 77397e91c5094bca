// Two convex outlines on paper -> whether they come nearer to each other than a given gap.
import type { Paper } from "./drawing.ts";

/** True where no straight line with `gap` mm of free room parts the two; a segment is an outline of two points. */
export function collide(a: readonly Paper[], b: readonly Paper[], gap: number): boolean {
  return !parts(a, b, gap) && !parts(b, a, gap);
}

/** Whether a line along one of a's sides (or, for a segment, across its end) has b wholly beyond it. */
function parts(a: readonly Paper[], b: readonly Paper[], gap: number): boolean {
  for (let i = 0; i < a.length; i++) {
    const from = a[i] as Paper;
    const to = a[(i + 1) % a.length] as Paper;
    const side: Paper = [to[0] - from[0], to[1] - from[1]];
    const length = Math.hypot(...side);
    if (length === 0) continue;
    const along: Paper = [side[0] / length, side[1] / length];
    const across: Paper = [along[1], -along[0]];
    if (apart(a, b, across, gap) || (a.length === 2 && apart(a, b, along, gap))) return true;
  }
  return false;
}

function apart(a: readonly Paper[], b: readonly Paper[], axis: Paper, gap: number): boolean {
  const [aLow, aHigh] = reach(a, axis);
  const [bLow, bHigh] = reach(b, axis);
  return bLow - aHigh >= gap - 1e-9 || aLow - bHigh >= gap - 1e-9;
}

function reach(outline: readonly Paper[], axis: Paper): readonly [number, number] {
  const steps = outline.map((at) => at[0] * axis[0] + at[1] * axis[1]);
  return [Math.min(...steps), Math.max(...steps)];
}

/** A circle as the square round it. */
export const squareRound = ([u, v]: Paper, radius: number): readonly Paper[] => [
  [u - radius, v - radius],
  [u + radius, v - radius],
  [u + radius, v + radius],
  [u - radius, v + radius],
];

/** Whether two segments cross or touch, their own ends left out by a hair. */
export function cross(a: Paper, b: Paper, c: Paper, d: Paper): boolean {
  const side = (p: Paper, q: Paper, r: Paper): number => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  return side(a, b, c) * side(a, b, d) < -1e-9 && side(c, d, a) * side(c, d, b) < -1e-9;
}
