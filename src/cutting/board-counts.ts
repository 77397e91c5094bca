// A gap that is left -> how many boards of each stock: a tree of ranges, each with its own linear program and bound.
import { converge } from "./columns.ts";
import { dive } from "./dive.ts";
import type { Filler } from "./fill.ts";
import { type Budget, finish } from "./finish.ts";
import type { Incumbent } from "./incumbent.ts";
import type { Stock } from "./job.ts";
import type { Master, Solved } from "./master.ts";
import { type Priced, priceAll, profitsOf, type Range } from "./pricing.ts";

type Node = { readonly ranges: readonly Range[]; readonly bound: number };

/**
 * Betters plan and bound of the incumbent by looking at `most` nodes, the one with the least bound first. `last`: the budget of a node
 * whose boards are all settled, which can't be split any more.
 */
export function searchBoardCounts(
  master: Master,
  stocks: readonly Stock[],
  fillers: readonly Filler[],
  sizes: Float64Array,
  demand: Int32Array,
  scale: number,
  root: Priced,
  budget: Budget,
  last: Budget,
  incumbent: Incumbent,
  most: number,
): void {
  const open: Node[] = [{ ranges: incumbent.ranges(), bound: incumbent.bound }];
  /** Nodes that can't be split and aren't settled. */
  let stuck = Number.POSITIVE_INFINITY;
  const settle = (): void => {
    const least = open.reduce((low, { bound }) => Math.min(low, bound), stuck);
    incumbent.raise(least === Number.POSITIVE_INFINITY ? incumbent.cost : least);
  };
  for (let nodes = 0; nodes < most && open.length > 0; nodes++) {
    settle();
    if (incumbent.closed || stuck <= incumbent.bound) return;
    const next = open.reduce((best, node, i) => (node.bound < (open[best] as Node).bound ? i : best), 0);
    const [node] = open.splice(next, 1) as [Node];
    if (node.bound >= incumbent.cost) continue;
    for (const child of splitNode(node)) open.push(child);
  }
  settle();

  function splitNode({ ranges, bound: above }: Node): Node[] {
    const highest = costAt(stocks, ranges, ({ high }) => high);
    const lowest = costAt(stocks, ranges, ({ low }) => low);
    if (lowest >= incumbent.cost) return [];
    master.want(demand, ranges);
    let bound = above;
    const over = (cost: number): boolean =>
      incumbent.total(Math.ceil(cost - 1e-9)) >= incumbent.cost || cost > highest + 1e-6;
    const { solved, priced } = converge(master, stocks, fillers, demand, ranges, scale, 500, (safe) => over(safe));
    const safe = priced.bound / scale;
    if (over(safe)) return [];
    bound = Math.max(bound, incumbent.total(Math.ceil(safe - 1e-9)), lowest);

    const counts = boardsUsed(stocks, master, solved).map((count, i) => {
      const { low, high } = ranges[i] as Range;
      return Math.min(high, Math.max(low, count));
    });
    const part = counts.map((count) => Math.abs(count - Math.round(count)));
    const split = part.reduce((best, each, i) => (each > (part[best] as number) + 1e-9 ? i : best), 0);
    if ((part[split] as number) > 1e-6) {
      const below = Math.floor(counts[split] as number);
      return [
        { ranges: withRange(ranges, split, { high: below }), bound },
        { ranges: withRange(ranges, split, { low: below + 1 }), bound },
      ];
    }
    dive(sizes.length, master, stocks, fillers, demand, ranges, scale, solved, -1, incumbent);
    if (bound >= incumbent.cost) return [];
    const wide = ranges.findIndex(({ low, high }) => low < high);
    const bySize = priceAll(stocks, fillers, sizeProfits(), demand, ranges, scale);
    const byRoot = priceAll(stocks, fillers, root.profits, demand, ranges, scale);
    if (
      finish(
        sizes.length,
        stocks,
        fillers,
        demand,
        ranges,
        scale,
        [priced, bySize, byRoot],
        master.fills,
        wide === -1 ? last : budget,
        incumbent,
      )
    )
      return [];
    if (wide === -1) {
      stuck = Math.min(stuck, bound);
      return [];
    }
    const count = Math.round(counts[wide] as number);
    const { low, high } = ranges[wide] as Range;
    return [
      { ranges: withRange(ranges, wide, { low: count, high: count }), bound },
      ...(count > low ? [{ ranges: withRange(ranges, wide, { high: count - 1 }), bound }] : []),
      ...(count < high ? [{ ranges: withRange(ranges, wide, { low: count + 1 }), bound }] : []),
    ];
  }

  /** Every kind worth its size: with the boards fixed, a filling's slack is then its waste. */
  function sizeProfits(): Float64Array {
    const dear = stocks.reduce((dearest, { cost }) => Math.max(dearest, cost), 1);
    const largest = Math.max(...sizes);
    const profits = profitsOf(
      sizes.map((size) => (size / largest) * dear),
      scale,
    );
    const all = new Float64Array(demand.length);
    all.set(profits);
    return all;
  }
}

const costAt = (stocks: readonly Stock[], ranges: readonly Range[], end: (range: Range) => number): number =>
  stocks.reduce((sum, { cost }, i) => sum + (cost > 0 ? cost * end(ranges[i] as Range) : 0), 0);

const boardsUsed = (stocks: readonly Stock[], { fills }: Master, { uses }: Solved): number[] => {
  const counts = stocks.map(() => 0);
  fills.forEach(({ stock }, i) => {
    if (stock >= 0) counts[stock] = (counts[stock] as number) + (uses[i] as number);
  });
  return counts;
};

const withRange = (ranges: readonly Range[], at: number, change: Partial<Range>): Range[] =>
  ranges.map((range, i) => (i === at ? { ...range, ...change } : range));
