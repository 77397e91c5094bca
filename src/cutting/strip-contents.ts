// A strip whose pieces can't just be added up -> what goes into it: all fillings where they are few, good ones and a bound where not.
import type { Laid } from "./fill.ts";
import { LoadTable, type Things, type Work } from "./knapsack.ts";

/** A kind as it lies in a strip: along it and across it. */
export type LineItem = {
  readonly kind: number;
  readonly long: number;
  readonly wide: number;
  readonly quarter: boolean;
};

/**
 * Pieces of some kinds in one strip. Counts stand side by side with `kinds`, which has a kind twice where it may lie both ways. Where a
 * filling fits, it fits with fewer pieces too.
 */
export type Line = {
  readonly kinds: readonly number[];
  fits(counts: Int32Array): boolean;
  /** The pieces of a filling that fits, each in its place. */
  laid(counts: Int32Array): Laid[];
};

/** What a strip may hold at some profits; `demand` limits every kind. */
export type StripContents = {
  readonly line: Line;
  /** No filling is worth more. */
  value(profits: Float64Array, demand: Int32Array): number;
  /** A filling that fits, worth that or as much as could be found. */
  counts(profits: Float64Array, demand: Int32Array): Int32Array;
  /** Every largest filling worth at least `floor`; undefined where that can't be told. */
  every(profits: Float64Array, demand: Int32Array, floor: number, most: number, work: Work): Int32Array[] | undefined;
};

/** Every filling to which nothing can be added, or undefined where more than `looks` have to be looked at. */
export function everyFitting(line: Line, most: Int32Array, looks: number): Int32Array[] | undefined {
  const found: Int32Array[] = [];
  const counts = new Int32Array(line.kinds.length);
  let looked = 0;
  const visit = (from: number): boolean => {
    let largest = true;
    for (let i = 0; i < counts.length; i++) {
      if ((counts[i] as number) >= (most[i] as number)) continue;
      if (++looked > looks) return false;
      counts[i] = (counts[i] as number) + 1;
      if (line.fits(counts)) {
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

/** Contents of which all largest fillings are listed. */
export function listedContents(line: Line, listed: readonly Int32Array[]): StripContents {
  const within = (counts: Int32Array, demand: Int32Array): Int32Array =>
    counts.map((count, i) => Math.min(count, demand[line.kinds[i] as number] as number));
  const worthOf = (counts: Int32Array, profits: Float64Array, demand: Int32Array): number => {
    let sum = 0;
    for (let i = 0; i < counts.length; i++) {
      const kind = line.kinds[i] as number;
      sum += Math.min(counts[i] as number, demand[kind] as number) * (profits[kind] as number);
    }
    return sum;
  };
  const best = (profits: Float64Array, demand: Int32Array): { readonly value: number; readonly counts: Int32Array } => {
    let value = 0;
    let counts: Int32Array = new Int32Array(line.kinds.length);
    for (const each of listed) {
      const worth = worthOf(each, profits, demand);
      if (worth > value) [value, counts] = [worth, within(each, demand)];
    }
    return { value, counts };
  };
  return {
    line,
    value: (profits, demand) => best(profits, demand).value,
    counts: (profits, demand) => best(profits, demand).counts,
    every(profits, demand, floor, most, work) {
      work.left -= listed.length;
      const good = listed.filter((counts) => worthOf(counts, profits, demand) >= floor);
      return good.length > most || work.left < 0 ? undefined : good.map((counts) => within(counts, demand));
    },
  };
}

/** Contents bounded by a plain load of `sizes` in `room`, in which every filling that fits has its place too. */
export function boundedContents(line: Line, sizes: readonly number[], room: number): StripContents {
  const things = (profits: Float64Array, demand: Int32Array): Things => ({
    sizes,
    profits: Float64Array.from(line.kinds, (kind) => profits[kind] as number),
    most: Int32Array.from(line.kinds, (kind) => demand[kind] as number),
  });
  return {
    line,
    value: (profits, demand) => new LoadTable(things(profits, demand), room).value(sizes.length, room),
    counts(profits, demand) {
      const all = things(profits, demand);
      const table = new LoadTable(all, room);
      const rate = (i: number): number => (all.profits[i] as number) / (sizes[i] as number);
      const byRate = sizes.map((_, i) => i).sort((a, b) => rate(b) - rate(a) || a - b);
      let value = 0;
      let best: Int32Array = new Int32Array(sizes.length);
      for (const part of [1, 0.97, 0.93, 0.85, 0]) {
        const counts = fitted(line, table.counts(sizes.length, Math.floor(room * part)), all.most, byRate);
        const worth = counts.reduce((sum, count, i) => sum + count * (all.profits[i] as number), 0);
        if (worth > value) [best, value] = [counts, worth];
      }
      return best;
    },
    every: () => undefined,
  };
}

/** Pieces taken out until it fits, the least profit a length first, then what still goes in. */
function fitted(line: Line, wanted: Int32Array, most: Int32Array, byRate: readonly number[]): Int32Array {
  const counts = wanted.slice();
  for (const i of [...byRate].reverse()) {
    while ((counts[i] as number) > 0 && !line.fits(counts)) counts[i] = (counts[i] as number) - 1;
  }
  for (const i of byRate) {
    while ((counts[i] as number) < (most[i] as number)) {
      counts[i] = (counts[i] as number) + 1;
      if (line.fits(counts)) continue;
      counts[i] = (counts[i] as number) - 1;
      break;
    }
  }
  return counts;
}
