// Ends that follow slanted neighbours or are mitred with them: the planes they lie in, and how far the board reaches.
import type { Vec3 } from "../../geometry/shape.ts";
import { add, cross, dot, subtract, times, unit } from "../../geometry/vector.ts";
import { problem } from "../../problems/problem.ts";
import type { Reference } from "../../recipe/recipe.ts";
import { inches } from "../../units/length.ts";
import { type Axis, axes, axisOf, isFar, type Side, sideOf } from "../../units/side.ts";
import type { Slant } from "../placed.ts";
import { apart, type Neighbour } from "./apart.ts";
import { Fault } from "./fault.ts";
import type { Interval } from "./interval.ts";
import { thingNamed } from "./lay.ts";
import { axisVector, directionsOf, entry, layIn, leans, sectionCorners, sectionSize } from "./lean.ts";
import { resolve } from "./meant.ts";
import type { Places } from "./places.ts";
import { axisWords, type One, type Target } from "./target.ts";
import { clauseOf, type Space, type Thing } from "./thing.ts";

/** A plane; its normal points away from the body it bounds. */
export type Plane = { readonly point: Vec3; readonly normal: Vec3 };

/** The planes of a board's two ends, normals away from the board, and the box it fills along its length. */
export type SlantedEnds = { readonly near: Plane; readonly far: Plane; readonly interval: Interval };

/** Whether a thing's boards may lie out of square or end on something that does; from the words alone. */
export function maySlant(thing: Thing, seen: ReadonlySet<Thing> = new Set()): boolean {
  if (seen.has(thing) || thing.body.kind === "panel") return false;
  return leans(thing) || clauseOf(thing.line, "mitred") !== undefined || endsOnSlants(thing, new Set([...seen, thing]));
}

/** Whether a line stands between things that may slant. */
export function endsOnSlants(thing: Thing, seen: ReadonlySet<Thing> = new Set([thing])): boolean {
  const between = clauseOf(thing.line, "between");
  if (!between || thing.body.kind === "panel") return false;
  const named = [between.a, ...(between.b ? [between.b] : [])].map((r) => thingNamed(thing.space, r)?.thing);
  return named.some((t) => t !== undefined && maySlant(t, seen));
}

/** The four long arrises of a level or upright square-lying member, where its length axis is 0. */
export function arrises(places: Places, one: One): Vec3[] {
  const { thing, index } = one;
  const lay = layIn(thing);
  const corners = sectionCorners(thing, directionsOf(places, thing, one.k), sectionSize(thing));
  const base = axes.map((axis) => {
    if (axis === lay.length) return 0;
    const lo = inches(places.interval(thing, index, axis).lo);
    return lo - Math.min(...corners.map((c) => entry(c, axis)));
  }) as unknown as Vec3;
  return corners.map((c) => add(base, c));
}

/** The end planes of a member that stands between slanted things or is mitred with them, along its length axis. */
export function slantedEnds(places: Places, one: One, axis: Axis): SlantedEnds {
  const { thing } = one;
  const question = {
    key: `ends ${thing.key} ${one.index}`,
    words: `where the ends of ${thing.line.name.text} lie`,
    at: thing.line.at,
  };
  return places.answers.ask(question, () => {
    const mitred = clauseOf(thing.line, "mitred");
    const between = clauseOf(thing.line, "between");
    const [near, far] = mitred
      ? mitrePlanes(places, one, mitred.a, mitred.b, axis)
      : facingPlanes(places, one, between?.a as Reference, between?.b, axis);
    const lines = arrises(places, one);
    const reach = (plane: Plane) => lines.map((p) => cutAt(plane, p, axis));
    const [los, his] = [reach(near), reach(far)];
    const shortest = Math.min(...his.map((h, i) => h - (los[i] as number)));
    if (shortest < 0) {
      const at = (mitred ?? between ?? thing.line).at;
      const name = thing.line.name.text;
      throw new Fault(problem("ends-cross", at, { name, along: axisWords[axis], over: -shortest }));
    }
    return { near, far, interval: { lo: Math.min(...los), hi: Math.max(...his) } };
  });
}

/** Where a line along an axis through p meets a plane. */
const cutAt = ({ point, normal }: Plane, p: Vec3, axis: Axis): number =>
  entry(p, axis) + dot(subtract(point, p), normal) / entry(normal, axis);

/** The neighbours' faces that look at the board, moved over them by a lap. */
function facingPlanes(places: Places, one: One, a: Reference, b: Reference | undefined, axis: Axis): [Plane, Plane] {
  const [near, far] = apart(places, one, a, b, axis);
  const by = clauseOf(one.thing.line, "lapping")?.by;
  const space = one.thing.space;
  const facing = (neighbour: Neighbour, isNear: boolean): Plane => {
    const inner = sidePlane(places, neighbour, space, axis, isNear);
    // Away from the board: toward the neighbour.
    const away = { point: inner.point, normal: times(inner.normal, -1) };
    if (by === undefined) return away;
    const outer = sidePlane(places, neighbour, space, axis, !isNear);
    const depth = Math.abs(cutAt(outer, inner.point, axis) - entry(inner.point, axis));
    const lap = by === "half" ? depth / 2 : inches(places.amount(by, { space, axis, set: one.set }));
    return { point: add(away.point, axisVector(axis, isNear ? -lap : lap)), normal: away.normal };
  };
  return [facing(near, true), facing(far, false)];
}

/** The side of a neighbour that looks to the far (or near) side of an axis, in the space it is spoken of in. */
function sidePlane(places: Places, { targets, box }: Neighbour, space: Space, axis: Axis, far: boolean): Plane {
  const target = targets.reduce((best, t) => {
    const [p, q] = [best, t].map((x) => places.extent(x, space, axis)) as [Interval, Interval];
    return (far ? inches(q.hi) > inches(p.hi) : inches(q.lo) < inches(p.lo)) ? t : best;
  });
  const slant = slantIn(places, target, space);
  const way = axisVector(axis, far ? 1 : -1);
  if (!slant) return { point: axisVector(axis, inches(far ? box.hi : box.lo)), normal: way };
  return longFaces(slant).reduce((best, f) => (dot(f.normal, way) > dot(best.normal, way) ? f : best));
}

/** The four long faces of a slanted board. */
function longFaces(slant: Slant): [Plane, Plane, Plane, Plane] {
  const faces = (direction: Vec3, size: number): [Plane, Plane] => [
    { point: slant.origin, normal: times(direction, -1) },
    { point: add(slant.origin, times(direction, size)), normal: direction },
  ];
  return [...faces(slant.width, slant.size[1]), ...faces(slant.thickness, slant.size[2])];
}

/** A target's slant in the space it is spoken of in; undefined for a square one. */
function slantIn(places: Places, target: Target, space: Space): Slant | undefined {
  if (!maySlant(target.thing)) return undefined;
  return places.slantIn(target.thing, target.index, space);
}

/**
 * The planes in which two boards of a corner meet: through the line where their outer faces cross and the line where their
 * inner faces cross.
 */
function mitrePlanes(places: Places, one: One, a: Reference, b: Reference, axis: Axis): [Plane, Plane] {
  const refuse = (reference: Reference) =>
    new Fault(problem("mitred-with", reference.at, { name: one.thing.line.name.text, what: reference.text }));
  const named = [a, b].map((reference) => {
    const [target, more] = resolve(places, reference, one.thing.space, one.set);
    if (!target || more || target.thing.body.kind === "panel" || target.thing.space !== one.thing.space) {
      throw refuse(reference);
    }
    const across = layIn(target.thing).length;
    if (across === axis) throw refuse(reference);
    return { reference, target, across, where: inches(places.interval(target.thing, target.index, axis).lo) };
  });
  const ordered = named.sort((p, q) => p.where - q.where);
  return ordered.map(({ target, across, reference }, i): Plane => {
    const own = slabOf(places, one, across);
    const other = slabOf(places, memberOne(places, target), axis);
    const line = cross(own.outer, other.outer);
    if (Math.hypot(...line) < 1e-9) throw refuse(reference);
    const outer = meet(own.outer, own.out, other.outer, other.out);
    const inner = meet(own.outer, own.in, other.outer, other.in);
    const normal = unit(cross(unit(line), subtract(inner, outer)));
    const away = axisVector(axis, i === 0 ? -1 : 1);
    return { point: outer, normal: dot(normal, away) < 0 ? times(normal, -1) : normal };
  }) as [Plane, Plane];
}

const memberOne = (places: Places, { thing, index }: Target): One => {
  const per = places.per(thing);
  return { thing, index, set: Math.floor(index / per), k: index % per };
};

/** A board as the slab between its outer and its inner face: outer . p runs from `in` to `out`. */
type Slab = { readonly outer: Vec3; readonly out: number; readonly in: number };

/** The slab of a board at a corner with one whose length runs along `across`. It doesn't depend on where the board ends. */
function slabOf(places: Places, one: One, across: Axis): Slab {
  const way = directionsOf(places, one.thing, one.k);
  const size = sectionSize(one.thing);
  const wide = Math.abs(entry(way.width, across)) > Math.abs(entry(way.thickness, across));
  const direction = wide ? way.width : way.thickness;
  const side = outerSide(places, one, across);
  const outer = dot(direction, axisVector(axisOf[side], isFar(side) ? 1 : -1)) < 0 ? times(direction, -1) : direction;
  const out = Math.max(...arrises(places, one).map((p) => dot(p, outer)));
  return { outer, out, in: out - (wide ? size.width : size.thickness) };
}

/** The side of a corner's board that lies outside along an axis: where it leans to, faces or stands. */
function outerSide(places: Places, { thing, k }: One, across: Axis): Side {
  for (const clause of thing.line.clauses) {
    if (clause.kind === "leaning" && clause.toward !== "inward" && clause.toward !== "outward") {
      if (axisOf[clause.toward] === across) return clause.toward;
    }
    const placed = clause.kind === "side at" || clause.kind === "in from" || clause.kind === "facing";
    if (placed && axisOf[clause.side] === across) return clause.side;
  }
  if (thing.rowAxis === across && places.per(thing) === 2) return sideOf(across, k === 1);
  throw new Fault(problem("which-side-out", thing.line.at, { name: thing.line.name.text }));
}

/** The point nearest to the origin on the line where two planes cross. */
function meet(n1: Vec3, d1: number, n2: Vec3, d2: number): Vec3 {
  const c = dot(n1, n2);
  const det = dot(n1, n1) * dot(n2, n2) - c * c;
  return add(times(n1, (d1 * dot(n2, n2) - d2 * c) / det), times(n2, (d2 * dot(n1, n1) - d1 * c) / det));
}
