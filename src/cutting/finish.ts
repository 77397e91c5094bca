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

/** Fillings whose reduced cost leaves room for a plan at this cost: all others are in no such plan. */
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
  const [first, ...others] = prices as [Priced, ...Priced[]];
  // A filling's reduced cost counts from the best of its stock where the bound already counts a board of it.
  const floorsOf = ({ profits, slacks }: Priced): number[] => {
    const room = target * scale - boundOf(profits, slacks, demand, ranges);
    return stocks.map(({ cost }, i) => {
      const slack = slacks[i] as number;
      return cost * scale - (slack < 0 || (ranges[i] as Range).low > 0 ? slack : 0) - room;
    });
  };
  const found: Fill[] = [];
  const work = { left: Math.min(steps, listing.left) };
  const before = work.left;
  const floors = floorsOf(first);
  for (const filler of fillers) {
    const fills = filler.every(first.profits, demand, floors, patterns - found.length, work);
    if (fills === undefined) {
      listing.left -= before - work.left;
      return undefined;
    }
    found.push(...fills);
  }
  listing.left -= before - work.left;
  const also = others.map((priced) => ({ profits: priced.profits, floors: floorsOf(priced) }));
  // What holds for whole fillings only is not asked of strips.
  return found.filter(
    (fill) =>
      fill.stock < 0 ||
      fill.kinds.some((kind) => kind >= pieces) ||
      also.every(({ profits, floors }) => {
        const worth = fill.kinds.reduce(
          (sum, kind, k) => sum + (profits[kind] as number) * (fill.counts[k] as number),
          0,
        );
        return worth >= (floors[fill.stock] as number);
      }),
  );
}
