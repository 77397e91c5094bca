// Worked-out figures -> text as one edition prints them: inches for the binder, inches with metric for the buyer.
import type { Figure } from "../item/item.ts";
import { formatArea, formatAreaMetric } from "../units/area.ts";
import type { Division } from "../units/division.ts";
import { formatBoth, formatLength, formatWithUnit, fullOrScant } from "../units/format-length.ts";
import type { Length } from "../units/length.ts";
import { formatPounds, formatPoundsAndKilograms } from "../units/mass.ts";

export type Edition = {
  readonly length: (length: Length) => string;
  /** A gap as a block is cut to it: `1/4 in`, or `1/4 scant` in the words of the trade, which leave the inches out; the buyer is told the length alone. */
  readonly gap: (length: Length) => string;
  readonly weight: (pounds: number) => string;
  readonly area: (squareInches: number) => string;
  readonly figure: (figure: Figure) => string;
};

/** `bare` has no unit, for tables that name it once. */
export type BinderEdition = Edition & { readonly bare: (length: Length) => string; readonly division: Division };

/** `17 9/16` -> `17 9⁄16`: a fraction slash, and a space that does not break before it. */
export const setFractions = (text: string): string =>
  text.replace(/(\d) (\d+)\/(\d+)/g, "$1\u00a0$2\u2044$3").replace(/(\d)\/(\d)/g, "$1\u2044$2");

/** For the bench: lengths to the maker's division. */
export function binderEdition(division: Division): BinderEdition {
  const length = (of: Length) => setFractions(formatWithUnit(of, division));
  return {
    division,
    bare: (length) => setFractions(formatLength(length, division)),
    ...edition(length, (of) => gapWords(of, division), formatPounds, formatArea),
  };
}

function gapWords(gap: Length, division: Division): string {
  const word = fullOrScant(gap, division);
  const bare = word !== "" && division.unit === "in";
  return setFractions(`${bare ? formatLength(gap, division) : formatWithUnit(gap, division)}${word}`);
}

/** For the buyer: both systems, each from the model. */
export function storeEdition(division: Division): Edition {
  const length = (of: Length) => setFractions(formatBoth(of, division));
  return edition(length, length, formatPoundsAndKilograms, (area) => `${formatArea(area)} (${formatAreaMetric(area)})`);
}

const edition = (
  length: Edition["length"],
  gap: Edition["gap"],
  weight: Edition["weight"],
  area: Edition["area"],
): Edition => ({
  length,
  gap,
  weight,
  area,
  figure: (figure) => {
    switch (figure.kind) {
      case "length":
        return figure.gap ? gap(figure.value) : length(figure.value);
      case "weight":
        return weight(figure.pounds);
      case "area":
        return area(figure.squareInches);
      case "angle":
        return `${rounded(figure.degrees, 1)}°`;
      case "number":
        return rounded(figure.value, 3);
    }
  },
});

const rounded = (value: number, places: number): string => String(Number(value.toFixed(places)));

/** `30 × 18 × 26 in`, each length in the same unit, on one line. */
export const threeSizes = (sizes: readonly Length[], division: Division): string =>
  `${sizes.map((size) => setFractions(formatLength(size, division))).join("\u00a0×\u00a0")}\u00a0${division.unit}`;

/** To a tenth of a millimetre, for what is compared with itself: `1.12 in (28.6 mm)`. */
export const tenth = (inches: number): string => `${inches.toFixed(2)}\u00a0in (${(inches * 25.4).toFixed(1)}\u00a0mm)`;

/** A small change of size, too fine for a tape: `0.02 in (0.5 mm)`. */
export const smallChange = (inches: number): string => `${rounded(inches, 2)} in (${rounded(inches * 25.4, 1)} mm)`;
