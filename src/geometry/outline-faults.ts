// Loops as polygons -> where they cross or touch each other, which lies inside which, and where the wood between is thin.
import { signedArea } from "./profile.ts";
import type { Vec2 } from "./shape.ts";

type Side = { readonly loop: number; readonly i: number; readonly count: number; readonly a: Vec2; readonly b: Vec2 };

const sidesOf = (loops: readonly (readonly Vec2[])[]): Side[] =>
  loops.flatMap((points, loop) =>
    points.map((a, i) => ({ loop, i, count: points.length, a, b: points[(i + 1) % points.length] ?? a })),
  );

const isNext = (p: Side, q: Side): boolean =>
  p.loop === q.loop && ((p.i + 1) % p.count === q.i || (q.i + 1) % q.count === p.i);

/** Pairs of sides whose boxes come within `reach` of each other, each pair once. */
function* nearPairs(sides: readonly Side[], reach: () => number): Generator<readonly [Side, Side]> {
  const low = (s: Side) => Math.min(s.a[0], s.b[0]);
  const high = (s: Side) => Math.max(s.a[0], s.b[0]);
  const sorted = [...sides].sort((p, q) => low(p) - low(q));
  for (const [k, p] of sorted.entries()) {
    for (let j = k + 1; j < sorted.length; j++) {
      const q = sorted[j] as Side;
      if (low(q) > high(p) + reach()) break;
      const apart = Math.max(Math.min(p.a[1], p.b[1]), Math.min(q.a[1], q.b[1]));
      if (apart <= Math.min(Math.max(p.a[1], p.b[1]), Math.max(q.a[1], q.b[1])) + reach()) yield [p, q];
    }
  }
}

export type Crossing = { readonly at: Vec2; readonly loops: readonly [number, number] };

/** For each loop and each two loops the first place where sides cross or touch that don't follow each other; loops by number. */
export function findCrossings(loops: readonly (readonly Vec2[])[]): Crossing[] {
  const found = new Map<string, Crossing>();
  for (const [p, q] of nearPairs(sidesOf(loops), () => touching)) {
    const pair = [Math.min(p.loop, q.loop), Math.max(p.loop, q.loop)] as const;
    if (found.has(pair.join())) continue;
    if (isNext(p, q)) {
      if (foldsBack(p, q)) found.set(pair.join(), { at: q.a, loops: pair });
      continue;
    }
    const { gap, from } = nearest(p, q);
    if (gap <= touching) found.set(pair.join(), { at: from, loops: pair });
  }
  return [...found.values()];
}

/** Nearer than this two sides touch (inches). */
const touching = 1e-6;

/** Whether the later of two following sides runs straight back over the earlier. */
function foldsBack(p: Side, q: Side): boolean {
  const [u, v] = [minus(p.b, p.a), minus(q.b, q.a)];
  const size = Math.hypot(...u) * Math.hypot(...v);
  return dot(u, v) < 0 && Math.abs(u[0] * v[1] - u[1] * v[0]) < 1e-9 * size;
}

/** Whether a point lies inside a polygon (a ray to the right, counted). */
export function isInside(points: readonly Vec2[], [x, y]: Vec2): boolean {
  let inside = false;
  points.forEach(([ax, ay], i) => {
    const [bx, by] = points[(i + 1) % points.length] ?? [ax, ay];
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
  });
  return inside;
}

export type Web = { readonly width: number; readonly from: Vec2; readonly to: Vec2 };

/**
 * Where the wood between two parts of the boundary is narrowest: the shortest line across wood that stands square to the
 * boundary at both ends, or ends in an inward corner. The first loop is the edge. Undefined where nothing faces anything.
 */
export function thinnestWood(loops: readonly (readonly Vec2[])[]): Web | undefined {
  const turned = ccw(loops);
  let least: Web | undefined;
  for (const [p, q] of nearPairs(sidesOf(turned), () => least?.width ?? Number.POSITIVE_INFINITY)) {
    const web = webOf(turned, p, q, least?.width ?? Number.POSITIVE_INFINITY);
    if (web) least = web;
  }
  return least;
}

/** Along one strip of wood places nearer than this many limits are one. */
const oneStrip = 4;

/** Every such line shorter than `under`, the shortest first; along one strip of wood only the shortest. */
export function thinWood(loops: readonly (readonly Vec2[])[], under: number): Web[] {
  const turned = ccw(loops);
  const webs = [...nearPairs(sidesOf(turned), () => under)].flatMap(([p, q]) => {
    const web = webOf(turned, p, q, under);
    return web ? [{ web, between: [p.loop, q.loop].sort().join() }] : [];
  });
  const kept: typeof webs = [];
  for (const each of webs.sort((a, b) => a.web.width - b.web.width)) {
    const isSame = (other: typeof each): boolean => {
      const [[ax, ay], [bx, by]] = [middleOf(each.web), middleOf(other.web)];
      const far = Math.hypot(bx - ax, by - ay);
      if (far < under) return true;
      const strip = other.between === each.between && far < oneStrip * under;
      return strip && isInWood(turned, [(ax + bx) / 2, (ay + by) / 2]);
    };
    if (!kept.some(isSame)) kept.push(each);
  }
  return kept.map(({ web }) => web);
}

export const middleOf = ({ from, to }: Web): Vec2 => [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];

/** The things in their order, without those within `reach` of one that was kept. */
export function apart<T>(things: readonly T[], spot: (thing: T) => Vec2, reach: number): T[] {
  const kept: T[] = [];
  for (const thing of things) {
    if (kept.every((other) => Math.hypot(...minus(spot(other), spot(thing))) >= reach)) kept.push(thing);
  }
  return kept;
}

/** Every loop counter-clockwise. */
const ccw = (loops: readonly (readonly Vec2[])[]): (readonly Vec2[])[] =>
  loops.map((points) => (signedArea(points) < 0 ? [...points].reverse() : points));

function webOf(loops: readonly (readonly Vec2[])[], p: Side, q: Side, under: number): Web | undefined {
  if (isNext(p, q)) return undefined;
  const { gap, from, to } = nearest(p, q);
  if (gap >= under || !facesOn(loops, p, from, to) || !facesOn(loops, q, to, from)) return undefined;
  const inWood = [0.1, 0.5, 0.9].every((t) =>
    isInWood(loops, [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t]),
  );
  return inWood ? { width: gap, from, to } : undefined;
}

/** Whether a point lies inside the first loop and outside the others. */
export const isInWood = (loops: readonly (readonly Vec2[])[], at: Vec2): boolean =>
  loops.every((points, k) => isInside(points, at) === (k === 0));

/** Whether neither way along the boundary from `from` leads nearer to `to`. */
function facesOn(loops: readonly (readonly Vec2[])[], side: Side, from: Vec2, to: Vec2): boolean {
  const points = loops[side.loop] ?? [];
  const at = (i: number): Vec2 => points[(i + points.length) % points.length] ?? from;
  const isAt = (p: Vec2) => Math.hypot(p[0] - from[0], p[1] - from[1]) < 1e-9;
  const ways = isAt(side.a) ? [at(side.i - 1), side.b] : isAt(side.b) ? [side.a, at(side.i + 2)] : [side.a, side.b];
  const out = minus(to, from);
  return ways.every((way) => {
    const along = minus(way, from);
    return dot(along, out) <= 0.02 * Math.hypot(...along) * Math.hypot(...out);
  });
}

const minus = (p: Vec2, q: Vec2): Vec2 => [p[0] - q[0], p[1] - q[1]];
const dot = (p: Vec2, q: Vec2): number => p[0] * q[0] + p[1] * q[1];

/** The nearest points of two sides. */
function nearest(p: Side, q: Side): { gap: number; from: Vec2; to: Vec2 } {
  const crossing = crossingOf(p, q);
  if (crossing) return { gap: 0, from: crossing, to: crossing };
  const tries = [
    { from: p.a, to: footOn(q, p.a) },
    { from: p.b, to: footOn(q, p.b) },
    { from: footOn(p, q.a), to: q.a },
    { from: footOn(p, q.b), to: q.b },
  ];
  // Where the two run side by side, the middle of the stretch they share stands for all of it.
  const [s, t] = [partOn(p, q.a), partOn(p, q.b)];
  const from = along(p, (s + t) / 2);
  const pairs = [{ from, to: footOn(q, from) }, ...tries].map((pair) => ({
    ...pair,
    gap: Math.hypot(...minus(pair.from, pair.to)),
  }));
  return pairs.reduce((best, each) => (each.gap < best.gap - 1e-12 ? each : best));
}

/** How far along a side the foot of a point stands, from 0 to 1. */
function partOn({ a, b }: Side, p: Vec2): number {
  const way = minus(b, a);
  return Math.max(0, Math.min(1, dot(minus(p, a), way) / Math.max(dot(way, way), 1e-30)));
}

const along = ({ a, b }: Side, t: number): Vec2 => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
const footOn = (side: Side, p: Vec2): Vec2 => along(side, partOn(side, p));

function crossingOf(p: Side, q: Side): Vec2 | undefined {
  const [u, v, w] = [minus(p.b, p.a), minus(q.b, q.a), minus(q.a, p.a)];
  const turn = u[0] * v[1] - u[1] * v[0];
  if (Math.abs(turn) < 1e-15) return undefined;
  const s = (w[0] * v[1] - w[1] * v[0]) / turn;
  const t = (w[0] * u[1] - w[1] * u[0]) / turn;
  return s >= 0 && s <= 1 && t >= 0 && t <= 1 ? [p.a[0] + u[0] * s, p.a[1] + u[1] * s] : undefined;
}
