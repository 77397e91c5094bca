// A length as a maker writes it -> exact inches, or why not and what was most likely meant.
import { type Exact, exact } from "./length.ts";
import { type NumberFault, parseNumber, plainSigns, type ReadNumber } from "./parse-number.ts";

/** `board name`: "2x4" is a name, its true size is in the yard. `past a foot`: 14 inches after feet. */
export type LengthFault = NumberFault | "board name" | "past a foot" | "no unit known";

export type ReadLength =
  /** `bare`: no unit was written, so it may be a plain number as well. */
  | { readonly ok: true; readonly value: Exact; readonly bare: boolean }
  | { readonly ok: false; readonly fault: LengthFault; readonly suggestion?: string };

const perUnit: Readonly<Record<string, Exact>> = {
  "": exact(1),
  '"': exact(1),
  in: exact(1),
  inch: exact(1),
  inches: exact(1),
  "'": exact(12),
  ft: exact(12),
  foot: exact(12),
  feet: exact(12),
  mm: exact(10, 254),
  cm: exact(100, 254),
};

/**
 * Reads `17 9/16`, `17-9/16`, `28⅞`, `28.875`, `18"`, `18 in`, `1' 6 1/2"`, `2 ft 4 in`, `450 mm`, `45 cm`.
 * Millimetres are exact: 25.4 mm are 1 in.
 */
export function parseLength(text: string): ReadLength {
  const plain = plainSigns(text);
  if (/^\d+(?:\s\d+\/\d+)?\s*[x×]\s*\d+$/i.test(plain)) return { ok: false, fault: "board name" };
  const feet = /^(.*?\S)\s*(?:'|ft\b|foot\b|feet\b)\s*-?\s*(\d.*?)\s*(?:"|in|inch|inches)?$/.exec(plain);
  if (feet) return feetAndInches(feet[1] ?? "", feet[2] ?? "");
  const [, number = "", unit = ""] = /^(.*?)\s*([a-z]+|["'])?$/i.exec(plain) ?? [];
  const per = perUnit[unit.toLowerCase()];
  if (per === undefined) return { ok: false, fault: parseNumber(number).ok ? "no unit known" : "no number" };
  const read = parseNumber(number);
  if (!read.ok) return withUnit(read, unit);
  return { ok: true, value: read.value.mul(per), bare: unit === "" };
}

function feetAndInches(feetText: string, inchText: string): ReadLength {
  const feet = parseNumber(feetText);
  const inch = parseNumber(inchText);
  if (!feet.ok) return withUnit(feet, `' ${inchText}"`);
  if (!inch.ok) return inch.suggestion ? { ...inch, suggestion: `${feetText}' ${inch.suggestion}"` } : inch;
  const value = feet.value.mul(12).add(inch.value);
  if (inch.value.compare(12) < 0) return { ok: true, value, bare: false };
  const whole = value.div(12).floor();
  return {
    ok: false,
    fault: "past a foot",
    suggestion: `${whole.toFraction()}' ${value.sub(whole.mul(12)).toFraction(true)}"`,
  };
}

const withUnit = (read: Exclude<ReadNumber, { ok: true }>, unit: string): ReadLength =>
  read.suggestion === undefined
    ? read
    : { ...read, suggestion: `${read.suggestion}${/^[a-z]/i.test(unit) ? " " : ""}${unit}` };

/** Why a text is no length, in the maker's words; follows "can't be read as a length: ". */
export const lengthFaultWords: Readonly<Record<LengthFault, string>> = {
  "no number": "there is no number that can be read",
  "no bar": "the fraction has no bar",
  "divided by 0": "nothing can be divided by 0",
  "below 0": "a length can't be below 0",
  "turned round": "the whole inches come before the fraction",
  "big fraction": "the fraction after whole inches is 1 or more",
  comma: "a point, not a comma, stands before decimals",
  "board name": "it is a board's name; the board's true size is in the yard",
  "past a foot": "12 inches or more after the feet make another foot",
  "no unit known": "the unit is not one of in, ft, mm, cm",
};
