// A leaning line -> the directions of its boards out of square, and the corners of their section.

import type { Vec3 } from "../../geometry/shape.ts";
import { add, cross, dot, subtract, times, unit } from "../../geometry/vector.ts";
import { problem } from "../../problems/problem.ts";
import type { Clause } from "../../recipe/recipe.ts";
import { inches } from "../../units/length.ts";
import { type Axis, axes, axisOf, isFar, type Side } from "../../units/side.ts";
import { Fault } from "./fault.ts";
import type { Places } from "./places.ts";
import { clauseOf, clausesOf, type Lay, type Thing } from "./thing.ts";

/** The unit vector along an axis. */
export const axisVector = (axis: Axis, sign = 1): Vec3 => axes.map((a) => (a === axis ? sign : 0)) as unknown as Vec3;

export const entry = (v: Vec3, axis: Axis): number => v[axes.indexOf(axis)] as number;

/** Unit directions of a board's length, width and thickness. */
export type Directions = { readonly length: Vec3; readonly width: Vec3; readonly thickness: Vec3 };

/** Whether a line says that its boards lean. */
export const leans = (thing: Thing): boolean => clauseOf(thing.line, "leaning") !== undefined;

/** The lay of a thing made of boards. */
export function layIn(thing: Thing): Lay {
  if (thing.body.kind === "panel") throw new Error(`${thing.key} is a panel and has no lay of its own`);
  return thing.body.lay;
}

type Leaning = Clause & { kind: "leaning" };

const isPair = (clause: Leaning): boolean => clause.toward === "inward" || clause.toward === "outward";

/** The level axis a clause leans along. Throws a Fault where a board can't lean that way. */
function leanAxis(thing: Thing, clause: Leaning): Axis {
  const along = isPair(clause) ? thing.rowAxis : axisOf[clause.toward as Side];
  const alone = isPair(clause) && thing.line.count !== 2;
  if (along === undefined || along === "z" || alone || along === layIn(thing).length) {
    const facts = { name: thing.line.name.text, toward: clause.toward };
    throw new Fault(problem("leans-nowhere", clause.at, facts));
  }
  return along;
}

/** How far out of plumb a member is along an axis: the tangent of its lean, toward the far side positive. */
function leanAlong(places: Places, thing: Thing, axis: Axis, k: number): number {
  return clausesOf(thing.line, "leaning").reduce((sum, clause) => {
    if (leanAxis(thing, clause) !== axis) return sum;
    const degrees = places.angle(clause.angle, { space: thing.space, axis: undefined, set: 0 });
    if (Math.abs(degrees) >= 80) {
      throw new Fault(problem("leans-too-far", clause.at, { name: thing.line.name.text, degrees }));
    }
    const far = isPair(clause) ? (clause.toward === "inward") === (k === 0) : isFar(clause.toward as Side);
    return sum + (far ? 1 : -1) * Math.tan((degrees * Math.PI) / 180);
  }, 0);
}

/**
 * Directions of member k of a set. An upright board's length leans, its wide side staying as near to its own direction as
 * can be; a level board is tipped about its length.
 */
export function directionsOf(places: Places, thing: Thing, k: number): Directions {
  const lay = layIn(thing);
  const [length, width, thickness] = [lay.length, lay.width, lay.thickness].map((a) => axisVector(a)) as [
    Vec3,
    Vec3,
    Vec3,
  ];
  if (!leans(thing)) return { length, width, thickness };
  if (lay.length === "z") {
    const way = unit([leanAlong(places, thing, "x", k), leanAlong(places, thing, "y", k), 1]);
    const through = unit(subtract(thickness, times(way, dot(thickness, way))));
    const across = cross(through, way);
    return { length: way, width: dot(across, width) < 0 ? times(across, -1) : across, thickness: through };
  }
  const level: Axis = lay.length === "x" ? "y" : "x";
  const tangent = leanAlong(places, thing, level, k);
  const up = unit(add(axisVector("z"), times(axisVector(level), tangent)));
  const out = unit(subtract(axisVector(level), times(axisVector("z"), tangent)));
  return lay.thickness === "z" ? { length, width: out, thickness: up } : { length, width: up, thickness: out };
}

/**
 * The four corners of a member's section from its least one. With level edges the section is a parallelogram whose long
 * sides have the board's width and whose short sides lie level.
 */
export function sectionCorners(thing: Thing, way: Directions, size: { width: number; thickness: number }): Vec3[] {
  const across = times(way.width, size.width);
  const tipped = clauseOf(thing.line, "edges level") !== undefined;
  const level = entry(way.width, "z") === 0 ? way.thickness : levelSide(way);
  const through = tipped
    ? times(level, size.thickness / dot(level, way.thickness))
    : times(way.thickness, size.thickness);
  return [[0, 0, 0], across, through, add(across, through)];
}

/** The level direction nearest to the thickness, square to the length. */
function levelSide(way: Directions): Vec3 {
  const level = unit([way.thickness[0], way.thickness[1], 0]);
  return dot(level, way.thickness) < 0 ? times(level, -1) : level;
}

/** Finished width and thickness of a member's board, in inches. */
export function sectionSize(thing: Thing): { readonly width: number; readonly thickness: number } {
  const body = thing.body;
  if (body.kind === "piece") return { width: inches(body.section.width), thickness: inches(body.section.thickness) };
  if (body.kind === "fitting" && body.fitting.size) {
    return { width: inches(body.fitting.size.width), thickness: inches(body.fitting.size.thickness) };
  }
  throw new Error(`${thing.key} has no section`);
}
