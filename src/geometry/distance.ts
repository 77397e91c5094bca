// Two solids -> the least gap between them.
import { overlapOf } from "./overlap.ts";
import type { Vec3 } from "./shape.ts";
import type { Edge, Face, Solid } from "./solid.ts";
import { inInches, type Tolerances } from "./tolerance.ts";
import { add, cross, dot, length, subtract, times } from "./vector.ts";

/** The least distance between two solids; 0 where they touch or overlap. */
export function distanceOf(a: Solid, b: Solid, tolerances: Tolerances = inInches): number {
  if (overlapOf(a, b, tolerances).volume > 0) return 0;
  // solids apart are nearest corner to face, or edge to edge
  let least = Math.min(leastToFaces(a, b), leastToFaces(b, a));
  for (const e of a.edges) {
    for (const f of b.edges) {
      if (boxGap(e, f) < least) least = Math.min(least, edgeGap(e, f));
    }
  }
  return least <= tolerances.solid ? 0 : least;
}

function leastToFaces(corners: Solid, solid: Solid): number {
  let least = Number.POSITIVE_INFINITY;
  const points = new Set(corners.edges.flatMap((e) => [e.a, e.b]));
  for (const face of solid.faces) {
    for (const p of points) {
      const height = dot(face.normal, p) - face.offset;
      if (height >= -1e-9 && height < least && isOver(face, p)) least = Math.max(0, height);
    }
  }
  return least;
}

/** Whether a point stands over a face, by counting the loops' edges that a ray in the plane crosses. */
function isOver(face: Face, p: Vec3): boolean {
  const outer = face.loops[0] ?? [];
  const u = subtract(outer[1] ?? p, outer[0] ?? p);
  const v = cross(face.normal, u);
  let inside = false;
  for (const loop of face.loops) {
    loop.forEach((corner, i) => {
      const from = subtract(corner, p);
      const to = subtract(loop[(i + 1) % loop.length] ?? corner, p);
      const [y, nextY] = [dot(from, v), dot(to, v)];
      if (y > 0 === nextY > 0) return;
      const [x, nextX] = [dot(from, u), dot(to, u)];
      if (x + (y / (y - nextY)) * (nextX - x) > 0) inside = !inside;
    });
  }
  return inside;
}

/** A lower bound of the gap between two edges. */
function boxGap(e: Edge, f: Edge): number {
  const apart = (k: 0 | 1 | 2) =>
    Math.max(
      0,
      Math.min(f.a[k], f.b[k]) - Math.max(e.a[k], e.b[k]),
      Math.min(e.a[k], e.b[k]) - Math.max(f.a[k], f.b[k]),
    );
  return Math.hypot(apart(0), apart(1), apart(2));
}

type Segment = Pick<Edge, "a" | "b">;

/** The least distance of two segments: where their lines come nearest, or else at one of the four ends. */
export function edgeGap(e: Segment, f: Segment): number {
  const [d, g, r] = [subtract(e.b, e.a), subtract(f.b, f.a), subtract(e.a, f.a)];
  const [dd, gg, dg] = [dot(d, d), dot(g, g), dot(d, g)];
  const square = dd * gg - dg * dg;
  if (square > 1e-12 * dd * gg) {
    const s = (dg * dot(g, r) - gg * dot(d, r)) / square;
    const t = (dd * dot(g, r) - dg * dot(d, r)) / square;
    if (s >= 0 && s <= 1 && t >= 0 && t <= 1) return length(subtract(add(e.a, times(d, s)), add(f.a, times(g, t))));
  }
  return Math.min(endGap(e.a, f), endGap(e.b, f), endGap(f.a, e), endGap(f.b, e));
}

function endGap(p: Vec3, e: Segment): number {
  const along = subtract(e.b, e.a);
  const t = Math.min(1, Math.max(0, dot(subtract(p, e.a), along) / dot(along, along)));
  return length(subtract(p, add(e.a, times(along, t))));
}
