// Convex polygons: what two have in common, and one run out past the lines of a rectangle that its corners lie on.
import type { Vec2 } from "./shape.ts";

/** What is left of a convex polygon on the side of the line u . p <= offset; corners on the line are kept once. */
export function keptBelow(points: readonly Vec2[], u: Vec2, offset: number): Vec2[] {
  const height = (p: Vec2): number => u[0] * p[0] + u[1] * p[1] - offset;
  const near = 1e-9;
  return points.flatMap((p, i) => {
    const q = points[(i + 1) % points.length] ?? p;
    const [h, g] = [height(p), height(q)];
    const kept: Vec2[] = h <= near ? [p] : [];
    if ((h < -near && g > near) || (h > near && g < -near)) {
      const t = h / (h - g);
      kept.push([p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t]);
    }
    return kept;
  });
}

/** The common part of a convex polygon and the rectangle from 0, 0 to `size`. */
export function withinRectangle(points: readonly Vec2[], [w, h]: Vec2): Vec2[] {
  const lines: readonly (readonly [Vec2, number])[] = [
    [[-1, 0], 0],
    [[1, 0], w],
    [[0, -1], 0],
    [[0, 1], h],
  ];
  return lines.reduce<Vec2[]>((left, [u, offset]) => keptBelow(left, u, offset), [...points]);
}

/**
 * A convex polygon in the rectangle from 0, 0 to `size`, its sides that lie on the rectangle moved out by `by`: a side that runs into them
 * keeps its line.
 */
export function runOut(points: readonly Vec2[], size: Vec2, by: number): Vec2[] {
  const on = (p: Vec2): readonly [number, number] => [borderOf(p[0], size[0]), borderOf(p[1], size[1])];
  return points.map((p, i) => {
    const [before, after] = [points.at(i - 1) ?? p, points[(i + 1) % points.length] ?? p];
    const [bx, by2] = on(p);
    if (bx === 0 && by2 === 0) return p;
    const lies = (q: Vec2): boolean => {
      const [qx, qy] = on(q);
      return (bx !== 0 && qx === bx) || (by2 !== 0 && qy === by2);
    };
    if (lies(before) && lies(after)) return [p[0] + bx * by, p[1] + by2 * by];
    if (!lies(before) && !lies(after)) return p;
    const inner = lies(before) ? after : before;
    const [dx, dy] = [p[0] - inner[0], p[1] - inner[1]];
    const speed = Math.max(bx * dx, by2 * dy);
    return [p[0] + (dx * by) / speed, p[1] + (dy * by) / speed];
  });
}

/** -1 at the low border, 1 at the high one, 0 within. */
const borderOf = (v: number, most: number): number => (Math.abs(v) < 1e-9 ? -1 : Math.abs(v - most) < 1e-9 ? 1 : 0);
