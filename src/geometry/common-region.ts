// Two flat regions with holes -> what they have in common, convex and square outlines exactly and others on a fine grid.
import { Clipper, FillRule, type Path64 } from "clipper2-ts";
import { isConvex } from "./clip.ts";
import { signedArea } from "./profile.ts";
import type { Vec2 } from "./shape.ts";
import type { Tolerances } from "./tolerance.ts";

/** Loops in a plane, the outer one first and counter-clockwise, holes clockwise. */
export type Region = readonly (readonly Vec2[])[];

/** The common part of two regions; it may fall into several outer loops. */
export function commonRegion(
  a: Region,
  b: Region,
  tolerances: Tolerances,
): { readonly loops: Region; readonly area: number; readonly perimeter: number } {
  const bothConvex = [a, b].every((region) => region.length === 1 && region.every(isConvex));
  const loops = bothConvex ? convexLoops(a.flat(), b.flat(), tolerances.solid) : gridLoops(a, b, tolerances.clipGrid);
  return {
    loops,
    area: loops.reduce((sum, loop) => sum + signedArea(loop), 0),
    perimeter: loops.reduce((sum, loop) => sum + around(loop), 0),
  };
}

/** Polygon `a` cut off along every side of `b`; corners within `near` of a side count as on it. */
function convexLoops(a: readonly Vec2[], b: readonly Vec2[], near: number): Vec2[][] {
  let left = [...a];
  b.forEach(([u, v], i) => {
    const [nextU, nextV] = b[(i + 1) % b.length] ?? [u, v];
    const size = Math.hypot(nextU - u, nextV - v);
    const across = (p: Vec2): number => {
      const height = ((nextU - u) * (p[1] - v) - (nextV - v) * (p[0] - u)) / size;
      return Math.abs(height) <= near ? 0 : height;
    };
    left = left.flatMap((p, k) => {
      const q = left[(k + 1) % left.length] ?? p;
      const [h, g] = [across(p), across(q)];
      const kept: Vec2[] = h >= 0 ? [p] : [];
      if (h * g < 0) kept.push([p[0] + ((q[0] - p[0]) * h) / (h - g), p[1] + ((q[1] - p[1]) * h) / (h - g)]);
      return kept;
    });
  });
  return left.length >= 3 ? [left] : [];
}

function gridLoops(a: Region, b: Region, grid: number): Vec2[][] {
  const onGrid = (region: Region): Path64[] =>
    region.map((loop) => loop.map(([u, v]) => ({ x: Math.round(u / grid), y: Math.round(v / grid) })));
  const given = [...a.flat(), ...b.flat()];
  const us = levels(given.map((p) => p[0]));
  const vs = levels(given.map((p) => p[1]));
  // a corner that came from a given line goes back to it, so that square outlines stay exact
  const exact = (p: { x: number; y: number }): Vec2 => [backTo(us, p.x * grid, grid), backTo(vs, p.y * grid, grid)];
  return Clipper.intersect(onGrid(a), onGrid(b), FillRule.NonZero)
    .map((path) => path.map(exact))
    .filter((loop) => loop.length >= 3)
    .sort((p, q) => signedArea(q) - signedArea(p));
}

const levels = (values: readonly number[]): number[] => [...new Set(values)].sort((p, q) => p - q);

/** The nearest of the sorted levels within a step of the grid, else the value itself. */
function backTo(sorted: readonly number[], value: number, grid: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] ?? value) < value) low = middle + 1;
    else high = middle;
  }
  const [below, above] = [sorted[low - 1] ?? Number.NEGATIVE_INFINITY, sorted[low] ?? Number.POSITIVE_INFINITY];
  const nearest = value - below < above - value ? below : above;
  return Math.abs(nearest - value) < grid ? nearest : value;
}

const around = (loop: readonly Vec2[]): number =>
  loop.reduce((sum, [u, v], i) => {
    const [nextU, nextV] = loop[(i + 1) % loop.length] ?? [u, v];
    return sum + Math.hypot(nextU - u, nextV - v);
  }, 0);
