// Demand -> a plan that works, board after board, each filled with the most there is to gain.
import type { Fill, Filler } from "./fill.ts";
import type { Stock } from "./job.ts";
import { Rest, type Used } from "./plan.ts";
import type { Range } from "./pricing.ts";

/**
 * The board with the most profit for its cost, used as often as its whole filling is wanted, then the next. A board that takes all
 * that is left is the last, if it is the cheapest that does. Undefined where the boards there are don't suffice.
 */
export function greedyPlan(
  stocks: readonly Stock[],
  fillers: readonly Filler[],
  profits: Float64Array,
  demand: Int32Array,
  ranges: readonly Range[],
): Used[] | undefined {
  const rest = new Rest(demand, ranges, demand.length);
  const plan: Used[] = [];
  while (!rest.done) {
    const all = rest.want.reduce((sum, count, kind) => sum + count * (profits[kind] as number), 0);
    let best: { readonly fill: Fill; readonly rate: number } | undefined;
    for (const fill of fillers.flatMap((filler) => filler.whole(profits, rest.want, rest.boards))) {
      const value = fill.kinds.reduce(
        (sum, kind, k) =>
          sum + (profits[kind] as number) * Math.min(fill.counts[k] as number, rest.want[kind] as number),
        0,
      );
      const rate = (value >= all ? 4 * all : value) / ((stocks[fill.stock] as Stock).cost + 1e-6);
      if (best === undefined || rate > best.rate) best = { fill, rate };
    }
    if (best === undefined) return undefined;
    plan.push(rest.take(best.fill));
  }
  return plan;
}
