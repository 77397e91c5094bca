// Two hulls, one moved in a straight line -> whether they keep clear of each other all the way.
import type { Vec3 } from "./shape.ts";
import type { Solid } from "./solid.ts";
import { inInches } from "./tolerance.ts";
import { cross, dot, subtract } from "./vector.ts";

/** What a convex body is told by: its corners, and its faces' normals and its arrises' directions, each once up to its sign. */
export type Hull = {
  readonly points: readonly Vec3[];
  readonly normals: readonly Vec3[];
  readonly arrises: readonly Vec3[];
};

/** Directions up to their sign, each once. */
export function distinct(all: readonly Vec3[]): readonly Vec3[] {
  const found: Vec3[] = [];
  for (const v of all) {
    const size = Math.hypot(...v);
    if (size < 1e-9) continue;
    const unit: Vec3 = [v[0] / size, v[1] / size, v[2] / size];
    if (!found.some((other) => Math.abs(dot(other, unit)) > 1 - 1e-9)) found.push(unit);
  }
  return found;
}

const known = new WeakMap<Solid, Hull>();

/** Flat faces and straight arrises only: the facets of holes say nothing about the hull. */
export function hullOf(solid: Solid): Hull {
  const found = known.get(solid);
  if (found !== undefined) return found;
  const straight = solid.edges.filter(
    (edge) => !edge.smooth && edge.faces.every((i) => solid.faces[i]?.wall === undefined),
  );
  const hull: Hull = {
    points: [...new Map(solid.edges.flatMap(({ a, b }) => [a, b]).map((p) => [p.join(), p])).values()],
    normals: distinct(solid.faces.filter((face) => face.wall === undefined).map((face) => face.normal)),
    arrises: distinct(straight.map(({ a, b }) => subtract(b, a))),
  };
  known.set(solid, hull);
  return hull;
}

const convex = new WeakMap<Solid, boolean>();

/** Whether a solid fills its own hull: then a way that isn't clear of it is truly blocked. */
export function fillsHull(solid: Solid): boolean {
  const found = convex.get(solid);
  if (found !== undefined) return found;
  const { points } = hullOf(solid);
  const fills = solid.faces.every(
    (face) => face.wall === undefined && points.every((p) => dot(face.normal, p) <= face.offset + inInches.touch),
  );
  convex.set(solid, fills);
  return fills;
}

const reachOf = (points: readonly Vec3[], axis: Vec3): readonly [number, number] => {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const p of points) {
    const at = dot(p, axis);
    low = Math.min(low, at);
    high = Math.max(high, at);
  }
  return [low, high];
};

const upright: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/**
 * Whether `a`, moved from its place by `from` to its place by `to` in a straight line, keeps clear of `b` all the way; touching is
 * clear, and so is a hair of overlap. By separating planes: exact for solids that fill their hulls, for others never wrong about a clear way.
 */
export function isClear(a: Hull, from: Vec3, to: Vec3, b: Hull): boolean {
  const hair = 1e-4;
  const way = subtract(to, from);
  const parts = (axis: Vec3): boolean => {
    const [aLow, aHigh] = reachOf(a.points, axis);
    const [bLow, bHigh] = reachOf(b.points, axis);
    const [one, other] = [dot(from, axis), dot(to, axis)];
    return aLow + Math.min(one, other) > bHigh - hair || aHigh + Math.max(one, other) < bLow + hair;
  };
  if (upright.some(parts) || a.normals.some(parts) || b.normals.some(parts)) return true;
  const crossed = [
    ...a.arrises.flatMap((p) => b.arrises.map((q) => cross(p, q))),
    ...[...a.arrises, ...b.arrises].map((p) => cross(p, way)),
  ];
  return distinct(crossed).some(parts);
}
