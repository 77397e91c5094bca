// A convex body and a plane -> the part of the body behind the plane, by its corners alone.
import type { Body, Side } from "./body.ts";
import type { Vec3 } from "./shape.ts";
import { add, dot, subtract, times } from "./vector.ts";

/**
 * The part of a convex body on the side of the plane its normal points away from. Corners within `near` of the plane
 * count as in it, so that a plane that only touches takes nothing, or leaves nothing: then the body has no faces.
 */
export function clipped(body: Body, plane: Side, near: number): Body {
  const heights = body.points.map((p) => {
    const height = dot(plane.normal, p) - plane.offset;
    return Math.abs(height) <= near ? 0 : height;
  });
  // corners that earlier cuts took off are still numbered, but no face names them
  const used = new Set(body.faces.flatMap((face) => face.loops.flat()).map((i) => Math.sign(heights[i] ?? 0)));
  if (!used.has(1)) return body;
  if (!used.has(-1)) return { points: [], faces: [] };

  const points = [...body.points];
  const cuts = new Map<string, number>();
  const cutBetween = (a: number, b: number): number => {
    const [low, high] = a < b ? [a, b] : [b, a];
    const known = cuts.get(`${low} ${high}`);
    if (known !== undefined) return known;
    const [p, q] = [points[low], points[high]];
    const [h, k] = [heights[low], heights[high]];
    if (p === undefined || q === undefined || h === undefined || k === undefined)
      throw new Error("a corner is missing");
    points.push(between(p, q, h / (h - k)));
    cuts.set(`${low} ${high}`, points.length - 1);
    return points.length - 1;
  };

  const faces: { side: Side; loops: number[][] }[] = [];
  const after = new Map<number, number>();
  for (const face of body.faces) {
    const loop = face.loops[0] ?? [];
    const kept: number[] = [];
    const inPlane = (i: number) => i >= heights.length || heights[i] === 0;
    loop.forEach((a, i) => {
      const b = loop[(i + 1) % loop.length] ?? a;
      const [h, k] = [heights[a] ?? 0, heights[b] ?? 0];
      if (h <= 0) kept.push(a);
      if (h * k < 0) kept.push(cutBetween(a, b));
    });
    if (kept.length < 3 || kept.every(inPlane)) continue;
    faces.push({ side: face.side, loops: [kept] });
    kept.forEach((a, i) => {
      const b = kept[(i + 1) % kept.length] ?? a;
      // the new face runs along the same edge the other way
      if (inPlane(a) && inPlane(b)) after.set(b, a);
    });
  }
  faces.push({ side: plane, loops: [ringOf(after)] });
  return { points, faces };
}

const between = (p: Vec3, q: Vec3, t: number): Vec3 => add(p, times(subtract(q, p), t));

function ringOf(after: ReadonlyMap<number, number>): number[] {
  const [first] = after.keys();
  const ring: number[] = [];
  for (let at = first; at !== undefined && ring.length <= after.size; at = after.get(at)) {
    if (ring.length > 0 && at === first) return ring;
    ring.push(at);
  }
  throw new Error(`a plane cuts a body in an open ring of ${after.size} edges`);
}

/** Whether a polygon that runs counter-clockwise has no inward corner. */
export function isConvex(points: readonly (readonly [number, number])[]): boolean {
  return points.every(([x, y], i) => {
    const [bx, by] = points[(i + 1) % points.length] ?? [x, y];
    const [cx, cy] = points[(i + 2) % points.length] ?? [x, y];
    return (bx - x) * (cy - by) - (by - y) * (cx - bx) > 0;
  });
}
