// Boards as wide as their mitred pieces -> their fillings: pieces turned and turned over so that slanted ends share a cut or nest.
import { type Fill, type Filler, fillOf, type Laid } from "./fill.ts";
import type { Job, Kind, Stock } from "./job.ts";
import type { Range } from "./pricing.ts";

/** How a piece may lie: how far its left and right end lean, upper edge less lower edge. */
type Lie = { readonly left: number; readonly right: number; readonly turned: boolean; readonly flipped: boolean };

/** Fillings looked at before this way of filling is given up. */
const mostFillings = 40_000;

/**
 * All largest fillings of these stocks, or undefined where they are too many to list. Pieces in order take their mid-line lengths and,
 * between two of them, half the difference of the leans that meet and a kerf that is longer the steeper it runs.
 */
export function mitreFiller(job: Job, stocks: readonly number[]): Filler | undefined {
  const kinds = job.kinds.flatMap(({ fits }, i) => (stocks.some((stock) => fits[stock]) ? [i] : []));
  const line = new MitreLine(job, kinds);
  const listed = new Map<number, Int32Array[]>();
  for (const stock of stocks) {
    const all = line.every((job.stocks[stock] as Stock).length);
    if (all === undefined) return undefined;
    listed.set(stock, all);
  }
  const order = job.orders[0] ?? "rip";
  const fill = (stock: number, counts: Int32Array): Fill => {
    const size = (job.stocks[stock] as Stock).width;
    return fillOf(stock, order, [{ size, pieces: line.laid(counts), fixed: true }]);
  };
  const within = (counts: Int32Array, demand: Int32Array): Int32Array =>
    counts.map((count, i) => Math.min(count, demand[kinds[i] as number] as number));
  const worthOf = (counts: Int32Array, profits: Float64Array, demand: Int32Array): number =>
    counts.reduce((sum, count, i) => {
      const kind = kinds[i] as number;
      return sum + Math.min(count, demand[kind] as number) * (profits[kind] as number);
    }, 0);
  const best = (profits: Float64Array, demand: Int32Array, ranges: readonly Range[]): ReturnType<Filler["best"]> => {
    const found: ReturnType<Filler["best"]> = { worths: [], fills: [] };
    for (const stock of stocks) {
      if ((ranges[stock]?.high ?? 0) < 1) continue;
      let [value, chosen]: [number, Int32Array | undefined] = [0, undefined];
      for (const counts of listed.get(stock) ?? []) {
        const worth = worthOf(counts, profits, demand);
        if (worth > value) [value, chosen] = [worth, counts];
      }
      if (chosen === undefined) continue;
      found.worths.push({ stock, value });
      found.fills.push(fill(stock, within(chosen, demand)));
    }
    return found;
  };
  return {
    best,
    whole: (profits, demand, ranges) => best(profits, demand, ranges).fills,
    every(profits, demand, floors, most) {
      const found: Fill[] = [];
      for (const stock of stocks) {
        for (const counts of listed.get(stock) ?? []) {
          if (worthOf(counts, profits, demand) >= (floors[stock] as number))
            found.push(fill(stock, within(counts, demand)));
          if (found.length > most) return undefined;
        }
      }
      return found;
    },
  };
}

/** Pieces of some kinds in line on a board as wide as they are. */
class MitreLine {
  readonly #kinds: readonly number[];
  readonly #pieces: readonly Kind[];
  readonly #kerf: number;
  /** Kinds that lie in the same ways cost the same between their neighbours: they are counted together. */
  readonly #ways: readonly (readonly Lie[])[];
  readonly #wayOf: readonly number[];
  readonly #middles: readonly number[];
  readonly #known = new Map<string, { readonly cost: number; readonly way: number; readonly lie: Lie }>();

  constructor(job: Job, kinds: readonly number[]) {
    this.#kinds = kinds;
    this.#pieces = kinds.map((kind) => job.kinds[kind] as Kind);
    this.#kerf = job.kerf;
    const lies = this.#pieces.map(liesOf);
    const names = lies.map((each) => each.map(({ left, right }) => `${left} ${right}`).join());
    const different = [...new Set(names)];
    this.#ways = different.map((name) => lies[names.indexOf(name)] as Lie[]);
    this.#wayOf = names.map((name) => different.indexOf(name));
    this.#middles = this.#pieces.map(middleOf);
  }

  /** Every filling of a board this long to which no piece can be added. */
  every(length: number): Int32Array[] | undefined {
    const found: Int32Array[] = [];
    const counts = new Int32Array(this.#kinds.length);
    let looked = 0;
    const fits = (): boolean => this.#length(counts) <= length + 1e-7;
    const visit = (from: number): boolean => {
      if (++looked > mostFillings) return false;
      let largest = true;
      for (let i = 0; i < counts.length; i++) {
        if ((counts[i] as number) >= (this.#pieces[i] as Kind).count) continue;
        counts[i] = (counts[i] as number) + 1;
        if (fits()) {
          largest = false;
          if (i >= from && !visit(i)) return false;
        }
        counts[i] = (counts[i] as number) - 1;
      }
      if (largest && counts.some((count) => count > 0)) found.push(counts.slice());
      return true;
    };
    return visit(0) ? found : undefined;
  }

  /** The pieces of a filling in their best order. */
  laid(counts: Int32Array): Laid[] {
    const left = counts.slice();
    const ways = this.#waysOf(counts);
    const laid: Laid[] = [];
    let before: Lie | undefined;
    let middle = 0;
    while (ways.some((count) => count > 0)) {
      const { way, lie } = this.#rest(ways, before);
      const i = left.findIndex((count, k) => count > 0 && this.#wayOf[k] === way);
      left[i] = (left[i] as number) - 1;
      ways[way] = (ways[way] as number) - 1;
      middle += this.#between(before, lie, (this.#pieces[i] as Kind).width);
      laid.push({
        kind: this.#kinds[i] as number,
        turned: lie.turned,
        flipped: lie.flipped,
        at: middle - lie.left / 2,
      });
      middle += this.#middles[i] as number;
      before = lie;
    }
    return laid;
  }

  #waysOf(counts: Int32Array): Int32Array {
    const ways = new Int32Array(this.#ways.length);
    counts.forEach((count, i) => {
      const way = this.#wayOf[i] as number;
      ways[way] = (ways[way] as number) + count;
    });
    return ways;
  }

  #length(counts: Int32Array): number {
    const middles = counts.reduce((sum, count, i) => sum + count * (this.#middles[i] as number), 0);
    return middles + this.#rest(this.#waysOf(counts), undefined).cost;
  }

  /** The least that joints and ends take behind a piece that lies so, and the next piece of that order. */
  #rest(ways: Int32Array, before: Lie | undefined): { readonly cost: number; readonly way: number; readonly lie: Lie } {
    const none: Lie = { left: 0, right: 0, turned: false, flipped: false };
    if (ways.every((count) => count === 0)) return { cost: Math.abs(before?.right ?? 0) / 2, way: -1, lie: none };
    const key = `${ways.join()}:${before?.right ?? "start"}`;
    const known = this.#known.get(key);
    if (known) return known;
    let best = { cost: Number.POSITIVE_INFINITY, way: -1, lie: none };
    const { width } = this.#pieces[0] as Kind;
    for (let way = 0; way < ways.length; way++) {
      if (ways[way] === 0) continue;
      ways[way] = (ways[way] as number) - 1;
      for (const lie of this.#ways[way] as readonly Lie[]) {
        const cost = this.#between(before, lie, width) + this.#rest(ways, lie).cost;
        if (cost < best.cost - 1e-9) best = { cost, way, lie };
      }
      ways[way] = (ways[way] as number) + 1;
    }
    this.#known.set(key, best);
    return best;
  }

  #between(before: Lie | undefined, { left }: Lie, width: number): number {
    if (before === undefined) return Math.abs(left) / 2;
    const steepest = Math.max(Math.abs(before.right), Math.abs(left));
    return Math.abs(before.right - left) / 2 + this.#kerf * Math.hypot(1, steepest / width);
  }
}

const leanOf = (degrees: number, width: number): number =>
  degrees === 0 ? 0 : Math.tan((degrees * Math.PI) / 180) * width;

/** Length along the middle: the square blank less half of what each end leans. */
export const middleOf = ({ length, width, ends }: Kind): number =>
  length - ends.reduce((sum, end) => sum + Math.abs(leanOf(end, width)), 0) / 2;

/** Half a turn changes the ends about, turning over mirrors both; a face that must show is not turned over. */
function liesOf({ ends, width, showFace }: Kind): Lie[] {
  const [left, right] = [-leanOf(ends[0], width) || 0, leanOf(ends[1], width)];
  const lies: Lie[] = [];
  for (const flipped of showFace ? [false] : [false, true]) {
    for (const turned of [false, true]) {
      const [a, b] = turned ? [right, left] : [left, right];
      const lie = { left: (flipped ? -a : a) || 0, right: (flipped ? -b : b) || 0, turned, flipped };
      if (!lies.some((each) => same(each.left, lie.left) && same(each.right, lie.right))) lies.push(lie);
    }
  }
  return lies;
}

const same = (a: number, b: number): boolean => Math.abs(a - b) < 1e-9;
