// Boards that give one strip only -> their fillings: pieces one after the other along them, kerf between.
import type { Order } from "./cut-problem.ts";
import { type Fill, type Filler, fillOf, inLine, type Worth } from "./fill.ts";
import type { Job, Kind, Stock } from "./job.ts";
import { bestLoads, everyLoad, type Things } from "./knapsack.ts";
import type { Range } from "./pricing.ts";

/** These stocks take the same kinds. n pieces take n lengths and n - 1 kerfs: the same as n of length + kerf in a board longer by a kerf. */
export function lineFiller(job: Job, stocks: readonly number[]): Filler {
  const roomOf = (stock: number): number => (job.stocks[stock] as Stock).length + job.kerf;
  const kinds = job.kinds.flatMap((kind, i) => (stocks.some((stock) => kind.fits[stock]) ? [i] : []));
  const sizes = kinds.map((i) => (job.kinds[i] as Kind).length + job.kerf);
  const order: Order = job.orders.includes("crosscut") ? "crosscut" : "rip";
  const things = (profits: Float64Array, demand: Int32Array): Things => ({
    sizes,
    profits: Float64Array.from(kinds, (kind) => profits[kind] as number),
    most: Int32Array.from(kinds, (kind) => demand[kind] as number),
  });
  const fill = (stock: number, counts: Int32Array): Fill =>
    lineOf(
      job,
      stock,
      order,
      kinds.flatMap((kind, i) => Array.from({ length: counts[i] as number }, () => kind)),
    );
  const loadsOf = (
    profits: Float64Array,
    demand: Int32Array,
    ranges: readonly Range[],
  ): { worths: Worth[]; fills: Fill[] } => {
    const open = stocks.filter((stock) => (ranges[stock]?.high ?? 0) > 0);
    const loads = bestLoads(things(profits, demand), open.map(roomOf)).map((load, i) => ({
      ...load,
      stock: open[i] as number,
    }));
    const good = loads.filter(({ value }) => value > 0);
    return {
      worths: good.map(({ stock, value }) => ({ stock, value })),
      fills: good.map(({ stock, counts }) => fill(stock, counts)),
    };
  };
  return {
    best: loadsOf,
    whole: (profits, demand, ranges) => loadsOf(profits, demand, ranges).fills,
    every(profits, demand, floors, most, work) {
      const found: Fill[] = [];
      for (const stock of stocks) {
        const floor = floors[stock] as number;
        if (floor === Number.POSITIVE_INFINITY) continue;
        const loads = everyLoad(things(profits, demand), roomOf(stock), floor, most - found.length, work);
        if (loads === undefined) return undefined;
        for (const counts of loads) if (counts.some((n) => n > 0)) found.push(fill(stock, counts));
      }
      return found;
    },
  };
}

/** These pieces along one board. Ripping first, the strip is as wide as the widest; crosscutting first, each piece is a length of its own. */
function lineOf(job: Job, stock: number, order: Order, list: readonly number[]): Fill {
  const kindOf = (kind: number): Kind => job.kinds[kind] as Kind;
  if (order === "rip") {
    const size = Math.max(...list.map((kind) => kindOf(kind).width));
    return fillOf(stock, order, [{ size, pieces: inLine(list, (kind) => kindOf(kind).length, job.kerf) }]);
  }
  return fillOf(
    stock,
    order,
    list.map((kind) => ({ size: kindOf(kind).length, pieces: inLine([kind], () => 0, 0) })),
  );
}
