// Boards that give several strips -> their fillings, by way of strips: pieces along a strip, strips across a board, kerf both ways.
import type { Order } from "./cut-problem.ts";
import { type Fill, type Filler, fillOf, type Laid, type Strip, type Worth } from "./fill.ts";
import type { Job, Stock } from "./job.ts";
import { everyLoad, LoadTable, type Things } from "./knapsack.ts";
import type { Range } from "./pricing.ts";
import type { StripContents } from "./strip-contents.ts";

/** Strips of one sort: as long as `run`, as wide as `size`; for boards crosscut first the two are turned about. */
type Sort = { readonly row: number; readonly run: number; readonly size: number; readonly special?: StripContents };

/** A kind as it lies in a strip. */
type Item = { readonly kind: number; readonly along: number; readonly across: number; readonly quarter: boolean };

/** Of all sorts at some profits: the most that a strip can be worth, and what goes into it then. */
type Contents = { value(sort: Sort): number; counts(sort: Sort): Int32Array };

/**
 * One order of sawing for these stocks, which take the same kinds. Ripped first, a strip runs the board's length and holds pieces no
 * wider than itself; crosscut first, a "strip" runs the board's width and holds pieces no longer than itself. `firstRow`: the row of its
 * first sort of strip. The number of rows it takes is `rows`. `specialFor`: contents of a strip so long and wide where pieces can't just
 * be added up.
 */
export function stripFiller(
  job: Job,
  stocks: readonly number[],
  order: Order,
  firstRow: number,
  specialFor: (run: number, size: number) => StripContents | undefined = () => undefined,
): Filler & { readonly rows: number } {
  const { kerf } = job;
  const along = ({ length, width }: { length: number; width: number }): number => (order === "rip" ? length : width);
  const across = ({ length, width }: { length: number; width: number }): number => (order === "rip" ? width : length);
  const stockOf = (stock: number): Stock => job.stocks[stock] as Stock;
  const [longest, widest] = [along, across].map((side) => Math.max(...stocks.map((stock) => side(stockOf(stock)))));
  const items: Item[] = job.kinds
    .flatMap((each, kind) => {
      if (!stocks.some((stock) => each.fits[stock])) return [];
      const lies: Item[] = [{ kind, along: along(each), across: across(each), quarter: false }];
      if (each.turns) lies.push({ kind, along: across(each), across: along(each), quarter: true });
      return lies.filter((lie) => lie.along <= (longest as number) && lie.across <= (widest as number));
    })
    .sort((a, b) => a.across - b.across || a.kind - b.kind || Number(a.quarter) - Number(b.quarter));
  const sizes = [...new Set(items.map((item) => item.across))];
  const runs = [...new Set(stocks.map((stock) => along(stockOf(stock))))].sort((a, b) => a - b);
  const sorts: Sort[] = runs.flatMap((run, r) =>
    sizes.map((size, s) => {
      const special = specialFor(run, size);
      return { row: firstRow + r * sizes.length + s, run, size, ...(special ? { special } : {}) };
    }),
  );
  const sortsOf = (run: number): Sort[] => sorts.filter((sort) => sort.run === run);
  /** How many of the items, narrowest first, go into a strip of a size. */
  const upTo = new Map(sizes.map((size) => [size, items.filter((item) => item.across <= size).length]));
  const itemSizes = items.map((item) => item.along + kerf);

  const things = (profits: Float64Array, demand: Int32Array): Things => ({
    sizes: itemSizes,
    profits: Float64Array.from(items, ({ kind }) => profits[kind] as number),
    most: Int32Array.from(items, ({ kind }) => demand[kind] as number),
  });
  const contentsAt = (profits: Float64Array, demand: Int32Array, run = longest as number): Contents => {
    let table: LoadTable | undefined;
    const plain = (): LoadTable => {
      table ??= new LoadTable(things(profits, demand), run + kerf);
      return table;
    };
    return {
      value: (sort) =>
        sort.special?.value(profits, demand) ?? plain().value(upTo.get(sort.size) as number, sort.run + kerf),
      counts: (sort) =>
        sort.special?.counts(profits, demand) ?? plain().counts(upTo.get(sort.size) as number, sort.run + kerf),
    };
  };
  /** A kind that lies both ways may come twice too often: what is beyond the demand stays out. */
  const stripOf = ({ size, special }: Sort, counts: Int32Array, demand: Int32Array): Strip => {
    if (special) return { size, pieces: special.line.laid(counts), fixed: true };
    const left = demand.slice();
    const pieces: Laid[] = [];
    let at = 0;
    for (let i = counts.length - 1; i >= 0; i--) {
      const item = items[i] as Item;
      for (let n = counts[i] as number; n > 0 && (left[item.kind] as number) > 0; n--) {
        left[item.kind] = (left[item.kind] as number) - 1;
        const { kind, quarter } = item;
        pieces.push({ kind, turned: false, flipped: false, ...(quarter ? { quarter } : {}), at });
        at += item.along + kerf;
      }
    }
    return { size, pieces };
  };
  const stripFill = (sort: Sort, counts: Int32Array, demand: Int32Array): Fill => {
    const { strips, kinds: held, counts: times } = fillOf(-1, order, [stripOf(sort, counts, demand)]);
    return { stock: -1, order, strips, kinds: [...held, sort.row], counts: [...times, -1] };
  };
  const boardFill = (stock: number, counts: Int32Array): Fill => {
    const own = sortsOf(along(stockOf(stock))).map(({ row }, s) => ({ row, count: counts[s] as number }));
    const used = own.filter(({ count }) => count > 0);
    return { stock, order, strips: [], kinds: used.map(({ row }) => row), counts: used.map(({ count }) => count) };
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
      const contents = contentsAt(profits, demand);
      const worths: Worth[] = [];
      const fills: Fill[] = [];
      const wanted = new Set<Sort>();
      for (const run of runs) {
        const open = openOf(ranges).filter((stock) => along(stockOf(stock)) === run);
        if (open.length === 0) continue;
        const own = sortsOf(run);
        const most = Math.max(...open.map((stock) => across(stockOf(stock))));
        const boards = new LoadTable(stripThings(own.map(contents.value)), most + kerf);
        for (const stock of open) {
          const room = across(stockOf(stock)) + kerf;
          const value = boards.value(sizes.length, room);
          if (value <= 0) continue;
          worths.push({ stock, value });
          const counts = boards.counts(sizes.length, room);
          fills.push(boardFill(stock, counts));
          own.forEach((sort, s) => {
            if ((counts[s] as number) > 0) wanted.add(sort);
          });
        }
      }
      for (const sort of wanted) {
        const counts = contents.counts(sort);
        if (counts.some((n) => n > 0)) fills.push(stripFill(sort, counts, demand));
      }
      return { worths, fills };
    },
    whole(profits, demand, ranges) {
      return openOf(ranges).flatMap((stock) => {
        // Strip after strip, the most profit a width first, from what the strips before it leave.
        const want = demand.slice();
        const strips: Strip[] = [];
        let room = across(stockOf(stock)) + kerf;
        const run = along(stockOf(stock));
        const own = sortsOf(run);
        for (;;) {
          const contents = contentsAt(profits, want, run);
          const boards = new LoadTable(stripThings(own.map(contents.value)), room);
          if (boards.value(sizes.length, room) <= 0) break;
          const s = boards.counts(sizes.length, room).findLastIndex((count) => count > 0);
          const sort = own[s] as Sort;
          const strip = stripOf(sort, contents.counts(sort), want);
          if (strip.pieces.length === 0) break;
          strips.push(strip);
          for (const { kind } of strip.pieces) want[kind] = (want[kind] as number) - 1;
          room -= sizesWithKerf[s] as number;
        }
        return strips.length > 0 ? [fillOf(stock, order, strips)] : [];
      });
    },
    every(profits, demand, floors, most, work) {
      const contents = contentsAt(profits, demand);
      const found: Fill[] = [];
      /** How much less than the best of its sort a strip may be worth: the most that any board leaves room for. */
      const give = new Map<Sort, number>();
      for (const stock of stocks) {
        const floor = floors[stock] as number;
        if (floor === Number.POSITIVE_INFINITY) continue;
        const room = across(stockOf(stock)) + kerf;
        const own = sortsOf(along(stockOf(stock)));
        const values = own.map(contents.value);
        if (new LoadTable(stripThings(values), room).value(sizes.length, room) < floor) continue;
        const fitting = sizesWithKerf.map((size) => Math.floor(room / size));
        const loads = everyLoad(stripThings(values, fitting), room, floor, most - found.length, work);
        if (loads === undefined) return undefined;
        for (const counts of loads) {
          if (!counts.some((count) => count > 0)) continue;
          found.push(boardFill(stock, counts));
          const value = counts.reduce((sum, count, s) => sum + count * (values[s] as number), 0);
          own.forEach((sort, s) => {
            if ((counts[s] as number) > 0) give.set(sort, Math.max(give.get(sort) ?? 0, value - floor));
          });
        }
      }
      for (const [sort, spare] of [...give].sort(([a], [b]) => a.row - b.row)) {
        const count = upTo.get(sort.size) as number;
        const all = things(profits, demand);
        const held: Things = { ...all, most: all.most.map((n, i) => (i < count ? n : 0)) };
        const floor = contents.value(sort) - spare;
        const left = most - found.length;
        const loads = sort.special
          ? sort.special.every(profits, demand, floor, left, work)
          : everyLoad(held, sort.run + kerf, floor, left, work);
        if (loads === undefined) return undefined;
        for (const counts of loads) if (counts.some((n) => n > 0)) found.push(stripFill(sort, counts, demand));
      }
      return found;
    },
  };
}
