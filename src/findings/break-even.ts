// Hours, and what a sale leaves over its costs -> how many must be sold until what is paid once has come back.
import { type Exact, zero } from "../units/length.ts";
import type { Hours } from "./hours.ts";
import { soldToPay } from "./price.ts";

/** Minutes of the batch that don't grow with it: fetching and setting up, as this recipe's own batches took them. */
export const setUpMinutes = ({ fetch, lines }: Hours): Exact =>
  lines.reduce((sum, { rate, setUps, own }) => {
    const minutes = rate.setUp.mul(setUps);
    return sum.add(own ? minutes.mul(own.share) : minutes);
  }, fetch);

/** Dollars that setting up for the batch costs, overhead with it. */
export const setUpCost = (hours: Hours, wage: Exact, overhead: Exact): Exact =>
  setUpMinutes(hours).div(60).mul(wage).mul(overhead.add(1));

export type BreakEven = {
  /** Sold until the setting up is paid; undefined where a sale leaves nothing towards it. */
  readonly setUp?: number;
  /** Sold until a day there is paid; undefined where it costs nothing or a sale leaves nothing. */
  readonly day?: number;
};

/**
 * `spare` is what a sale leaves over all its costs, its share of the setting up among them. A day is paid out of that alone; the
 * setting up out of that and the share.
 */
export function breakEven(spare: Exact, setUp: Exact, units: number, day: Exact = zero): BreakEven {
  const forSetUp = soldToPay(setUp, spare.add(setUp.div(units)));
  const forDay = day.compare(0) > 0 ? soldToPay(day, spare) : undefined;
  return { ...(forSetUp === undefined ? {} : { setUp: forSetUp }), ...(forDay === undefined ? {} : { day: forDay }) };
}
