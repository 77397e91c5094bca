// Prices seen elsewhere -> the middle one of them, and how old each was on the day of the newest price of the yard.
import type { Item } from "../item/item.ts";
import { daysBetween } from "../units/day.ts";
import type { Exact } from "../units/length.ts";

export type Compared = {
  readonly rows: readonly (NonNullable<Item["comparables"]>[number] & {
    /** Days before `against`. */
    readonly age: number;
  })[];
  /** Of an even number half way between the middle two. */
  readonly median: Exact;
  readonly oldest: string;
  readonly newest: string;
  /** The day that ages are counted to. */
  readonly against: string;
};

/** Undefined where there are none. No clock is asked: age counts to `against`, or to the newest of the prices seen where that is later. */
export function compare({ comparables = [] }: Item, against: string): Compared | undefined {
  const days = comparables.map(({ seen }) => seen).sort();
  const [oldest, newest] = [days[0], days.at(-1)];
  if (oldest === undefined || newest === undefined) return undefined;
  const to = newest > against ? newest : against;
  return {
    rows: comparables.map((one) => ({ ...one, age: daysBetween(one.seen, to) })),
    median: middle(comparables.map(({ price }) => price)),
    ...{ oldest, newest, against: to },
  };
}

function middle(prices: readonly Exact[]): Exact {
  const sorted = [...prices].sort((a, b) => a.compare(b));
  const [low, high] = [sorted[Math.floor((sorted.length - 1) / 2)], sorted[Math.floor(sorted.length / 2)]];
  if (!low || !high) throw new Error("no price to take the middle of");
  return low.add(high).div(2);
}
