// A linear program with few fillings -> the same with all that gain added, one round of pricing after the other.
import { costOfFill, type Fill, type Filler } from "./fill.ts";
import type { Stock } from "./job.ts";
import type { Master, Solved } from "./master.ts";
import { type Priced, priceAll, profitsOf, type Range } from "./pricing.ts";

export type Converged = {
  readonly solved: Solved;
  /** The pricing with the highest bound. */
  readonly priced: Priced;
};

/**
 * Prices are taken between the best so far and the newest, which settles much sooner than the newest alone. `enough` is asked after
 * every round, with the highest bound (unscaled) and the program's value, whether more rounds are of use.
 */
export function converge(
  master: Master,
  stocks: readonly Stock[],
  fillers: readonly Filler[],
  demand: Int32Array,
  ranges: readonly Range[],
  scale: number,
  rounds: number,
  enough: (bound: number, value: number) => boolean,
): Converged {
  let solved = master.solve();
  let best: Priced | undefined;
  let centre: Float64Array = solved.worths;
  let lean = 0;
  const dear = stocks.reduce((most, { cost }) => Math.max(most, cost), 1);
  const reduced = (fill: Fill): number => {
    const worth = fill.kinds.reduce(
      (sum, kind, k) => sum + (solved.worths[kind] as number) * (fill.counts[k] as number),
      0,
    );
    return costOfFill(stocks, fill) - worth - (solved.limits[fill.stock] ?? 0);
  };
  for (let round = 0; ; round++) {
    const worths =
      lean === 0
        ? solved.worths
        : solved.worths.map((worth, kind) => lean * (centre[kind] as number) + (1 - lean) * worth);
    const priced = priceAll(stocks, fillers, profitsOf(worths, scale), demand, ranges, scale);
    if (best === undefined || priced.bound > best.bound) {
      best = priced;
      centre = worths;
    }
    if (round >= rounds || enough(best.bound / scale, solved.value)) return { solved, priced: best };
    const gains = priced.fills.filter((fill) => reduced(fill) < -1e-7 * dear);
    if (gains.length > 0 && master.add(gains) > 0) {
      solved = master.solve();
      if (round === 0) lean = 0.7;
    } else if (lean > 0) lean = lean > 0.3 ? lean - 0.3 : 0;
    else return { solved, priced: best };
  }
}
