// An outline of loops -> its polygons, and where a line crosses them.
import { profileOf } from "./profile.ts";
import type { Loop, Vec2 } from "./shape.ts";

/** Chords lie off their curves by this at most (inches). */
const chord = 0.001;

type Outline = { readonly edge: Loop; readonly holes: readonly Loop[] };
type Lines = readonly (readonly Vec2[])[];
const known = new WeakMap<Outline, Lines>();

/** The edge and the cut-outs as polygons, remembered. */
export function linesOf(outline: Outline): Lines {
  const before = known.get(outline);
  if (before) return before;
  const lines = [outline.edge, ...outline.holes].map((loop) => profileOf(loop, chord).points);
  known.set(outline, lines);
  return lines;
}

/** Where a line in the plane of an outline crosses it, as shares of its length, in order. */
export function crossingsOf(lines: Lines, from: Vec2, to: Vec2): number[] {
  const [ux, uy] = [to[0] - from[0], to[1] - from[1]];
  const found = lines.flatMap((points) =>
    points.flatMap(([ax, ay], i): number[] => {
      const [bx, by] = points[(i + 1) % points.length] ?? [ax, ay];
      const [vx, vy] = [bx - ax, by - ay];
      const turn = ux * vy - uy * vx;
      if (Math.abs(turn) < 1e-15) return [];
      const s = ((ax - from[0]) * vy - (ay - from[1]) * vx) / turn;
      const t = ((ax - from[0]) * uy - (ay - from[1]) * ux) / turn;
      return t >= 0 && t < 1 ? [s] : [];
    }),
  );
  return found.sort((a, b) => a - b);
}
