// What is to be cut and from what, and the plan that answers it: the shapes that the reader, the planner and the checker share.
import type { Exact } from "../units/length.ts";
import type { Money } from "../units/money.ts";

/** The first cuts of a board: ripped into strips that are then crosscut, or crosscut into lengths that are then ripped. */
export type Order = "rip" | "crosscut";

/** Along the board from its left end, over its whole width. */
export type Stretch = { readonly from: Exact; readonly to: Exact };

/** One kind of board: its true size, its price, and how many there are of it where that is limited. */
export type CutBoard = {
  readonly id: string;
  readonly length: Exact;
  readonly width: Exact;
  readonly cost: Money;
  readonly have?: number;
  /** Knots or rough wood of a board that was looked at: clear pieces stay out of there. */
  readonly bad?: readonly Stretch[];
  /** Knots may be anywhere: no clear piece comes from it. */
  readonly knotty?: boolean;
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
  /** No knots, no rough ends: only from clear boards or clear stretches. */
  readonly clear?: boolean;
  /** All pieces that name the same group come from one board. */
  readonly together?: string;
  /** "any": grain doesn't matter, and a square piece may lie a quarter turn about. Along the board where left out. */
  readonly grain?: "along" | "any";
};

export type CutProblem = {
  readonly name: string;
  readonly kerf: Exact;
  /** Lost once at one end of each board, or at both. */
  readonly trim: Exact;
  readonly trimBothEnds?: boolean;
  /** An offcut as wide as its board is worth keeping from this length on. */
  readonly useful?: Exact;
  readonly boards: readonly CutBoard[];
  readonly pieces: readonly CutPiece[];
  readonly order: Order | "either";
  /** Multiplies the usual work budget. */
  readonly effort: number;
};

/**
 * `at`, `across`: the lower left corner of the piece as it lies, along the board and from its lower edge. `turned`: half a turn about;
 * `flipped`: turned over, the upper edge down; `quarter`: its length lies across the board. The trim lies behind the last piece, or
 * behind it and before the first.
 */
export type PlacedPiece = {
  readonly mark: string;
  readonly at: number;
  readonly across: number;
  readonly turned: boolean;
  readonly flipped: boolean;
  readonly quarter?: true;
};

export type PlannedCuts = { readonly id: string; readonly order: Order; readonly pieces: readonly PlacedPiece[] };

/**
 * Money exact. `proven`: no plan is cheaper; otherwise none costs less than `lowerBound`. `fewest`: no plan at this cost has fewer
 * boards. Of such plans one with few settings of the saw, then with a long useful offcut is looked for; the least of those isn't proven.
 */
export type CutPlan = {
  readonly cost: Money;
  readonly lowerBound: Money;
  readonly proven: boolean;
  readonly fewest: boolean;
  /** How often fence, stop and mitre are set to cut all boards: see saw-settings.ts. */
  readonly settings: number;
  /** The longest offcut that is worth keeping, where there is one. */
  readonly offcut?: number;
  readonly boards: readonly PlannedCuts[];
};
