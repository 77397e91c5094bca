// A length in a problem's sentence: exact where the tape can show it, else in decimals, so that a small error stays visible.
import { formatLength, isRounded } from "../units/format-length.ts";
import { inches, type Length } from "../units/length.ts";

/** `17 9/16`, `0.0031`, `-3/8`; thirty-seconds, or four decimals where they would be rounded. */
export function sayLength(length: Length): string {
  const tape = { unit: "in", per: 32 } as const;
  return isRounded(length, tape) ? String(Number(inches(length).toFixed(4))) : formatLength(length, tape);
}

/** `a`, `a and b`, `a, b and c`; of more than four the first three and how many are left. */
export function sayList(names: readonly string[]): string {
  if (names.length > 4) return `${names.slice(0, 3).join(", ")} and ${names.length - 3} more`;
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
