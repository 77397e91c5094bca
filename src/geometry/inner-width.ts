// A kernel solid -> how deep it is: the greatest of the least extents of the convex pieces it falls into.
import type { Manifold } from "manifold-3d";
import { type Mesh, readMesh } from "./kernel.ts";
import type { Vec3 } from "./shape.ts";
import type { Tolerances } from "./tolerance.ts";
import { cross, dot, length, subtract, times } from "./vector.ts";

type Plane = { readonly normal: Vec3; readonly offset: number };

/** A bound on the cuts; what is still whole after them is measured as it is. */
const mostCuts = 400;

/** The depth of a body that may have several parts and inward corners. */
export function depthOfMesh(solid: Manifold, tolerances: Tolerances): number {
  const waiting = solid.decompose();
  let deepest = 0;
  let cuts = 0;
  try {
    for (let piece = waiting.pop(); piece !== undefined; piece = waiting.pop()) {
      const mesh = readMesh(piece, []);
      const planes = planesOf(mesh, tolerances.plane);
      const cut = cuts < mostCuts ? inwardPlane(mesh, planes, tolerances.plane) : undefined;
      if (cut === undefined) deepest = Math.max(deepest, leastExtent(mesh, planes));
      else waiting.push(...cutAlong(piece, cut, tolerances));
      cuts++;
      piece.delete();
    }
  } finally {
    for (const piece of waiting) piece.delete();
  }
  return deepest;
}

/** The pieces a plane leaves. Where it only finds a skin in itself, it is moved on just far enough to take that off. */
function cutAlong(piece: Manifold, { normal, offset }: Plane, tolerances: Tolerances): Manifold[] {
  const cut = (at: number, thin: number): Manifold[] =>
    piece.splitByPlane([...normal], at).flatMap((half) => {
      const parts = half.decompose();
      half.delete();
      return parts.filter((part) => {
        const thick = part.volume() > (part.surfaceArea() / 2) * thin;
        if (!thick) part.delete();
        return thick;
      });
    });
  const parts = cut(offset, tolerances.solid);
  const [only] = parts;
  if (only === undefined || parts.length > 1 || only.surfaceArea() < piece.surfaceArea() * (1 - 1e-9)) return parts;
  only.delete();
  return cut(offset + tolerances.plane, 2 * tolerances.plane);
}

/** The plane of each triangle; none for a triangle without width. */
function planesOf({ points, triangles }: Mesh, near: number): (Plane | undefined)[] {
  return Array.from({ length: triangles.length / 3 }, (_, t) => {
    const [a, b, c] = [0, 1, 2].map((k) => points[triangles[3 * t + k] ?? 0] ?? ([0, 0, 0] as Vec3));
    if (a === undefined || b === undefined || c === undefined) return undefined;
    const square = cross(subtract(b, a), subtract(c, a));
    const size = length(square);
    const longest = Math.max(length(subtract(b, a)), length(subtract(c, b)), length(subtract(a, c)));
    if (size <= near * longest) return undefined;
    const normal = times(square, 1 / size);
    return { normal, offset: dot(normal, a) };
  });
}

/** The plane of a triangle whose neighbour rises above it. */
function inwardPlane({ points, triangles }: Mesh, planes: readonly (Plane | undefined)[], near: number) {
  const apex = new Map<string, number>();
  for (let h = 0; h < triangles.length; h++) {
    const [a, b, c] = cornersFrom(triangles, h);
    apex.set(`${a} ${b}`, c);
  }
  for (let h = 0; h < triangles.length; h++) {
    const plane = planes[Math.floor(h / 3)];
    const [a, b] = cornersFrom(triangles, h);
    const p = points[apex.get(`${b} ${a}`) ?? -1];
    if (plane !== undefined && p !== undefined && dot(plane.normal, p) - plane.offset > near) return plane;
  }
  return undefined;
}

function cornersFrom(triangles: Uint32Array, h: number): [number, number, number] {
  const t = h - (h % 3);
  const at = (k: number) => triangles[t + ((h + k) % 3)] ?? -1;
  return [at(0), at(1), at(2)];
}

function leastExtent({ points }: Mesh, planes: readonly (Plane | undefined)[]): number {
  const extents = planes.flatMap((plane) =>
    plane === undefined ? [] : [spread(points.map((p) => dot(plane.normal, p)))],
  );
  return extents.length === 0 ? 0 : Math.min(...extents);
}

const spread = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
