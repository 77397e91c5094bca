// From what is said along one axis to where a thing stands: any two of near side, far side, middle and size.

import type { Place } from "../../problems/place.ts";
import { compareLengths, exact, type Length, minus, over, plus } from "../../units/length.ts";

/** From the near (left, front, bottom) to the far side along one axis, in inches. */
export type Interval = { readonly lo: Length; readonly hi: Length };

/** One thing said: the near side, the far side, the middle or the size, in whose words, and where. */
export type Said = {
  readonly what: "lo" | "hi" | "mid" | "size";
  readonly value: Length;
  readonly words: string;
  readonly at: Place;
};

export type Settled =
  | { readonly kind: "settled"; readonly interval: Interval }
  | { readonly kind: "open"; readonly said: readonly Said[] }
  /** `a` and `b` were said; `b` would have to be `due` for both to hold. */
  | { readonly kind: "clash"; readonly a: Said; readonly b: Said; readonly due: Length }
  | { readonly kind: "turned"; readonly interval: Interval; readonly said: readonly Said[] };

const two = exact(2);

export const sizeOf = (i: Interval): Length => minus(i.hi, i.lo);
export const halfOf = (length: Length): Length => over(length, two);
export const middleOf = (i: Interval): Length => halfOf(plus(i.lo, i.hi));

const measured = (i: Interval, what: Said["what"]): Length =>
  what === "lo" ? i.lo : what === "hi" ? i.hi : what === "mid" ? middleOf(i) : sizeOf(i);

/** Solves for the interval from two things said of different sorts. */
function solve(a: Said, b: Said): Interval {
  const [first, second] = order.indexOf(a.what) <= order.indexOf(b.what) ? [a, b] : [b, a];
  const v = first.value;
  const w = second.value;
  switch (`${first.what} ${second.what}`) {
    case "lo hi":
      return { lo: v, hi: w };
    case "lo mid":
      return { lo: v, hi: minus(plus(w, w), v) };
    case "lo size":
      return { lo: v, hi: plus(v, w) };
    case "hi mid":
      return { lo: minus(plus(w, w), v), hi: v };
    case "hi size":
      return { lo: minus(v, w), hi: v };
    case "mid size":
      return { lo: minus(v, halfOf(w)), hi: plus(v, halfOf(w)) };
    default:
      throw new Error(`two things said alike: ${first.what} and ${second.what}`);
  }
}
const order: readonly Said["what"][] = ["lo", "hi", "mid", "size"];

/**
 * Settles an interval from all that is said of it. What is said beyond two things must agree (exactly, or within 1e-9 in
 * once a double is involved). `turned` means that the far side would lie before the near one.
 */
export function settle(said: readonly Said[]): Settled {
  const first = said[0];
  const second = said.find((s) => s.what !== first?.what);
  if (!first || !second) {
    const same = said.find((s) => first && compareLengths(s.value, first.value) !== 0);
    return first && same ? { kind: "clash", a: first, b: same, due: first.value } : { kind: "open", said };
  }
  const interval = solve(first, second);
  for (const s of said) {
    const due = measured(interval, s.what);
    if (compareLengths(due, s.value) !== 0) {
      return { kind: "clash", a: s.what === first.what ? first : second, b: s, due };
    }
  }
  return compareLengths(interval.hi, interval.lo) <= 0
    ? { kind: "turned", interval, said }
    : { kind: "settled", interval };
}
