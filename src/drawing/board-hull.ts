// A member's uncut board -> where a straight line enters and leaves it, and whether two boards keep clear of each other.
import type { Loop, Vec2, Vec3 } from "../geometry/shape.ts";
import type { Solid } from "../geometry/solid.ts";
import { add, cross, dot, frameZ, subtract } from "../geometry/vector.ts";
import type { Member } from "../item/item.ts";

type Slab = { readonly normal: Vec3; readonly low: number; readonly high: number };

function pointsOf(loop: Loop): readonly Vec2[] {
  if (loop.kind === "circle") {
    const [x, y] = loop.centre;
    return [
      [x - loop.radius, y - loop.radius],
      [x + loop.radius, y + loop.radius],
    ];
  }
  return loop.items.flatMap((item): readonly Vec2[] => {
    if ("leave" in item) return [item.leave, item.reach, item.to];
    return "mid" in item ? [item.mid, item.to] : [item];
  });
}

const known = new WeakMap<Solid, readonly Slab[]>();

/** The board before it is cut: between three pairs of parallel planes, and behind the planes that trim it (item space). */
function slabsOf({ shape, solid }: Member): readonly Slab[] {
  const found = known.get(solid);
  if (found !== undefined) return found;
  const { frame, outline, depth, trims } = shape;
  const z = frameZ(frame);
  const points = pointsOf(outline);
  const slab = (normal: Vec3, low: number, high: number): Slab => {
    const at = dot(normal, frame.origin);
    return { normal, low: at + low, high: at + high };
  };
  const reach = (k: 0 | 1): readonly [number, number] => [
    Math.min(...points.map((p) => p[k])),
    Math.max(...points.map((p) => p[k])),
  ];
  const slabs = [
    slab(frame.x, ...reach(0)),
    slab(frame.y, ...reach(1)),
    slab(z, 0, depth),
    ...trims.map(({ point, normal }): Slab => {
      const turn = ([a, b, c]: Vec3): Vec3 =>
        [0, 1, 2].map(
          (k) => (frame.x[k] as number) * a + (frame.y[k] as number) * b + (z[k] as number) * c,
        ) as unknown as Vec3;
      const out = turn(normal);
      return { normal: out, low: Number.NEGATIVE_INFINITY, high: dot(out, add(frame.origin, turn(point))) };
    }),
  ];
  known.set(solid, slabs);
  return slabs;
}

/**
 * The stretch of from + t way that runs inside the uncut board, kept off its sides by `hair`; undefined where it misses it.
 */
export function stretchIn(member: Member, from: Vec3, way: Vec3, hair: number): readonly [number, number] | undefined {
  let [near, far] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const { normal, low, high } of slabsOf(member)) {
    const [at, speed] = [dot(normal, from), dot(normal, way)];
    if (Math.abs(speed) < 1e-12) {
      if (at < low + hair || at > high - hair) return undefined;
      continue;
    }
    const [enter, leave] = [(low + hair - at) / speed, (high - hair - at) / speed];
    near = Math.max(near, Math.min(enter, leave));
    far = Math.min(far, Math.max(enter, leave));
  }
  return near < far ? [near, far] : undefined;
}

/** Directions up to their sign, each once. */
function distinct(all: readonly Vec3[]): readonly Vec3[] {
  const found: Vec3[] = [];
  for (const v of all) {
    const size = Math.hypot(...v);
    if (size < 1e-9) continue;
    const unit: Vec3 = [v[0] / size, v[1] / size, v[2] / size];
    if (!found.some((other) => Math.abs(dot(other, unit)) > 1 - 1e-9)) found.push(unit);
  }
  return found;
}

/** Flat faces and straight arrises; the facets of holes say nothing about the hull. */
const normalsOf = (solid: Solid): readonly Vec3[] =>
  distinct(solid.faces.filter((face) => face.wall === undefined).map((face) => face.normal));
const arrisesOf = (solid: Solid): readonly Vec3[] =>
  distinct(
    solid.edges
      .filter((edge) => !edge.smooth && edge.faces.every((i) => solid.faces[i]?.wall === undefined))
      .map(({ a, b }) => subtract(b, a)),
  );

const reachOf = (solid: Solid, axis: Vec3): readonly [number, number] => {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { a } of solid.edges) {
    const at = dot(a, axis);
    low = Math.min(low, at);
    high = Math.max(high, at);
  }
  return [low, high];
};

/**
 * Whether `a`, moved from its place by `from` to its place by `to` in a straight line, keeps clear of `b` all the way; touching is
 * clear. By separating planes between their hulls: never wrong about a clear way, but boards let into each other are not clear.
 */
export function isClear(a: Solid, from: Vec3, to: Vec3, b: Solid): boolean {
  const hair = 1e-4;
  const way = subtract(to, from);
  const parts = (axis: Vec3): boolean => {
    const [aLow, aHigh] = reachOf(a, axis);
    const [bLow, bHigh] = reachOf(b, axis);
    const [one, other] = [dot(from, axis), dot(to, axis)];
    return aLow + Math.min(one, other) > bHigh - hair || aHigh + Math.max(one, other) < bLow + hair;
  };
  const upright: readonly Vec3[] = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ];
  if (upright.some(parts)) return true;
  const [ownNormals, otherNormals] = [normalsOf(a), normalsOf(b)];
  if ([...ownNormals, ...otherNormals].some(parts)) return true;
  const [own, other] = [arrisesOf(a), arrisesOf(b)];
  const crossed = [
    ...own.flatMap((p) => other.map((q) => cross(p, q))),
    ...[...own, ...other].map((p) => cross(p, way)),
  ];
  return distinct(crossed).some(parts);
}
