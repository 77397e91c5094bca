// Profits of pieces -> what a board of each stock can at most be worth, and from it a bound on the cost that holds in whole numbers.
import type { Fill, Filler } from "./fill.ts";
import type { Stock } from "./job.ts";

/** How many boards of a stock a plan has: at least `low`, at most `high`. */
export type Range = { readonly low: number; readonly high: number };

/** Costs are multiplied by this before they are rounded to whole profits: sums stay exact in doubles. */
export const scaleFor = (stocks: readonly Stock[]): number =>
  2 ** Math.floor(Math.log2(1e9 / Math.max(1, ...stocks.map(({ cost }) => cost))));

/** Whole profits from duals. */
export const profitsOf = (worths: Float64Array, scale: number): Float64Array =>
  worths.map((worth) => Math.max(0, Math.floor(worth * scale)));

/** What the pricing of all stocks at some profits proves. */
export type Priced = {
  readonly profits: Float64Array;
  /** For each stock, scaled cost minus the most that a board of it is worth: negative where a filling is worth more than its board. */
  readonly slacks: readonly number[];
  readonly fills: readonly Fill[];
  /** Scaled: no plan with so many boards of each stock costs less. */
  readonly bound: number;
};

/**
 * The bound of Lagrange: every piece is worth its profit, and each board of a stock gains at most what its best filling is worth above
 * its cost. All sums are whole numbers below 2^53.
 */
export function priceAll(
  stocks: readonly Stock[],
  fillers: readonly Filler[],
  profits: Float64Array,
  demand: Int32Array,
  ranges: readonly Range[],
  scale: number,
): Priced {
  const best = stocks.map(() => 0);
  const fills: Fill[] = [];
  for (const filler of fillers) {
    const found = filler.best(profits, demand, ranges);
    for (const { stock, value } of found.worths) best[stock] = Math.max(best[stock] as number, value);
    fills.push(...found.fills);
  }
  const slacks = stocks.map(({ cost }, i) => cost * scale - (best[i] as number));
  return { profits, slacks, fills, bound: boundOf(profits, slacks, demand, ranges) };
}

/** Scaled: the worth of all pieces, less what boards gain at most, plus what boards that must be there lose at least. */
export function boundOf(
  profits: Float64Array,
  slacks: readonly number[],
  demand: Int32Array,
  ranges: readonly Range[],
): number {
  const worth = profits.reduce((sum, profit, kind) => sum + profit * (demand[kind] as number), 0);
  return slacks.reduce((sum, slack, i) => {
    const { low, high } = ranges[i] as Range;
    const boards = slack < 0 ? high : low;
    return boards === 0 ? sum : sum + slack * boards;
  }, worth);
}
