// Boards and pieces for the tests of findings: only what packing and counting look at, with sizes as the trade says them.
import type { Piece } from "../../src/item/item.ts";
import { type Exact, exact, inches, type Length, zero } from "../../src/units/length.ts";
import type { Board, BoardLength } from "../../src/yard/yard.ts";

const at = { file: "content/yard/boards.yaml", line: 1, column: 1 };

/** "26 5/8" -> exact inches. */
export const inch = (text: string): Exact => text.split(" ").reduce<Exact>((sum, part) => sum.add(exact(part)), zero);

export const stock = (length: string, usable: string, price: string, priced = "2026-01-10"): BoardLength => ({
  length: inch(length),
  usable: inch(usable),
  price: exact(price),
  priced,
});

export const board = (name: string, thickness: string, width: string, lengths: readonly BoardLength[]): Board => ({
  name,
  thickness: inch(thickness),
  width: inch(width),
  sizeFrom: "stated",
  species: {
    name: "western redcedar",
    specificGravity: 0.32,
    stiffness: 1_110_000,
    rupture: 7500,
    radial: 0.00111,
    tangential: 0.00234,
    saturation: 22,
    decay: "resistant",
    source: "Wood Handbook",
  },
  treatment: "none",
  showSides: 1,
  moisture: 12,
  density: 0.0129,
  lengths,
  words: "western redcedar, not treated",
  at,
});

/** Fence board: 5/8 x 5 1/2 x 72, 70 1/2 of it usable. */
export const fenceBoard = board("fence board", "5/8", "5 1/2", [stock("72", "70 1/2", "4.25")]);

export const piece = (mark: string, count: number, length: Length, from: Board, ripped?: Length): Piece => ({
  mark,
  letter: mark,
  name: mark,
  count,
  board: from,
  length,
  width: ripped ?? from.width,
  thickness: from.thickness,
  ripped: ripped !== undefined,
  planed: false,
  edges: [length, length],
  ends: [
    { mitre: 0, bevel: 0 },
    { mitre: 0, bevel: 0 },
  ],
  cuts: [],
  volume: inches(length),
  weight: 1,
  members: Array.from({ length: count }, (_, i) => `${mark}/${i + 1}`),
});

export const kerf = inch("1/8");
