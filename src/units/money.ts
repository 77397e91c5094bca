// Dollars as exact rationals: text -> money -> text.
import { type Exact, exact } from "./length.ts";

/** Exact dollars. */
export type Money = Exact;

/** Reads `3.25`, `$3.25`, `12`; undefined for anything else, for parts of a cent and for amounts below 0. */
export function parseMoney(text: string): Money | undefined {
  const digits = /^\$?\s*(\d+(?:\.\d{1,2})?)$/.exec(text.trim())?.[1];
  return digits === undefined ? undefined : exact(digits);
}

/** Rounded to the cent, halves away from 0: `16.40`, `-0.50`. */
export function formatMoney(money: Money): string {
  const cents = BigInt(money.abs().mul(100).add(exact(1, 2)).floor().toFraction());
  const sign = money.compare(0) < 0 && cents > 0n ? "-" : "";
  return `${sign}${cents / 100n}.${(cents % 100n).toString().padStart(2, "0")}`;
}

/** `$16.40`. */
export const formatDollars = (money: Money): string => formatMoney(money).replace(/^(-?)/, "$1$$");
