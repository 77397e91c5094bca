// How one board may be filled, and who finds fillings: what the search asks of a way of sawing, whatever that way is.
import type { Order } from "./cut-problem.ts";
import type { Stock } from "./job.ts";
import type { Work } from "./knapsack.ts";
import type { Range } from "./pricing.ts";

/** A piece in a strip: which kind it is and how it lies. */
export type Laid = {
  readonly kind: number;
  readonly turned: boolean;
  readonly flipped: boolean;
  /** Its length lies across the board. */
  readonly quarter?: true;
  readonly at: number;
};

/** One strip (or, crosscut first, one length): how wide it is sawn and its pieces one after the other. */
export type Strip = {
  readonly size: number;
  readonly pieces: readonly Laid[];
  /** Keeps each piece where it is laid, along the board. */
  readonly fixed?: true;
};

/**
 * Something a plan is made of, `kinds` and `counts` side by side. A whole filling of a board: `stock` and the pieces it gives. Where
 * boards are filled by way of strips, there are rows behind the kinds of pieces, one for each sort of strip: a board cut into strips
 * has its stock and gives strips; one strip has no stock (-1), takes 1 off its sort, and gives its pieces.
 */
export type Fill = {
  readonly stock: number;
  readonly order: Order;
  readonly strips: readonly Strip[];
  readonly kinds: readonly number[];
  readonly counts: readonly number[];
};

/** What a stock's boards are worth at most. */
export type Worth = { readonly stock: number; readonly value: number };

/**
 * A way of sawing some stocks. Profits are whole numbers, 0 and up; `demand` is how many of each kind are still wanted; a stock whose
 * range ends at 0 is not looked at.
 */
export type Filler = {
  /** For each of its stocks an upper bound on the worth of any filling; and what to plan with that comes up to it. */
  best(profits: Float64Array, demand: Int32Array, ranges: readonly Range[]): { worths: Worth[]; fills: Fill[] };
  /** For each of its stocks one good whole filling of what is wanted. */
  whole(profits: Float64Array, demand: Int32Array, ranges: readonly Range[]): Fill[];
  /**
   * Every largest filling of each stock worth at least that stock's floor (Infinity: none is asked for); undefined where there are more than `most` or `work`
   * runs out.
   */
  every(
    profits: Float64Array,
    demand: Int32Array,
    floors: readonly number[],
    most: number,
    work: Work,
  ): Fill[] | undefined;
};

export const costOfFill = (stocks: readonly Stock[], { stock }: Fill): number => stocks[stock]?.cost ?? 0;

/** The number of each kind in these strips, as a filling. */
export function fillOf(stock: number, order: Order, strips: readonly Strip[]): Fill {
  const counts = new Map<number, number>();
  for (const { pieces } of strips) for (const { kind } of pieces) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  const kinds = [...counts.keys()].sort((a, b) => a - b);
  return { stock, order, strips, kinds, counts: kinds.map((kind) => counts.get(kind) as number) };
}

/** Pieces of these kinds one after the other with the kerf between. */
export function inLine(kinds: readonly number[], lengthOf: (kind: number) => number, kerf: number): Laid[] {
  let at = 0;
  return kinds.map((kind) => {
    const laid = { kind, turned: false, flipped: false, at };
    at += lengthOf(kind) + kerf;
    return laid;
  });
}
