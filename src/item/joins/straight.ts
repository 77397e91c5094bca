// A fastener driven square through a into b -> where each one sits, or why it can't.
import type { Vec3 } from "../../geometry/shape.ts";
import { add, times } from "../../geometry/vector.ts";
import { type Problem, problem } from "../../problems/problem.ts";
import { inches } from "../../units/length.ts";
import type { Fastener } from "../../yard/yard.ts";
import { depthIn } from "../frame.ts";
import type { Driven } from "../item.ts";
import type { PlacedMember } from "../placed.ts";
import { fastenerRow, leastMargin, mostInRow } from "./fastener-row.ts";
import { reachAlong, reachOf, type Seat } from "./seat.ts";

/** What is to be driven: how many of what at one place, and the word the maker wrote it at. */
export type Drive = { readonly at: Problem["at"]; readonly count: number; readonly fastener: Fastener };

/**
 * Least bite into b, in diameters. A screw that grips less holds nothing worth counting (common practice, no source); what
 * it may carry asks for 6 diameters (NDS ch. 12) and is checked later. Nails: a third of the 10 diameters of the old rule.
 */
const leastBite: Readonly<Record<Fastener["kind"], number>> = {
  screw: 2,
  "pocket screw": 2,
  nail: 10 / 3,
  dowel: 2,
  bolt: 0,
};

/** From the wood's end, in diameters, where the row has room for as much between its fasteners: nearer ones split it. Common practice, no source. */
const fromEnd = 4;

/** A bolt sticks out for its washer and nut; 1/2 in, common practice, no source. */
const forTheNut = 0.5;

/** The bite's own problem, if it has one: too short, or through the far face. */
export function checkBite(
  drive: Drive,
  a: PlacedMember,
  b: PlacedMember,
  bite: { readonly through: number; readonly into: number; readonly deepEnough: number; readonly depth: number },
): Problem | undefined {
  const { fastener, at } = drive;
  const facts = { fastener: fastener.name, a: a.id, b: b.id, length: fastener.length, ...bite };
  const least = Math.max(leastBite[fastener.kind] * fastener.diameter, bite.deepEnough);
  if (bite.into < least - 1e-9) return problem("fastener-too-short", at, { ...facts, least }, b.at);
  if (fastener.kind === "bolt" || bite.into < bite.depth - 1e-9) return undefined;
  return problem("fastener-breaks-through", at, facts, b.at);
}

/** The row's middles within this room, or the problem of too little room. */
export function rowAlong(
  drive: Drive,
  a: PlacedMember,
  b: PlacedMember,
  { low, high }: { readonly low: number; readonly high: number },
  leastInset: number,
): number[] | Problem {
  const { count, fastener, at } = drive;
  const row = fastenerRow(count, low, high, fastener.diameter, leastInset);
  if (row) return row;
  const most = mostInRow(high - low, fastener.diameter);
  const facts = { fastener: fastener.name, count, most, room: high - low, a: a.id, b: b.id };
  return problem("fasteners-crowded", at, facts, b.at);
}

/** Least from a fastener's middle to an edge of the patch (inches). */
export const leastFromEdge = ({ fastener }: Drive): number => leastMargin * fastener.diameter;

/** The problem of a fastener that stands too near the edge beside the row, if it does. */
export function checkEdge(drive: Drive, a: PlacedMember, b: PlacedMember, margin: number): Problem | undefined {
  const least = leastFromEdge(drive);
  if (margin >= least - 1e-9) return undefined;
  const facts = { fastener: drive.fastener.name, a: a.id, b: b.id, margin, least };
  return problem("fastener-near-edge", drive.at, facts, b.at);
}

/** Screws, nails and bolts from a's outer face, dowels half in each, in a row along the longer side of the patch, moved by `shift`. */
export function driveStraight(
  drive: Drive,
  a: PlacedMember,
  b: PlacedMember,
  seat: Seat,
  shift: Vec3,
): readonly Driven[] | Problem {
  const { fastener } = drive;
  const { low, high } = reachOf(seat, seat.short);
  const row = rowAlong(drive, a, b, reachAlong(seat, (low + high) / 2), fromEnd * fastener.diameter);
  if (!isRow(row)) return row;
  const edge = checkEdge(drive, a, b, (high - low) / 2);
  if (edge) return edge;

  const way = seat.normal;
  const back = times(way, -1);
  const length = inches(fastener.length);
  const driven: Driven[] = [];
  for (const spot of row) {
    const entry = add(onSeat(seat, spot, (low + high) / 2), shift);
    const wood = depthIn(a, entry, back);
    const depth = depthIn(b, entry, way);
    const through = fastener.kind === "dowel" ? Math.min(length / 2, wood) : wood;
    const into = length - through;
    const deepEnough = fastener.kind === "bolt" ? depth + forTheNut : 0;
    const wrong = checkBite(drive, a, b, { through, into, deepEnough, depth });
    if (wrong) return wrong;
    const head = add(entry, times(back, through));
    driven.push({ fastener, a: a.id, b: b.id, head, way, tip: add(entry, times(way, into)), through, into });
  }
  return driven;
}

export const isRow = (row: number[] | Problem): row is number[] => Array.isArray(row);

const onSeat = ({ normal, offset, long, short }: Seat, onLong: number, onShort: number): Vec3 =>
  add(times(normal, offset), add(times(long, onLong), times(short, onShort)));
