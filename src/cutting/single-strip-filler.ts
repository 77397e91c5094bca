// Boards that give one strip with contents of its own -> their fillings: each board is that strip.
import type { Order } from "./cut-problem.ts";
import { type Fill, type Filler, fillOf } from "./fill.ts";
import type { StripContents } from "./strip-contents.ts";

/** `contents`: by stock. `size`: how wide the strip is where boards are ripped first. */
export function singleStripFiller(contents: ReadonlyMap<number, StripContents>, size: number, order: Order): Filler {
  const fill = (stock: number, { line }: StripContents, counts: Int32Array): Fill =>
    fillOf(stock, order, [{ size, pieces: line.laid(counts), fixed: true }]);
  const best: Filler["best"] = (profits, demand, ranges) => {
    const open = [...contents].filter(([stock]) => (ranges[stock]?.high ?? 0) > 0);
    const good = open.map(([stock, each]) => ({ stock, value: each.value(profits, demand) }));
    const fills = open.flatMap(([stock, each]) => {
      const counts = each.counts(profits, demand);
      return counts.some((count) => count > 0) ? [fill(stock, each, counts)] : [];
    });
    return { worths: good.filter(({ value }) => value > 0), fills };
  };
  return {
    best,
    whole: (profits, demand, ranges) => best(profits, demand, ranges).fills,
    every(profits, demand, floors, most, work) {
      const found: Fill[] = [];
      for (const [stock, each] of contents) {
        const floor = floors[stock] as number;
        if (floor === Number.POSITIVE_INFINITY) continue;
        const all = each.every(profits, demand, floor, most - found.length, work);
        if (all === undefined) return undefined;
        found.push(...all.filter((counts) => counts.some((n) => n > 0)).map((counts) => fill(stock, each, counts)));
      }
      return found;
    },
  };
}

/** The same worths, for a bound, where what has them can't be sawn as the plan is made. */
export const boundOnly = (filler: Filler): Filler => ({
  best: (profits, demand, ranges) => ({ worths: filler.best(profits, demand, ranges).worths, fills: [] }),
  whole: () => [],
  every: () => undefined,
});
