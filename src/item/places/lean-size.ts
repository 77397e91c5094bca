// How much room a leaning member takes along each axis, and what a typed length of it means.
import type { Vec3 } from "../../geometry/shape.ts";
import { add, times } from "../../geometry/vector.ts";
import { problem } from "../../problems/problem.ts";
import type { Datum } from "../../recipe/recipe.ts";
import { inches, type Length, minus } from "../../units/length.ts";
import type { Axis } from "../../units/side.ts";
import { Fault } from "./fault.ts";
import { directionsOf, entry, layIn, sectionCorners, sectionSize } from "./lean.ts";
import type { Places } from "./places.ts";
import { clauseOf, type Thing } from "./thing.ts";

/** The four long arrises of a leaning upright: where each stands on the floor level, seen from its first. */
export function feetOf(corners: readonly Vec3[], way: Vec3): Vec3[] {
  return corners.map((c) => add(c, times(way, -c[2] / way[2])));
}

/** How much longer than an edge the square blank of a board with level ends is. */
export function blankOver(corners: readonly Vec3[], way: Vec3): number {
  const starts = corners.map((c) => -c[2] / way[2]);
  return Math.max(...starts) - Math.min(...starts);
}

const range = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

/** The room of one member along an axis, or undefined where its own length decides and is left to its ends. */
export function leanSize(places: Places, thing: Thing, index: number, axis: Axis): Length | undefined {
  const lay = layIn(thing);
  const k = index % places.per(thing);
  const way = directionsOf(places, thing, k);
  const corners = sectionCorners(thing, way, sectionSize(thing));
  if (lay.length !== "z") {
    if (axis === lay.length) return undefined;
    return range(corners.map((c) => entry(c, axis)));
  }
  if (axis === "z") return plumbHeight(places, thing, k);
  const stands = places.interval(thing, index, "z");
  const rise = times(way.length, inches(minus(stands.hi, stands.lo)) / way.length[2]);
  const feet = feetOf(corners, way.length);
  return range([...feet, ...feet.map((f) => add(f, rise))].map((p) => entry(p, axis)));
}

/** What each reading of one typed length would give, for a board that leans with level ends. */
export type Readings = readonly {
  readonly datum: "edge" | "over all";
  readonly edge: number;
  readonly overAll: number;
  readonly height: number;
  readonly foot: number;
}[];

function readings(typed: number, over: number, way: Vec3): Readings {
  return (["edge", "over all"] as const).map((datum) => {
    const edge = datum === "edge" ? typed : typed - over;
    const height = edge * way[2];
    return { datum, edge, overAll: edge + over, height, foot: edge * Math.hypot(way[0], way[1]) };
  });
}

/** The plumb height of a leaning board from its typed length; undefined where none is typed. */
function plumbHeight(places: Places, thing: Thing, k: number): Length | undefined {
  const clause = clauseOf(thing.line, "long");
  if (!clause) return undefined;
  const reading = { space: thing.space, axis: undefined, set: 0 };
  const more = clause.more ? inches(places.amount(clause.more, reading)) * k : 0;
  const typed = inches(places.amount(clause.length, reading)) + more;
  const way = directionsOf(places, thing, k).length;
  const corners = sectionCorners(thing, directionsOf(places, thing, k), sectionSize(thing));
  const over = blankOver(corners, way);
  if (clause.datum === undefined) {
    const facts = { name: thing.line.name.text, typed, readings: readings(typed, over, way) };
    throw new Fault(problem("length-of-what", clause.at, facts));
  }
  return edgeFrom(clause.datum, typed, over) * way[2];
}

// Both ends are cut level, so the cuts are parallel and every edge, and the middle line, has one length.
const edgeFrom = (datum: Datum, typed: number, over: number): number => (datum === "over all" ? typed - over : typed);
