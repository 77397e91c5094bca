// Points -> the smooth curve through them as cubic pieces: a spline whose bend never jumps, run by the lengths of its chords.
import type { PathItem, Vec2 } from "./shape.ts";

/** The curve from the first point on through the others; it leaves and arrives in these directions, or bends freely. */
export function curveThrough(points: readonly Vec2[], leaving?: Vec2, arriving?: Vec2): PathItem[] {
  const steps = chordsOf(points);
  const along = (k: 0 | 1) =>
    speeds(
      points.map((p) => p[k]),
      steps,
      leaving?.[k],
      arriving?.[k],
    );
  return pieces(points, steps, along(0), along(1));
}

/** The closed curve through the points; it starts and ends at the first. */
export function roundThrough(points: readonly Vec2[]): PathItem[] {
  // Run three times round, the middle round doesn't feel the ends any more.
  const [first] = points;
  if (!first) return [];
  const n = points.length;
  const rounds = [...points, ...points, ...points, first];
  return curveThrough(rounds).slice(n, 2 * n);
}

const chordsOf = (points: readonly Vec2[]): number[] =>
  points.slice(1).map((p, i) => Math.hypot(p[0] - (points[i]?.[0] ?? 0), p[1] - (points[i]?.[1] ?? 0)));

/** One coordinate's speed at every point: a tridiagonal system, solved from both ends (Thomas). */
function speeds(v: readonly number[], h: readonly number[], first?: number, last?: number): number[] {
  const n = v.length;
  const at = (list: readonly number[], i: number): number => list[i] ?? 0;
  const slope = (i: number) => (at(v, i + 1) - at(v, i)) / at(h, i);
  const rows = v.map((_, i): [number, number, number, number] => {
    if (i === 0) return first === undefined ? [0, 2, 1, 3 * slope(0)] : [0, 1, 0, first];
    if (i === n - 1) return last === undefined ? [1, 2, 0, 3 * slope(n - 2)] : [0, 1, 0, last];
    const [b, a] = [at(h, i - 1), at(h, i)];
    return [a, 2 * (a + b), b, 3 * (a * slope(i - 1) + b * slope(i))];
  });
  const upper: number[] = [];
  const right: number[] = [];
  rows.forEach(([l, d, u, r], i) => {
    const scale = d - l * at(upper, i - 1);
    upper.push(u / scale);
    right.push((r - l * at(right, i - 1)) / scale);
  });
  const found = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) found[i] = at(right, i) - at(upper, i) * at(found, i + 1);
  return found;
}

function pieces(points: readonly Vec2[], h: readonly number[], dx: readonly number[], dy: readonly number[]) {
  const control = (i: number, by: number): Vec2 => {
    const [x, y] = points[i] ?? [0, 0];
    return [x + by * (dx[i] ?? 0), y + by * (dy[i] ?? 0)];
  };
  return points.slice(1).map((to, i): PathItem => {
    const third = (h[i] ?? 0) / 3;
    return { leave: control(i, third), reach: control(i + 1, -third), to };
  });
}
