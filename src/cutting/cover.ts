// Stocks, fillings and demand -> the cheapest plan that the work budget finds, and a bound that no plan can be below.
import { searchBoardCounts } from "./board-counts.ts";
import { converge } from "./columns.ts";
import { dive } from "./dive.ts";
import { fewestBoards } from "./fewest-boards.ts";
import type { Filler } from "./fill.ts";
import { type Budget, betterOfKnown, finish } from "./finish.ts";
import { greedyPlan } from "./greedy.ts";
import { Incumbent } from "./incumbent.ts";
import type { Stock } from "./job.ts";
import { Master } from "./master.ts";
import type { Used } from "./plan.ts";
import { type Priced, type Range, scaleFor } from "./pricing.ts";

/** Whole costs. `plan` is undefined where the boards there are can't hold all pieces, as far as the search could tell. */
export type Covered = {
  readonly plan?: readonly Used[];
  readonly cost: number;
  readonly bound: number;
  /** No plan at this cost has fewer boards. */
  readonly fewest: boolean;
};

/** How much a search may do at effort 1; each is a count of steps, so that a plan is the same on every machine. */
const usual = {
  dives: 4,
  moreDives: 24,
  fewPatterns: 300,
  patterns: 4_000,
  steps: 2_000_000,
  longPatterns: 15_000,
  longSteps: 30_000_000,
  listing: 60_000_000,
  quick: 500,
  known: 3_000,
  leafPatterns: 8_000,
  leaf: 6_000,
  long: 40_000,
  longKnown: 12_000,
  all: 40_000,
  nodes: 400,
  lineNodes: 2_500,
  cells: 4e8,
};

/**
 * `sizes`: how much of a board a piece of each kind takes, for first plans. `demand`: of each kind, then 0 for each sort of strip.
 * `better`: betters the first plan in a way of its own.
 */
export function cover(
  stocks: readonly Stock[],
  fillers: readonly Filler[],
  sizes: Float64Array,
  demand: Int32Array,
  effort: number,
  better: (incumbent: Incumbent) => void,
): Covered {
  const incumbent = new Incumbent(
    stocks,
    demand.reduce((sum, count) => sum + count, 0),
  );
  const scale = scaleFor(stocks);
  const largest = Math.max(...sizes);
  for (const favour of [1, 1.15, 1.02]) {
    const profits = sizes.map((size) => Math.max(1, Math.round(1e6 * (size / largest) ** favour)));
    incumbent.keep(greedyPlan(stocks, fillers, profits, demand.subarray(0, sizes.length), incumbent.ranges()));
  }
  better(incumbent);
  const answer = (master: Master, priced: Priced): Covered => {
    const fewest = fewestBoards(stocks, fillers, sizes.length, demand, scale, master, priced, incumbent, effort);
    const { plan, cost, bound } = incumbent;
    return plan ? { plan, cost, bound, fewest } : { cost, bound, fewest };
  };
  const dear = stocks.reduce((most, { cost }) => Math.max(most, cost), 1);
  const master = new Master(
    stocks,
    demand,
    sizes.length,
    dear * (stocks.every(({ most }) => most === Number.POSITIVE_INFINITY) ? 3 : 100),
  );
  try {
    if (incumbent.plan) master.add(incumbent.plan.map(({ fill }) => fill));
    const whole = (cost: number): number => incumbent.total(Math.ceil(cost - 1e-6));
    const root = converge(master, stocks, fillers, demand, incumbent.ranges(), scale, 3000, (bound, value) => {
      incumbent.raise(incumbent.total(Math.ceil(bound - 1e-9)));
      return incumbent.closed || whole(value) <= incumbent.bound;
    });
    const diveTurns = (from: number, to: number): void => {
      for (let turn = from; turn < to && !incumbent.closed; turn++) {
        dive(sizes.length, master, stocks, fillers, demand, incumbent.ranges(), scale, root.solved, turn, incumbent);
        master.want(demand, incumbent.ranges());
      }
    };
    diveTurns(-1, usual.dives * effort - 1);
    if (incumbent.closed) return answer(master, root.priced);
    // Prices that are as good as they get leave the fewest fillings to look at.
    const { priced } = converge(master, stocks, fillers, demand, incumbent.ranges(), scale, 3000, () => false);
    incumbent.raise(incumbent.total(Math.ceil(priced.bound / scale - 1e-9)));
    const ranges = (): Range[] => incumbent.ranges();
    const all = { left: usual.all * effort, listing: { left: usual.listing * effort } };
    const few = {
      ...{ patterns: usual.fewPatterns * effort, steps: usual.steps * effort, iterations: usual.quick * effort },
      ...{ known: 0, all },
    };
    const quick = { ...few, patterns: usual.patterns * effort, known: usual.quick / 4 };
    const long = {
      ...{ patterns: usual.longPatterns * effort, steps: usual.longSteps * effort, iterations: usual.long * effort },
      ...{ known: usual.longKnown * effort, all },
    };
    const leaf = { ...long, patterns: usual.leafPatterns * effort, iterations: usual.leaf * effort, known: 0 };
    const settled = (budget: Budget): boolean =>
      finish(sizes.length, stocks, fillers, demand, ranges(), scale, [priced], master.fills, budget, incumbent);
    /** What is known may hold a better plan, long before all that could be in one is listed. */
    const tryKnown = (): void => {
      const known = stocks.length > 1 ? [...master.fills, ...incumbent.offered] : master.fills;
      betterOfKnown(stocks, known, demand, ranges(), usual.known * effort, all, incumbent);
    };
    const strips = demand.length > sizes.length;
    if (settled(few)) incumbent.raise(incumbent.cost);
    // Along a line the search over board counts is soon done; with one stock there is nothing to branch on.
    else if (strips || stocks.length === 1) tryKnown();
    if (stocks.length === 1) diveTurns(usual.dives * effort - 1, usual.moreDives * effort - 1);
    if (!incumbent.closed && stocks.length > 1) {
      // A node takes longer, the larger the table of its pricing.
      const cells = sizes.length * Math.max(...stocks.map(({ length }) => length));
      const nodes = Math.max(usual.nodes, strips ? 0 : Math.min(usual.lineNodes, usual.cells / cells)) * effort;
      searchBoardCounts(master, stocks, fillers, sizes, demand, scale, priced, quick, leaf, incumbent, nodes);
      if (!incumbent.closed && !strips) tryKnown();
    }
    if (!incumbent.closed && settled(long)) incumbent.raise(incumbent.cost);
    return answer(master, priced);
  } finally {
    master.dispose();
  }
}
