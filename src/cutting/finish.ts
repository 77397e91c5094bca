// A bound's prices -> every filling that a cheaper plan could use, and the general solver over them.
import type { Fill, Filler } from "./fill.ts";
import type { Incumbent } from "./incumbent.ts";
import type { Stock } from "./job.ts";
import type { Work } from "./knapsack.ts";
import { boundOf, type Priced, type Range } from "./pricing.ts";
import { searchWhole } from "./whole-search.ts";

/**
 * Counts of steps, never of time. `iterations`: for one search by the general solver over all fillings; `known`: over the known ones where
 * all are too many; `all`: for everything that is still to come.
 */
export type Budget = {
  readonly patterns: number;
  readonly steps: number;
  readonly iterations: number;
  readonly known: number;
  readonly all: Left;
};

/** Iterations of the general solver and steps of listing. */
export type Left = { left: number; readonly listing: Work };

/** Cheaper and cheaper plans of these fillings alone. */
export function betterOfKnown(
  stocks: readonly Stock[],
  known: readonly Fill[],
  demand: Int32Array,
  ranges: readonly Range[],
  iterations: number,
  all: Left,
  incumbent: Incumbent,
): void {
  for (let left = iterations; left > 0 && all.left > 0 && incumbent.target !== undefined; ) {
    const { plan, used } = searchWhole(stocks, known, demand, ranges, incumbent.target, Math.min(left, all.left));
    left -= used + 1;
    all.left -= used;
    if (plan === undefined) return;
    incumbent.keep(plan);
  }
}

/**
 * Betters the incumbent as far as it goes with so many boards of each stock; answers whether no cheaper plan is left there.
 * `prices`: pricings whose bounds hold for these ranges, the best first. `known`: fillings to try where all are too many.
 */
export function finish(
  pieces: number,
  stocks: readonly Stock[],
  fillers: readonly Filler[],
  demand: Int32Array,
  ranges: readonly Range[],
  scale: number,
  prices: readonly Priced[],
  known: readonly Fill[],
  budget: Budget,
  incumbent: Incumbent,
): boolean {
  for (;;) {
    const highest = ranges.reduce((sum, { high }, i) => sum + (high === 0 ? 0 : high * (stocks[i] as Stock).cost), 0);
    const target = incumbent.target;
    if (target === undefined) return true;
    const useful = usefulFills(
      pieces,
      stocks,
      fillers,
      demand,
      scale,
      Math.min(target, highest),
      ranges,
      prices,
      budget,
      budget.all.listing,
    );
    const fills = useful ?? known;
    const iterations = Math.min(budget.all.left, useful ? budget.iterations : budget.known);
    if (iterations <= 0) return false;
    const { plan, none, used } = searchWhole(stocks, fills, demand, ranges, target, iterations);
    budget.all.left -= used;
    if (plan) incumbent.keep(plan);
    else return none && useful !== undefined;
  }
}

/**
 * Fillings whose reduced cost leaves room for a plan at this cost: all others are in no such plan. That holds at each of the prices by
 * itself, so what one of them rules out is out. Undefined where no prices leave few enough.
 */
export function usefulFills(
  pieces: number,
  stocks: readonly Stock[],
  fillers: readonly Filler[],
  demand: Int32Array,
  scale: number,
  target: number,
  ranges: readonly Range[],
  prices: readonly Priced[],
  { patterns, steps }: Pick<Budget, "patterns" | "steps">,
  listing: Work,
): Fill[] | undefined {
  // A filling's reduced cost counts from the best of its stock where the bound already counts a board of it.
  const floorsOf = ({ profits, slacks }: Priced): number[] => {
    const room = target * scale - boundOf(profits, slacks, demand, ranges);
    return stocks.map(({ cost }, i) => {
      const { low, high } = ranges[i] as Range;
      // No board of it is in the plan.
      if (high === 0) return Number.POSITIVE_INFINITY;
      const slack = slacks[i] as number;
      return cost * scale - (slack < 0 || low > 0 ? slack : 0) - room;
    });
  };
  const every = (priced: Priced): Fill[] | undefined => {
    const found: Fill[] = [];
    const work = { left: Math.min(steps, listing.left) };
    const before = work.left;
    const floors = floorsOf(priced);
    for (const filler of fillers) {
      const fills = filler.every(priced.profits, demand, floors, patterns - found.length, work);
      if (fills === undefined) {
        listing.left -= before - work.left;
        return undefined;
      }
      found.push(...fills);
    }
    listing.left -= before - work.left;
    return found;
  };
  let found: Fill[] | undefined;
  for (const priced of prices) {
    // Whole fillings are worth the sum of their pieces: a list of them need not be made again.
    if (found?.every(({ stock, kinds }) => stock >= 0 && kinds.every((kind) => kind < pieces))) {
      const floors = floorsOf(priced);
      found = found.filter((fill) => worthOf(fill, priced.profits) >= (floors[fill.stock] as number));
      continue;
    }
    const also = every(priced);
    if (also === undefined) continue;
    const known: ReadonlySet<string> | undefined = found && new Set(found.map(nameOf));
    found = known ? also.filter((fill) => known.has(nameOf(fill))) : also;
  }
  return found;
}

const worthOf = ({ kinds, counts }: Fill, profits: Float64Array): number =>
  kinds.reduce((sum, kind, k) => sum + (profits[kind] as number) * (counts[k] as number), 0);

const nameOf = ({ stock, order, kinds, counts }: Fill): string => `${stock} ${order} ${kinds.join()} ${counts.join()}`;
