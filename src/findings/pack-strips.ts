// Lengths that are needed -> strips they are crosscut from, and strips -> boards they are ripped from: first fit, longest first.
import { compareLengths, type Exact, type Length, minus, plus, zero } from "../units/length.ts";

/** Something that takes up `size` of a stock: a piece along a strip, or a strip across a board. */
export type Sized = { readonly size: Length };

/** What was laid one after the other into one stock, saw cuts between, and what is left behind the last of them. */
export type Filled<T extends Sized> = { readonly holds: readonly T[]; readonly left: Length };

/**
 * First fit, longest first: each thing goes into the first stock with room for it and the saw cut before it, else into a new one.
 * n things in one stock cost n - 1 saw cuts; the cut behind the last comes out of what is left.
 * Like sizes keep the order they came in. Errors: a thing larger than `room` is our bug, as the item stage refuses it.
 */
export function packFirstFit<T extends Sized>(things: readonly T[], room: Exact, kerf: Exact): Filled<T>[] {
  const stocks: { holds: T[]; left: Length }[] = [];
  for (const thing of [...things].sort((a, b) => compareLengths(b.size, a.size))) {
    if (compareLengths(thing.size, room) > 0)
      throw new Error(`no stock is large enough for ${thing.size.valueOf()} in`);
    const open = stocks.find((stock) => compareLengths(plus(thing.size, kerf), stock.left) <= 0);
    if (open) {
      open.holds.push(thing);
      open.left = minus(minus(open.left, kerf), thing.size);
    } else {
      stocks.push({ holds: [thing], left: minus(room, thing.size) });
    }
  }
  return stocks;
}

/** What a stock must at least measure to hold these, saw cuts between. */
export const lengthTaken = (things: readonly Sized[], kerf: Exact): Length =>
  things.reduce<Length>((sum, thing, i) => plus(plus(sum, thing.size), i === 0 ? zero : kerf), zero);
