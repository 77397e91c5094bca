// Lengths -> what a reader sees: 17 9/16, 17 9/16", 446 mm, 17 9/16 in (446 mm).
import type { Division } from "./division.ts";
import { type Exact, exact, inches, isExact, type Length, sameLength } from "./length.ts";

/** Divisions in one inch. */
const perInch = (division: Division): Exact => (division.unit === "in" ? exact(division.per) : exact(254, 10));

/**
 * Whole divisions nearest to the length's size, halves up. A double within 1e-9 in of a half counts as the half, so that
 * a length that came through an angle is printed like the exact one it equals.
 */
function divisions(length: Length, division: Division): bigint {
  const per = perInch(division);
  if (isExact(length)) return BigInt(length.abs().mul(per).add(exact(1, 2)).floor().toFraction());
  return BigInt(Math.floor((Math.abs(length) + sameLength) * per.valueOf() + 0.5));
}

const isBelowZero = (length: Length): boolean => (isExact(length) ? length.compare(0) < 0 : length < 0);

/** The exact length that is printed for this one, in inches. A claim is true when it equals this. */
export function asPrinted(length: Length, division: Division): Exact {
  const rounded = exact(divisions(length, division)).div(perInch(division));
  return isBelowZero(length) ? rounded.neg() : rounded;
}

/** Whether what is printed differs from the length. */
export function isRounded(length: Length, division: Division): boolean {
  const printed = asPrinted(length, division);
  return isExact(length) ? !printed.equals(length) : Math.abs(printed.valueOf() - length) > sameLength;
}

/**
 * The trade's word for what is lost in the printing: ` full` where the length is a little more than what is printed, ` scant`
 * where it is a little less, nothing where it is just that.
 */
export function fullOrScant(length: Length, division: Division): "" | " full" | " scant" {
  if (!isRounded(length, division)) return "";
  return inches(length) > inches(asPrinted(length, division)) ? " full" : " scant";
}

/** Nearest, carried to the next whole inch, reduced, without a unit: `17 9/16`, `18`, `-3/8`, `446`. */
export function formatLength(length: Length, division: Division): string {
  const count = divisions(length, division);
  const sign = isBelowZero(length) && count > 0n ? "-" : "";
  return sign + (division.unit === "mm" ? count.toString() : exact(count, division.per).toFraction(true));
}

/** With the mark of the trade: `17 9/16"`; millimetres keep their letters: `446 mm`. */
export const formatMarked = (length: Length, division: Division): string =>
  division.unit === "in" ? `${formatLength(length, division)}"` : formatWithUnit(length, division);

/** For running text: `17 9/16 in`, `446 mm`. */
export const formatWithUnit = (length: Length, division: Division): string =>
  `${formatLength(length, division)} ${division.unit}`;

/** For the buyer: inches with millimetres after them, both from the length itself: `17 9/16 in (446 mm)`. */
export const formatBoth = (length: Length, division: Division): string => {
  const inch: Division = division.unit === "in" ? division : { unit: "in", per: 16 };
  return `${formatWithUnit(length, inch)} (${formatWithUnit(length, { unit: "mm" })})`;
};
