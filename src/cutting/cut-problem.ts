// What is to be cut and from what, and the plan that answers it: the shapes that the reader, the planner and the checker share.
import type { Exact } from "../units/length.ts";
import type { Money } from "../units/money.ts";

/** The first cuts of a board: ripped into strips that are then crosscut, or crosscut into lengths that are then ripped. */
export type Order = "rip" | "crosscut";

/** One kind of board: its true size, its price, and how many there are of it where that is limited. */
export type CutBoard = {
  readonly id: string;
  readonly length: Exact;
  readonly width: Exact;
  readonly cost: Money;
  readonly have?: number;
};

/** One kind of piece. `ends`: degrees off square left and right, positive where the upper edge is the longer one at that end. */
export type CutPiece = {
  readonly mark: string;
  /** Over all: of the square blank. */
  readonly length: Exact;
  readonly width: Exact;
  readonly count: number;
  readonly ends: readonly [number, number];
  /** One face must show: the piece may be turned about half a turn, but not turned over. */
  readonly showFace: boolean;
  /** The only boards it may come from; any where left out. */
  readonly boards?: readonly string[];
};

export type CutProblem = {
  readonly name: string;
  readonly kerf: Exact;
  /** Lost once at one end of each board. */
  readonly trim: Exact;
  readonly boards: readonly CutBoard[];
  readonly pieces: readonly CutPiece[];
  readonly order: Order | "either";
  /** Multiplies the usual work budget. */
  readonly effort: number;
};

/**
 * `at`, `across`: the lower left corner of the piece as it lies, along the board and from its lower edge. `turned`: half a turn about;
 * `flipped`: turned over, the upper edge down. The trim lies behind the last piece.
 */
export type PlacedPiece = {
  readonly mark: string;
  readonly at: number;
  readonly across: number;
  readonly turned: boolean;
  readonly flipped: boolean;
};

export type PlannedCuts = { readonly id: string; readonly order: Order; readonly pieces: readonly PlacedPiece[] };

/** Money exact. `proven`: no plan is cheaper; otherwise none costs less than `lowerBound`. */
export type CutPlan = {
  readonly cost: Money;
  readonly lowerBound: Money;
  readonly proven: boolean;
  readonly boards: readonly PlannedCuts[];
};
