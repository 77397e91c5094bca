// A softwood board's nominal name -> its true dressed size.
import { nearest } from "../problems/nearest.ts";
import { type Exact, exact } from "../units/length.ts";

/** Surfaced dry (at most 19 % moisture) or green (over 19 %). */
export type Sawn = "dry" | "green";

/** The most moisture, in %, that a board called dry may have. Source: PS 20. */
export const dryMoisture = 19;

// Source of both tables: Voluntary Product Standard PS 20 (PS 20-20), minimum dressed sizes; dry sizes read in reprints (3/4,
// 6/4 and width 5 from memory), green sizes from memory.

/** Minimum dressed thickness in inches by nominal thickness. */
export const dressedThickness: Readonly<Record<Sawn, Readonly<Record<string, Exact>>>> = {
  dry: {
    "3/4": exact(5, 8),
    "1": exact(3, 4),
    "5/4": exact(1),
    "6/4": exact(5, 4),
    "2": exact(3, 2),
    "4": exact(7, 2),
  },
  green: { "1": exact(25, 32), "5/4": exact(33, 32), "2": exact(25, 16), "4": exact(57, 16) },
};

/** Minimum dressed width in inches by nominal width. */
export const dressedWidth: Readonly<Record<Sawn, Readonly<Record<string, Exact>>>> = {
  dry: {
    "2": exact(3, 2),
    "3": exact(5, 2),
    "4": exact(7, 2),
    "5": exact(9, 2),
    "6": exact(11, 2),
    "8": exact(29, 4),
    "10": exact(37, 4),
    "12": exact(45, 4),
  },
  green: {
    "2": exact(25, 16),
    "3": exact(41, 16),
    "4": exact(57, 16),
    "5": exact(37, 8),
    "6": exact(45, 8),
    "8": exact(15, 2),
    "10": exact(19, 2),
    "12": exact(23, 2),
  },
};

/** Whether a text has the form of a nominal size: `2x4`, `5/4x6`. */
export const isNominal = (text: string): boolean => /^\d+(\/\d+)?x\d+$/.test(text);

/** The true size of a nominal section; undefined where the tables have no such board. */
export function dressedSize(nominal: string, sawn: Sawn): { thickness: Exact; width: Exact } | undefined {
  const [thick = "", wide = ""] = nominal.split("x");
  const thickness = dressedThickness[sawn][thick];
  const width = dressedWidth[sawn][wide];
  return thickness && width ? { thickness, width } : undefined;
}

/** The section of the tables nearest to one they lack: the same thickness and the nearest width, or the nearest name. */
export function nearestNominal(nominal: string, sawn: Sawn): string | undefined {
  const [thick = "", wide = ""] = nominal.split("x");
  const widths = Object.keys(dressedWidth[sawn]);
  if (dressedThickness[sawn][thick] && /^\d+$/.test(wide)) {
    const far = (width: string): number => Math.abs(Number(width) - Number(wide));
    return `${thick}x${widths.reduce((best, width) => (far(width) < far(best) ? width : best))}`;
  }
  return nearest(
    nominal,
    Object.keys(dressedThickness[sawn]).flatMap((t) => widths.map((w) => `${t}x${w}`)),
  );
}
