// A pocket screw slanted through the end or edge of a into b -> where each one sits, or why it can't.
import type { Vec3 } from "../../geometry/shape.ts";
import { add, cross, dot, subtract, times, unit } from "../../geometry/vector.ts";
import { type Problem, problem } from "../../problems/problem.ts";
import { inches } from "../../units/length.ts";
import type { Side } from "../../units/side.ts";
import { blankOf, depthIn, type OwnAxis, ownEntry, ownSize } from "../frame.ts";
import type { Driven } from "../item.ts";
import type { PlacedMember } from "../placed.ts";
import { forward, reachOf, type Seat } from "./seat.ts";
import { checkBite, checkEdge, type Drive, isRow, rowAlong } from "./straight.ts";

/** Degrees between the screw and the face the pocket is in; common practice, no source. */
const pocketAngle = 15;
const radians = (pocketAngle * Math.PI) / 180;

/**
 * Wood left between the screw's seat and the end it leaves by, in thicknesses of the board: with it the usual lengths
 * (1 in for 1/2 and 5/8 stock, 1 1/4 for 3/4, 1 1/2 for 1, 2 1/2 for 1 1/2) bite well and stay inside a like board.
 * Common practice, no source.
 */
const seatShare = 2 / 3;

export type PocketFace = { readonly side: Side; readonly own: OwnAxis; readonly out: Vec3 };

/** Where the pockets of a lead into b: the patch they leave by, and the way along it that their row runs. */
export function pocketSeat(
  a: PlacedMember,
  seats: readonly Seat[],
  { out }: PocketFace,
): { seat: Seat; across: Vec3 } | undefined {
  const fit = seats.filter((s) => Math.abs(dot(s.normal, out)) < 0.7);
  // Out of the end grain where it can, as pockets are bored along the board.
  const seat = fit.find((s) => Math.abs(dot(s.normal, blankOf(a).length)) > 0.7) ?? fit[0];
  return seat && { seat, across: forward(unit(cross(seat.normal, out))) };
}

/** `side` is the face of a that the pockets are in, and `out` where that face looks; the row is moved by `shift`. */
export function drivePocket(
  drive: Drive,
  a: PlacedMember,
  b: PlacedMember,
  { seat, across }: { readonly seat: Seat; readonly across: Vec3 },
  face: PocketFace,
  shift: Vec3,
): readonly Driven[] | Problem {
  const { fastener, at } = drive;
  const { out } = face;
  const facts = { fastener: fastener.name, a: a.id, b: b.id, side: face.side };
  // In the patch: `across` runs along the face, `inward` from it to the other face.
  const inward = cross(across, seat.normal);
  const toward = unit(subtract(seat.normal, times(out, dot(seat.normal, out))));
  const thickness = ownEntry(ownSize(a), face.own);
  const inside = (p: Vec3) => dot(subtract(p, blankOf(a).origin), blankOf(a)[face.own]);
  const start = add(times(seat.normal, seat.offset), times(across, middleOf(reachOf(seat, across))));
  const slope = dot(inward, blankOf(a)[face.own]);
  const middle = (thickness / 2 - inside(start)) / slope;
  const { low, high } = reachOf(seat, inward);
  const edge = checkEdge(drive, a, b, Math.min(middle - low, high - middle));
  if (edge) return edge;

  const wood = depthIn(a, add(start, times(inward, middle)), times(toward, -1));
  const needs = thickness / 2 / Math.tan(radians);
  if (wood < needs) return problem("pocket-board-short", at, { ...facts, wood, needs, thickness }, a.at);

  const row = rowAlong(drive, a, b, reachOf(seat, across), 0);
  if (!isRow(row)) return row;
  const through = seatShare * thickness;
  const into = inches(fastener.length) - through;
  const way = add(times(toward, Math.cos(radians)), times(out, -Math.sin(radians)));
  const driven: Driven[] = [];
  for (const spot of row) {
    const exit = add(add(times(seat.normal, seat.offset), shift), add(times(across, spot), times(inward, middle)));
    const wrong = checkBite(drive, a, b, { through, into, deepEnough: 0, depth: depthIn(b, exit, way) });
    if (wrong) return wrong;
    const head = add(exit, times(way, -through));
    driven.push({ fastener, a: a.id, b: b.id, head, way, tip: add(exit, times(way, into)), through, into });
  }
  return driven;
}

const middleOf = ({ low, high }: { readonly low: number; readonly high: number }): number => (low + high) / 2;
