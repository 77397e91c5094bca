// Things with sizes, whole profits and numbers -> the most valuable load of a room; and every load worth enough.

/** What may be loaded: the n-th thing's size (above 0), profit (whole, 0 or more) and how many there are of it. */
export type Things = {
  readonly sizes: readonly number[] | Int32Array;
  readonly profits: Float64Array;
  readonly most: Int32Array;
};

/** Steps of listing that may still be taken; every step takes one off. */
export type Work = { left: number };

export type Load = { readonly value: number; readonly counts: Int32Array };

/** Above this many table cells a search takes the table's place. */
const tableCells = 600_000;
const searchSteps = 300_000;

/** The best load of each room, in the order of the rooms. Exact: a search that grows too long is replaced by the table. */
export function bestLoads(things: Things, rooms: readonly number[]): Load[] {
  const largest = Math.max(...rooms, 0);
  const useful = usefulThings(things, largest);
  const parts = partsOf(things, useful, largest);
  if (parts.length * (largest + 1) > tableCells) {
    const found = rooms.map((room) => searchLoad(things, useful, room));
    if (found.every((load) => load !== undefined)) return found;
  }
  return tableLoads(things, parts, rooms, largest);
}

/** By one row of best values, kept in place, and a bit for each part and room that tells whether the part is in. */
function tableLoads(things: Things, parts: readonly Part[], rooms: readonly number[], largest: number): Load[] {
  const best = new Float64Array(largest + 1);
  const bytes = (largest >> 3) + 1;
  const taken = new Uint8Array(parts.length * bytes);
  parts.forEach(({ size, profit }, i) => {
    const row = i * bytes;
    for (let room = largest; room >= size; room--) {
      const value = (best[room - size] as number) + profit;
      if (value <= (best[room] as number)) continue;
      best[room] = value;
      const at = row + (room >> 3);
      taken[at] = (taken[at] as number) | (1 << (room & 7));
    }
  });
  return rooms.map((room) => {
    const counts = new Int32Array(things.sizes.length);
    let left = room;
    for (let i = parts.length - 1; i >= 0; i--) {
      if ((((taken[i * bytes + (left >> 3)] as number) >> (left & 7)) & 1) === 0) continue;
      const { thing, times, size } = parts[i] as Part;
      counts[thing] = (counts[thing] as number) + times;
      left -= size;
    }
    return { value: best[room] as number, counts };
  });
}

const usefulThings = ({ sizes, profits, most }: Things, largest: number): number[] => {
  const useful: number[] = [];
  for (let i = 0; i < sizes.length; i++) {
    if ((profits[i] as number) > 0 && (most[i] as number) > 0 && (sizes[i] as number) <= largest) useful.push(i);
  }
  return useful;
};

type Part = { readonly thing: number; readonly times: number; readonly size: number; readonly profit: number };

/** n of a thing as bundles of 1, 2, 4, … and a rest: any number up to n is a sum of some of them. */
function partsOf({ sizes, profits, most }: Things, useful: readonly number[], largest: number): Part[] {
  const parts: Part[] = [];
  for (const thing of useful) {
    const [size, profit] = [sizes[thing] as number, profits[thing] as number];
    let left = Math.min(most[thing] as number, Math.floor(largest / size));
    for (let times = 1; left > 0; times *= 2) {
      const now = Math.min(times, left);
      parts.push({ thing, times: now, size: size * now, profit: profit * now });
      left -= now;
    }
  }
  return parts;
}

/** The best loads of every room up to the largest, of the first things and of more of them: exact. */
export class LoadTable {
  readonly #parts: readonly Part[];
  readonly #width: number;
  readonly #best: Float64Array;
  readonly #rowsOf: Int32Array;
  readonly #things: number;

  constructor(things: Things, largest: number) {
    const parts: Part[] = [];
    this.#things = things.sizes.length;
    this.#rowsOf = new Int32Array(this.#things + 1);
    for (let thing = 0; thing < this.#things; thing++) {
      if ((things.profits[thing] as number) > 0) parts.push(...partsOf(things, [thing], largest));
      this.#rowsOf[thing + 1] = parts.length;
    }
    const width = largest + 1;
    const best = new Float64Array((parts.length + 1) * width);
    parts.forEach(({ size, profit }, i) => {
      const above = i * width;
      const row = above + width;
      best.copyWithin(row, above, above + width);
      for (let room = size; room < width; room++) {
        const value = (best[above + room - size] as number) + profit;
        if (value > (best[row + room] as number)) best[row + room] = value;
      }
    });
    this.#parts = parts;
    this.#width = width;
    this.#best = best;
  }

  /** The most that the first so many things are worth in a room. */
  value(things: number, room: number): number {
    return room < 0 ? 0 : (this.#best[(this.#rowsOf[things] as number) * this.#width + room] as number);
  }

  /** How many of each: a load of that value. */
  counts(things: number, room: number): Int32Array {
    const counts = new Int32Array(this.#things);
    let left = room;
    for (let row = this.#rowsOf[things] as number; row > 0 && left >= 0; row--) {
      if (this.#best[row * this.#width + left] === this.#best[(row - 1) * this.#width + left]) continue;
      const { thing, times, size } = this.#parts[row - 1] as Part;
      counts[thing] = (counts[thing] as number) + times;
      left -= size;
    }
    return counts;
  }
}

/** Depth first, most profit a length first, with the bound of filling the rest at the best rate left. */
function searchLoad({ sizes, profits, most }: Things, useful: readonly number[], room: number): Load | undefined {
  const rate = (i: number): number => (profits[i] as number) / (sizes[i] as number);
  const order = useful.filter((i) => (sizes[i] as number) <= room).sort((a, b) => rate(b) - rate(a) || a - b);
  const counts = new Int32Array(sizes.length);
  let bestCounts = new Int32Array(sizes.length);
  let best = 0;
  let steps = 0;
  const smallest = new Float64Array(order.length + 1).fill(Number.POSITIVE_INFINITY);
  for (let k = order.length - 1; k >= 0; k--) {
    smallest[k] = Math.min(smallest[k + 1] as number, sizes[order[k] as number] as number);
  }
  const visit = (from: number, left: number, value: number): boolean => {
    if (++steps > searchSteps) return false;
    if (value > best) {
      best = value;
      bestCounts = counts.slice();
    }
    for (let k = from; k < order.length && left >= (smallest[k] as number); k++) {
      const thing = order[k] as number;
      if (value + Math.floor(left * rate(thing) + 1e-6) <= best) return true;
      const size = sizes[thing] as number;
      const fits = Math.min(most[thing] as number, Math.floor(left / size));
      for (let n = fits; n >= 1; n--) {
        counts[thing] = n;
        if (!visit(k + 1, left - n * size, value + n * (profits[thing] as number))) return false;
      }
      counts[thing] = 0;
    }
    return true;
  };
  return visit(0, room, 0) ? { value: best, counts: bestCounts } : undefined;
}

/**
 * Every load of this room worth at least `floor` to which nothing can be added, each once; undefined where there are more than
 * `limit` or `work` runs out.
 */
export function everyLoad(
  things: Things,
  room: number,
  floor: number,
  limit: number,
  work: Work,
): Int32Array[] | undefined {
  const { sizes, profits, most } = things;
  const order: number[] = [];
  for (let i = 0; i < sizes.length; i++) if ((most[i] as number) > 0 && (sizes[i] as number) <= room) order.push(i);
  order.sort((a, b) => (sizes[b] as number) - (sizes[a] as number) || a - b);
  const hopes = hopesOf(things, order, room);
  const found: Int32Array[] = [];
  const counts = new Int32Array(sizes.length);
  const visit = (k: number, left: number, value: number): boolean => {
    if (--work.left < 0) return false;
    if (value + hopes(k, left) < floor) return true;
    if (k === order.length) {
      const more = order.some((i) => (sizes[i] as number) <= left && (counts[i] as number) < (most[i] as number));
      if (!more) found.push(counts.slice());
      return found.length <= limit;
    }
    const thing = order[k] as number;
    const size = sizes[thing] as number;
    const fits = Math.min(most[thing] as number, Math.floor(left / size));
    for (let n = fits; n >= 0; n--) {
      counts[thing] = n;
      if (!visit(k + 1, left - n * size, value + n * (profits[thing] as number))) return false;
    }
    counts[thing] = 0;
    return true;
  };
  return visit(0, room, 0) ? found : undefined;
}

/** What the things from the k-th on can at most be worth in a room: a table where it is small enough, the best rate otherwise. */
function hopesOf(
  { sizes, profits, most }: Things,
  order: readonly number[],
  room: number,
): (k: number, left: number) => number {
  const width = room + 1;
  if ((order.length + 1) * width > 8_000_000) {
    const rates = new Float64Array(order.length + 1);
    for (let k = order.length - 1; k >= 0; k--) {
      const thing = order[k] as number;
      rates[k] = Math.max(rates[k + 1] as number, (profits[thing] as number) / (sizes[thing] as number));
    }
    return (k, left) => left * (rates[k] as number) + 1;
  }
  const table = new Float64Array((order.length + 1) * width);
  for (let k = order.length - 1; k >= 0; k--) {
    const row = table.subarray(k * width, (k + 1) * width);
    row.set(table.subarray((k + 1) * width, (k + 2) * width));
    const thing = order[k] as number;
    for (const part of partsOf({ sizes, profits, most }, [thing], room)) {
      for (let at = room; at >= part.size; at--) {
        const value = (row[at - part.size] as number) + part.profit;
        if (value > (row[at] as number)) row[at] = value;
      }
    }
  }
  return (k, left) => table[k * width + left] as number;
}
