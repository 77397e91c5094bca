// Boards that give several strips -> their fillings, by way of strips: pieces along a strip, strips across a board, kerf both ways.
import type { Order } from "./cut-problem.ts";
import { type Fill, type Filler, fillOf, inLine, type Strip, type Worth } from "./fill.ts";
import type { Job, Kind, Stock } from "./job.ts";
import { everyLoad, LoadTable, type Things } from "./knapsack.ts";
import type { Range } from "./pricing.ts";

/** Strips of one sort: as long as `run`, as wide as `size`; for boards crosscut first the two are turned about. */
type Sort = { readonly row: number; readonly run: number; readonly size: number };

/**
 * One order of sawing for these stocks, which take the same kinds. Ripped first, a strip runs the board's length and holds pieces no
 * wider than itself; crosscut first, a "strip" runs the board's width and holds pieces no longer than itself. `firstRow`: the row of its
 * first sort of strip. The number of rows it takes is `rows`.
 */
export function stripFiller(
  job: Job,
  stocks: readonly number[],
  order: Order,
  firstRow: number,
): Filler & { readonly rows: number } {
  const { kerf } = job;
  const along = ({ length, width }: { length: number; width: number }): number => (order === "rip" ? length : width);
  const across = ({ length, width }: { length: number; width: number }): number => (order === "rip" ? width : length);
  const stockOf = (stock: number): Stock => job.stocks[stock] as Stock;
  const kindOf = (kind: number): Kind => job.kinds[kind] as Kind;
  const kinds = job.kinds
    .flatMap((kind, i) => (stocks.some((stock) => kind.fits[stock]) ? [i] : []))
    .sort((a, b) => across(kindOf(a)) - across(kindOf(b)) || a - b);
  const sizes = [...new Set(kinds.map((kind) => across(kindOf(kind))))];
  const runs = [...new Set(stocks.map((stock) => along(stockOf(stock))))].sort((a, b) => a - b);
  const sorts: Sort[] = runs.flatMap((run, r) =>
    sizes.map((size, s) => ({ row: firstRow + r * sizes.length + s, run, size })),
  );
  const sortOf = (run: number, s: number): Sort => sorts[runs.indexOf(run) * sizes.length + s] as Sort;
  /** How many of the kinds, narrowest first, go into a strip of the s-th size. */
  const upTo = sizes.map((size) => kinds.filter((kind) => across(kindOf(kind)) <= size).length);
  const kindSizes = kinds.map((kind) => along(kindOf(kind)) + kerf);
  const longest = Math.max(...runs) + kerf;

  const things = (profits: Float64Array, demand: Int32Array): Things => ({
    sizes: kindSizes,
    profits: Float64Array.from(kinds, (kind) => profits[kind] as number),
    most: Int32Array.from(kinds, (kind) => demand[kind] as number),
  });
  const stripOf = (size: number, counts: Int32Array): Strip => ({
    size,
    pieces: inLine(
      kinds.flatMap((kind, i) => Array.from({ length: counts[i] as number }, () => kind)).reverse(),
      (kind) => along(kindOf(kind)),
      kerf,
    ),
  });
  const stripFill = (sort: Sort, counts: Int32Array): Fill => {
    const { strips, kinds: held, counts: times } = fillOf(-1, order, [stripOf(sort.size, counts)]);
    return { stock: -1, order, strips, kinds: [...held, sort.row], counts: [...times, -1] };
  };
  const boardFill = (stock: number, counts: Int32Array): Fill => {
    const used = sizes.flatMap((_, s) => ((counts[s] as number) > 0 ? [s] : []));
    return {
      stock,
      order,
      strips: [],
      kinds: used.map((s) => sortOf(along(stockOf(stock)), s).row),
      counts: used.map((s) => counts[s] as number),
    };
  };
  const openOf = (ranges: readonly Range[]): number[] => stocks.filter((stock) => (ranges[stock]?.high ?? 0) > 0);
  const sizesWithKerf = sizes.map((size) => size + kerf);
  const anyNumber = sizes.map(() => 1e6);
  const stripThings = (values: readonly number[], most = anyNumber): Things => ({
    sizes: sizesWithKerf,
    profits: Float64Array.from(values),
    most: Int32Array.from(most),
  });

  return {
    rows: sorts.length,
    best(profits, demand, ranges) {
      const table = new LoadTable(things(profits, demand), longest);
      const worths: Worth[] = [];
      const fills: Fill[] = [];
      const wanted = new Set<Sort>();
      for (const run of runs) {
        const open = openOf(ranges).filter((stock) => along(stockOf(stock)) === run);
        if (open.length === 0) continue;
        const values = upTo.map((count) => table.value(count, run + kerf));
        const widest = Math.max(...open.map((stock) => across(stockOf(stock))));
        const boards = new LoadTable(stripThings(values), widest + kerf);
        for (const stock of open) {
          const room = across(stockOf(stock)) + kerf;
          const value = boards.value(sizes.length, room);
          if (value <= 0) continue;
          worths.push({ stock, value });
          const counts = boards.counts(sizes.length, room);
          fills.push(boardFill(stock, counts));
          sizes.forEach((_, s) => {
            if ((counts[s] as number) > 0) wanted.add(sortOf(run, s));
          });
        }
      }
      for (const sort of wanted) {
        const s = sizes.indexOf(sort.size);
        fills.push(stripFill(sort, table.counts(upTo[s] as number, sort.run + kerf)));
      }
      return { worths, fills };
    },
    whole(profits, demand, ranges) {
      return openOf(ranges).flatMap((stock) => {
        // Strip after strip, the most profit a width first, from what the strips before it leave.
        const want = demand.slice();
        const strips: Strip[] = [];
        let room = across(stockOf(stock)) + kerf;
        const run = along(stockOf(stock)) + kerf;
        for (;;) {
          const table = new LoadTable(things(profits, want), run);
          const values = upTo.map((count) => table.value(count, run));
          const boards = new LoadTable(stripThings(values), room);
          if (boards.value(sizes.length, room) <= 0) break;
          const chosen = boards.counts(sizes.length, room);
          const s = chosen.findLastIndex((count) => count > 0);
          const counts = table.counts(upTo[s] as number, run);
          strips.push(stripOf(sizes[s] as number, counts));
          kinds.forEach((kind, i) => {
            want[kind] = (want[kind] as number) - (counts[i] as number);
          });
          room -= sizesWithKerf[s] as number;
        }
        return strips.length > 0 ? [fillOf(stock, order, strips)] : [];
      });
    },
    every(profits, demand, floors, most, work) {
      const table = new LoadTable(things(profits, demand), longest);
      const found: Fill[] = [];
      /** How much less than the best of its sort a strip may be worth: the most that any board leaves room for. */
      const give = new Map<number, number>();
      for (const stock of stocks) {
        const run = along(stockOf(stock));
        const room = across(stockOf(stock)) + kerf;
        const values = upTo.map((count) => table.value(count, run + kerf));
        const boards = new LoadTable(stripThings(values), room);
        const spare = boards.value(sizes.length, room) - (floors[stock] as number);
        if (spare < 0) continue;
        const loads = everyLoad(
          stripThings(
            values,
            sizesWithKerf.map((size) => Math.floor(room / size)),
          ),
          room,
          floors[stock] as number,
          most - found.length,
          work,
        );
        if (loads === undefined) return undefined;
        for (const counts of loads) {
          if (!counts.some((count) => count > 0)) continue;
          found.push(boardFill(stock, counts));
          const value = counts.reduce((sum, count, s) => sum + count * (values[s] as number), 0);
          counts.forEach((count, s) => {
            const { row } = sortOf(run, s);
            if (count > 0) give.set(row, Math.max(give.get(row) ?? 0, value - (floors[stock] as number)));
          });
        }
      }
      for (const sort of sorts) {
        const spare = give.get(sort.row);
        if (spare === undefined) continue;
        const count = upTo[sizes.indexOf(sort.size)] as number;
        const all = things(profits, demand);
        const held: Things = { ...all, most: all.most.map((n, i) => (i < count ? n : 0)) };
        const floor = table.value(count, sort.run + kerf) - spare;
        const loads = everyLoad(held, sort.run + kerf, floor, most - found.length, work);
        if (loads === undefined) return undefined;
        for (const counts of loads) if (counts.some((n) => n > 0)) found.push(stripFill(sort, counts));
      }
      return found;
    },
  };
}
