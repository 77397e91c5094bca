// Worked-out item -> the operations of the trade that it takes, as a whole and step by step.
import type { Item, Join, Piece, WorkedStep } from "../item/item.ts";
import { compareLengths, exact } from "../units/length.ts";

export type Operation =
  | "rip"
  | "rip narrow"
  | "plane"
  | "crosscut"
  | "crosscut short"
  | "bore"
  | "notch"
  | "pocket holes"
  | "lead holes"
  | "drive screws"
  | "drive nails"
  | "glue"
  | "lift"
  | "sand"
  | "coat"
  | "coat with lime"
  | "coat with drying oil"
  | "handle treated wood";

/** A strip under this width brings the hand near the blade; a piece under this length can't be held to the fence by hand. */
const narrowStrip = exact(3);
const shortPiece = exact(8);

/** Pounds above which a half-built thing is lifted by two. Common practice, no source: bulky things are awkward well under 51 lb. */
export const liftedByTwo = 35;

/** Cutting the boards into pieces, before any step: in the order of the work. */
export function cuttingOperations(item: Item): Operation[] {
  const ripped = item.pieces.filter((piece) => piece.ripped);
  const cuts = item.pieces.flatMap((piece) => piece.cuts);
  return operations([
    ["handle treated wood", item.pieces.some((piece) => piece.board.treatment === "preservative")],
    ["rip", ripped.length > 0],
    ["rip narrow", ripped.some((piece) => compareLengths(piece.width, narrowStrip) < 0)],
    ["plane", item.pieces.some((piece) => piece.planed)],
    ["crosscut", item.pieces.length > 0],
    ["crosscut short", item.pieces.some(isShort)],
    ["bore", cuts.some((cut) => cut.kind === "hole")],
    ["notch", cuts.some((cut) => cut.kind === "box" || cut.kind === "prism")],
    ["sand", true],
  ]);
}

const isShort = (piece: Piece): boolean => compareLengths(piece.length, shortPiece) < 0;

/** What one step takes, from the joins that close in it and from what has to be lifted. */
export function stepOperations(step: WorkedStep, item: Item, onBench: boolean): Operation[] {
  const weight = weightInHand(step, item);
  return operations([...joiningOperations(step.joins), ["lift", !onBench && weight >= liftedByTwo]]);
}

/** Sanding, then brushing or wiping the finish on, for the variants given. */
export function finishingOperations(variants: readonly Item[]): Operation[] {
  const finishes = variants.flatMap((item) => item.variant.finish.map((coat) => coat.finish));
  return operations([
    ["sand", true],
    ["coat", finishes.length > 0],
    ["coat with lime", finishes.some((finish) => finish.kind === "limewash")],
    ["coat with drying oil", finishes.some((finish) => finish.oilyRags)],
  ]);
}

/** Putting it where it will be used. */
export const placingOperations = (item: Item): Operation[] => operations([["lift", item.weight >= liftedByTwo]]);

function joiningOperations(joins: readonly Join[]): [Operation, boolean][] {
  const kinds = new Set(joins.flatMap((join) => join.driven.map(({ fastener }) => fastener.kind)));
  return [
    ["pocket holes", kinds.has("pocket screw")],
    ["lead holes", kinds.has("screw") || kinds.has("dowel") || kinds.has("bolt") || kinds.has("nail")],
    ["drive screws", kinds.has("pocket screw") || kinds.has("screw") || kinds.has("bolt")],
    ["drive nails", kinds.has("nail")],
    ["glue", joins.some((join) => join.ways.includes("glue"))],
  ];
}

function weightInHand(step: WorkedStep, item: Item): number {
  const inHand = new Set([...step.there, ...step.shown]);
  return item.members.reduce((sum, member) => (inHand.has(member.id) ? sum + member.weight : sum), 0);
}

const operations = (wanted: readonly (readonly [Operation, boolean])[]): Operation[] =>
  wanted.filter(([, due]) => due).map(([operation]) => operation);
