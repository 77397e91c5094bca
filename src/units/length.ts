// Lengths in inches: exact rationals until an angle or a curve, doubles after it.
import Fraction from "fraction.js";

/** An exact length in inches. */
export type Exact = Fraction;

/** A length in inches: exact, or a double once it has passed through an angle or a curve. It never becomes exact again. */
export type Length = Exact | number;

/** The exact number; takes whole numbers and texts such as "27/16" or "0.125". */
export const exact = (value: number | bigint | string, over: number | bigint = 1): Exact =>
  new Fraction(value).div(over);

export const zero: Exact = exact(0);

export const isExact = (a: Length): a is Exact => typeof a !== "number";

/** As a double, in inches. */
export const inches = (a: Length): number => (typeof a === "number" ? a : a.valueOf());

export const plus = (a: Length, b: Length): Length => (isExact(a) && isExact(b) ? a.add(b) : inches(a) + inches(b));

export const minus = (a: Length, b: Length): Length => (isExact(a) && isExact(b) ? a.sub(b) : inches(a) - inches(b));

/** A length times a plain number. */
export const times = (a: Length, n: Length): Length => (isExact(a) && isExact(n) ? a.mul(n) : inches(a) * inches(n));

/** A length divided by a plain number other than 0. */
export const over = (a: Length, n: Length): Length => (isExact(a) && isExact(n) ? a.div(n) : inches(a) / inches(n));

/** Lengths that differ by less than this are the same place once a double is involved (inches). */
export const sameLength = 1e-9;

/** Negative, zero or positive as a is less than, equal to or more than b; doubles within 1e-9 in are equal. */
export function compareLengths(a: Length, b: Length): number {
  if (isExact(a) && isExact(b)) return a.compare(b);
  const d = inches(a) - inches(b);
  return Math.abs(d) <= sameLength ? 0 : d;
}

export const least = (a: Length, b: Length): Length => (compareLengths(b, a) < 0 ? b : a);
export const most = (a: Length, b: Length): Length => (compareLengths(b, a) > 0 ? b : a);
