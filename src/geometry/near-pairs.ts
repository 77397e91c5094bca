// Many boxed things -> the pairs whose boxes come within reach of each other.
import type { Box } from "./solid.ts";

/** Pairs of places in the list, lower place first, in order; boxes that just touch are within a reach of 0. */
export function nearPairs(things: readonly { readonly box: Box }[], reach: number): [number, number][] {
  const fromLeft = things.map((thing, i) => ({ i, box: thing.box })).sort((a, b) => a.box.min[0] - b.box.min[0]);
  const pairs: [number, number][] = [];
  let open: typeof fromLeft = [];
  for (const thing of fromLeft) {
    open = open.filter((other) => other.box.max[0] + reach >= thing.box.min[0]);
    for (const other of open) {
      if (withinReach(thing.box, other.box, reach))
        pairs.push([Math.min(thing.i, other.i), Math.max(thing.i, other.i)]);
    }
    open.push(thing);
  }
  return pairs.sort((a, b) => a[0] - b[0] || a[1] - b[1]);
}

const withinReach = (a: Box, b: Box, reach: number): boolean =>
  ([0, 1, 2] as const).every((k) => a.min[k] <= b.max[k] + reach && b.min[k] <= a.max[k] + reach);
