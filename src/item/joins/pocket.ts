// A pocket screw slanted through the end or edge of a into b -> where each one sits, or why it can't.
import type { Vec3 } from "../../geometry/shape.ts";
import { add, times } from "../../geometry/vector.ts";
import { type Problem, problem } from "../../problems/problem.ts";

import { inches } from "../../units/length.ts";
import { type Axis, axes, type Side } from "../../units/side.ts";
import { along, boxOf, unit } from "../frame.ts";
import type { Driven, Heading } from "../item.ts";
import type { PlacedMember } from "../placed.ts";
import type { Seat } from "./seat.ts";
import { checkBite, checkEdge, type Drive, depthsAt, rowOn } from "./straight.ts";

/** Degrees between the screw and the face the pocket is in; common practice, no source. */
export const pocketAngle = 15;
const radians = (pocketAngle * Math.PI) / 180;

/**
 * Wood left between the screw's seat and the end it leaves by, in thicknesses of the board: with it the usual lengths
 * (1 in for 1/2 and 5/8 stock, 1 1/4 for 3/4, 1 1/2 for 1, 2 1/2 for 1 1/2) bite well and stay inside a like board.
 * Common practice, no source.
 */
const seatShare = 2 / 3;

/** `face` is the side the pockets are in, and where that looks in item space. */
export function drivePocket(
  drive: Drive,
  a: PlacedMember,
  b: PlacedMember,
  seats: readonly Seat[],
  face: { readonly side: Side; readonly heading: Heading },
): readonly Driven[] | Problem {
  const { fastener, at } = drive;
  const { axis: across, sign } = face.heading;
  const facts = { fastener: fastener.name, a: a.id, b: b.id, side: face.side };
  // Out of the end grain where it can, as pockets are bored along the board.
  const fit = seats.filter((s) => s.axis !== across);
  const seat = fit.find((s) => s.axis === a.lie.length) ?? fit[0];
  if (!seat) return problem("pocket-side-wrong", at, facts, b.at);

  const box = boxOf(a);
  const thickness = along(box.max, across) - along(box.min, across);
  const wood = along(box.max, seat.axis) - along(box.min, seat.axis);
  const needs = thickness / 2 / Math.tan(radians);
  if (wood < needs) return problem("pocket-board-short", at, { ...facts, wood, needs, thickness }, a.at);

  const middle = (along(box.max, across) + along(box.min, across)) / 2;
  const { low, high } = seat.room[across];
  const edge = checkEdge(drive, a, b, Math.min(middle - low, high - middle));
  if (edge) return edge;

  const through = seatShare * thickness;
  const into = inches(fastener.length) - through;
  // It leaves b by the far face, or by the face across from the pockets.
  const other = boxOf(b);
  const sideways = sign === 1 ? middle - along(other.min, across) : along(other.max, across) - middle;
  const depth = Math.min(depthsAt(a, b, seat).depth / Math.cos(radians), sideways / Math.sin(radians));
  const wrong = checkBite(drive, a, b, { through, into, deepEnough: 0, depth });
  if (wrong) return wrong;

  const rowAxis = axes.find((x) => x !== seat.axis && x !== across) as Axis;
  const row = rowOn(drive, a, b, seat, rowAxis);
  if (!Array.isArray(row)) return row as Problem;
  const way = add(times(unit(seat.axis, seat.sign), Math.cos(radians)), times(unit(across, sign), -Math.sin(radians)));
  return row.map((spot): Driven => {
    const exit = axes.map((x) => (x === seat.axis ? seat.plane : x === across ? middle : spot)) as unknown as Vec3;
    const head = add(exit, times(way, -through));
    return { fastener, a: a.id, b: b.id, head, way, tip: add(exit, times(way, into)), through, into };
  });
}
