// An angle as a maker writes it -> degrees: `14 deg`, `22 1/2°`, or a slope `3 in 12`.
import { parseNumber, plainSigns } from "./parse-number.ts";

export type ReadAngle =
  | { readonly ok: true; readonly degrees: number }
  | { readonly ok: false; readonly fault: "no angle" | "flat run" | "too wide"; readonly suggestion?: string };

/** Degrees from 0 up to, not at, 180. A slope is rise in run; its degrees are a double. */
export function parseAngle(text: string): ReadAngle {
  const plain = plainSigns(text);
  const slope = /^(\S.*?)\s+in\s+(\d.*)$/.exec(plain);
  if (slope) {
    const rise = parseNumber(slope[1] ?? "");
    const run = parseNumber(slope[2] ?? "");
    if (!rise.ok || !run.ok) return { ok: false, fault: "no angle" };
    if (run.value.equals(0)) return { ok: false, fault: "flat run" };
    return { ok: true, degrees: (Math.atan2(rise.value.valueOf(), run.value.valueOf()) * 180) / Math.PI };
  }
  const [, number = "", unit = ""] = /^(.*?)\s*(°|deg|degree|degrees)$/i.exec(plain) ?? [];
  const read = parseNumber(unit === "" ? plain : number);
  if (!read.ok) return { ok: false, fault: "no angle" };
  if (unit === "") return { ok: false, fault: "no angle", suggestion: `${plain} deg` };
  if (read.value.compare(180) >= 0) return { ok: false, fault: "too wide" };
  return { ok: true, degrees: read.value.valueOf() };
}

/** Why a text is no angle, in the maker's words. */
export const angleFaultWords = {
  "no angle": 'an angle is written "14 deg" or as a slope, "3 in 12"',
  "flat run": "a slope over 0 has no angle",
  "too wide": "an angle is less than 180 degrees",
} as const;
