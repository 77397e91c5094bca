// The cheapest plan that was found -> one at the same cost with fewer boards, and whether that is the fewest.
import { fewestBoardsAt } from "./costs.ts";
import type { Filler } from "./fill.ts";
import { usefulFills } from "./finish.ts";
import type { Incumbent } from "./incumbent.ts";
import type { Stock } from "./job.ts";
import type { Master } from "./master.ts";
import { boardsOf } from "./plan.ts";
import type { Priced } from "./pricing.ts";
import { searchWhole } from "./whole-search.ts";

/** Steps at effort 1. */
const usual = { patterns: 600, steps: 300_000, iterations: 300 };

/** Betters the incumbent's plan; proven only where its cost is. `priced`: a pricing whose bound holds for all plans. */
export function fewestBoards(
  stocks: readonly Stock[],
  fillers: readonly Filler[],
  pieces: number,
  demand: Int32Array,
  scale: number,
  master: Master,
  priced: Priced,
  incumbent: Incumbent,
  effort: number,
): boolean {
  if (incumbent.plan === undefined) return false;
  const least = fewestBoardsAt(stocks, incumbent.cost);
  const ranges = incumbent.ranges();
  const budget = { patterns: usual.patterns * effort, steps: usual.steps * effort };
  const listing = { left: usual.steps * effort };
  const { cost, closed } = incumbent;
  let all: ReturnType<typeof usefulFills>;
  for (let first = true; ; first = false) {
    const boards = boardsOf(incumbent.plan);
    if (boards <= least) return closed;
    if (first) all = usefulFills(pieces, stocks, fillers, demand, scale, cost, ranges, [priced], budget, listing);
    const { plan, none } = searchWhole(
      stocks,
      all ?? master.fills,
      demand,
      ranges,
      cost,
      usual.iterations * effort,
      boards - 1,
    );
    if (plan === undefined) return closed && none && all !== undefined;
    incumbent.keep(plan);
    incumbent.keepFewer(plan);
    if (boardsOf(incumbent.plan) >= boards) return false;
  }
}
