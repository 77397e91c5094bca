// Two straight lines on paper -> how far apart they run and how long beside each other.
import type { Paper } from "./drawing.ts";

export type Segment = readonly [Paper, Paper];

/** In mm; undefined where they aren't parallel (to a thousandth) or one has no length. */
export function sideBySide(
  [a, b]: Segment,
  [c, d]: Segment,
): { readonly apart: number; readonly together: number } | undefined {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const other = Math.hypot(d[0] - c[0], d[1] - c[1]);
  if (length < 1e-6 || other < 1e-6) return undefined;
  const way: Paper = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  if (Math.abs((way[0] * (d[1] - c[1]) - way[1] * (d[0] - c[0])) / other) > 1e-3) return undefined;
  const along = (p: Paper): number => (p[0] - a[0]) * way[0] + (p[1] - a[1]) * way[1];
  const apart = Math.abs((c[0] - a[0]) * way[1] - (c[1] - a[1]) * way[0]);
  const [from, to] = [Math.min(along(c), along(d)), Math.max(along(c), along(d))];
  return { apart, together: Math.min(length, to) - Math.max(0, from) };
}
