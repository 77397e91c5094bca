// Batches that were made, against what the shop's minutes say of them -> how this recipe's own minutes differ, and hours set right by them.
import type { Item } from "../item/item.ts";
import { type Exact, exact, zero } from "../units/length.ts";
import type { Work } from "../yard/shop-rates.ts";
import type { Hours, WorkLine } from "./hours.ts";

/** How many times the shop's minutes this recipe takes: in `n` batches together, and the least and most of one of them. */
export type OwnShare = NonNullable<WorkLine["own"]>;

/** By kind of work; `all` is of batches of which only the whole was written down. */
export type OwnShares = ReadonlyMap<Work | "fetch" | "all", OwnShare>;

/** A batch of so many, by the shop's minutes. */
type Estimate = (units: number) => Hours;

/**
 * Minutes that were taken over minutes that were estimated, for each kind of work that was written down; what the estimate has no work
 * for is passed over. Coats count only from batches of the same finish, and so does a whole.
 */
export function ownShares({ record = [] }: Item, estimate: Estimate): OwnShares {
  const found = new Map<Work | "fetch" | "all", { taken: Exact; expected: Exact }[]>();
  for (const { units, minutes, sameFinish } of record) {
    const hours = estimate(units);
    for (const [work, taken] of Object.entries(minutes) as [Work | "fetch" | "all", Exact][]) {
      const expected = expectedOf(hours, work);
      if (expected.equals(0) || (!sameFinish && (work === "coat" || work === "all"))) continue;
      found.set(work, [...(found.get(work) ?? []), { taken, expected }]);
    }
  }
  return new Map([...found].map(([work, all]) => [work, shareOf(all)]));
}

function expectedOf({ minutes, fetch, lines }: Hours, work: Work | "fetch" | "all"): Exact {
  if (work === "all") return minutes;
  return work === "fetch" ? fetch : (lines.find((line) => line.work === work)?.minutes ?? zero);
}

function shareOf(all: readonly { readonly taken: Exact; readonly expected: Exact }[]): OwnShare {
  const shares = all.map(({ taken, expected }) => taken.div(expected)).sort((a, b) => a.compare(b));
  const sum = (of: (one: (typeof all)[number]) => Exact) => all.reduce((sofar, one) => sofar.add(of(one)), zero);
  return {
    n: all.length,
    least: shares[0] ?? zero,
    most: shares.at(-1) ?? zero,
    share: sum(({ taken }) => taken).div(sum(({ expected }) => expected)),
  };
}

/** The hours with every line by its own share, else by that of the whole; minutes stay exact. */
export function withOwnShares(hours: Hours, shares: OwnShares): Hours {
  if (shares.size === 0) return hours;
  const of = (work: Work | "fetch") => shares.get(work) ?? shares.get("all");
  const by = (minutes: Exact, own: OwnShare | undefined) => minutes.mul(own?.share ?? exact(1));
  const fetch = by(hours.fetch, of("fetch"));
  const lines = hours.lines.map((line) => {
    const own = of(line.work);
    return own ? { ...line, own, minutes: by(line.minutes, own) } : line;
  });
  const minutes = lines.reduce((sum, line) => sum.add(line.minutes), fetch);
  return { ...hours, fetch, lines, minutes, perUnit: minutes.div(hours.units) };
}
