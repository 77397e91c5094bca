// Lengths and counts -> the words a drawing carries: fractions with the fraction slash, lists, plurals, identifiers.
import type { Division } from "../units/division.ts";
import { formatLength, fullOrScant } from "../units/format-length.ts";
import type { Length } from "../units/length.ts";

/** Sets 9/16 with U+2044, which the font turns into a real fraction. */
export const withFractions = (text: string): string => text.replaceAll(/(\d+)\/(\d+)/g, "$1\u2044$2");

export const paperLength = (length: Length, division: Division): string =>
  withFractions(formatLength(length, division));

/** The same for a spacer block: `1/4 scant`, `1/4 full` where what is printed is a little more or less than the gap. */
export const paperGap = (gap: Length, division: Division): string =>
  `${paperLength(gap, division)}${fullOrScant(gap, division)}`;

/** "inches", "millimetres": said once a drawing. */
export const unitWords = (division: Division): string => (division.unit === "in" ? "inches" : "millimetres");

export const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? (parts[0] ?? "") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;

/** With a full stop at its end. */
export const sentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);

/** "once", "twice", "3 times". */
export const timesWords = (count: number): string => (count === 1 ? "once" : count === 2 ? "twice" : `${count} times`);

/** A name as part of an id. */
export const idPart = (text: string): string => text.toLowerCase().replaceAll(/[^a-z0-9]+/g, "-");
