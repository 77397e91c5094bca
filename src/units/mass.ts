// Weights: what a maker writes -> exact pounds -> what a reader sees: 14.2 lb, 9 oz, 6.4 kg, 14.2 lb (6.4 kg).
import { type Exact, exact } from "./length.ts";
import { parseNumber, plainSigns } from "./parse-number.ts";

/** Kilograms in a pound, exact by definition (international avoirdupois pound, 1959). */
export const kilogramsPerPound = 0.45359237;

const perPound: Readonly<Record<string, Exact>> = {
  lb: exact(1),
  lbs: exact(1),
  oz: exact(1, 16),
  kg: exact(1).div("0.45359237"),
  g: exact(1).div("453.59237"),
};

/** Reads `12 lb`, `3 oz`, `1 lb 4 oz`, `250 g`, `1.2 kg` as exact pounds; undefined for anything else. */
export function parsePounds(text: string): Exact | undefined {
  const plain = plainSigns(text);
  const both = /^(\S.*?)\s*lbs?\s+(\d\S*)\s*oz$/i.exec(plain);
  if (both) {
    const pounds = parseNumber(both[1] ?? "");
    const ounces = parseNumber(both[2] ?? "");
    return pounds.ok && ounces.ok ? pounds.value.add(ounces.value.div(16)) : undefined;
  }
  const [, number = "", unit = ""] = /^(\S.*?)\s*([a-z]+)$/i.exec(plain) ?? [];
  const read = parseNumber(number);
  const per = perPound[unit.toLowerCase()];
  return read.ok && per ? read.value.mul(per) : undefined;
}

/** To `places` decimals, halves up, a last 0 left out. */
const decimals = (value: number, places: number): number => {
  const by = 10 ** places;
  return Math.floor(value * by + 0.5 + 1e-9) / by;
};

/** Ounces under 1 lb (tenths under 1 oz), tenths of a pound under 20 lb, else whole pounds. */
export function poundsAsPrinted(pounds: number): number {
  if (pounds * 16 < 0.95) return decimals(pounds * 16, 1) / 16;
  if (pounds * 16 < 15.5) return decimals(pounds * 16, 0) / 16;
  return decimals(pounds, pounds < 19.95 ? 1 : 0);
}

/** `0.4 oz`, `9 oz`, `14.2 lb`, `41 lb`. */
export function formatPounds(pounds: number): string {
  const printed = poundsAsPrinted(pounds);
  return printed < 1 ? `${decimals(printed * 16, 1)} oz` : `${printed} lb`;
}

/** `11 g`, `250 g`, `6.4 kg`, `19 kg`. */
export function formatKilograms(pounds: number): string {
  const kilograms = pounds * kilogramsPerPound;
  if (kilograms < 0.9995) return `${decimals(kilograms * 1000, 0)} g`;
  return `${decimals(kilograms, kilograms < 9.95 ? 1 : 0)} kg`;
}

/** `14.2 lb (6.4 kg)`. */
export const formatPoundsAndKilograms = (pounds: number): string =>
  `${formatPounds(pounds)} (${formatKilograms(pounds)})`;
