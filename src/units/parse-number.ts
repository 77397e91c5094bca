// A number as the trade writes it -> an exact rational: 17, 28.875, 9/16, 17 9/16, 17-9/16, 28⅞.
import { type Exact, exact } from "./length.ts";

const vulgar: Readonly<Record<string, string>> = {
  "½": "1/2",
  "⅓": "1/3",
  "⅔": "2/3",
  "¼": "1/4",
  "¾": "3/4",
  "⅕": "1/5",
  "⅖": "2/5",
  "⅗": "3/5",
  "⅘": "4/5",
  "⅙": "1/6",
  "⅚": "5/6",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

/** The same text with one way of writing each sign: fractions as n/d, ' and " for feet and inches, - for minus. */
export function plainSigns(text: string): string {
  return text
    .replace(
      /[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g,
      (sign, at: number) => (at > 0 && /\d/.test(text[at - 1] ?? "") ? " " : "") + vulgar[sign],
    )
    .replace(/⁄/g, "/")
    .replace(/[′’‘]/g, "'")
    .replace(/[″“”]|''/g, '"')
    .replace(/[−–]/g, "-")
    .replace(/[\u00a0\u2009\u202f]/g, " ")
    .trim();
}

export type NumberFault =
  | "no number"
  | "no bar"
  | "divided by 0"
  | "below 0"
  | "turned round"
  | "big fraction"
  | "comma";
export type ReadNumber =
  | { readonly ok: true; readonly value: Exact }
  | { readonly ok: false; readonly fault: NumberFault; readonly suggestion?: string };

const fault = (name: NumberFault, suggestion?: string): ReadNumber =>
  suggestion === undefined ? { ok: false, fault: name } : { ok: false, fault: name, suggestion };

/** Reads a number of 0 or more; `text` has plain signs and no unit. The suggestion is what was most likely meant. */
export function parseNumber(text: string): ReadNumber {
  if (/^\d+$/.test(text) || /^\d*\.\d+$/.test(text))
    return { ok: true, value: exact(text.startsWith(".") ? `0${text}` : text) };
  const mixed = /^(?:(\d+)(?:\s+|-))?(\d+)\/(\d+)$/.exec(text);
  if (mixed) {
    const [, whole, over, under] = mixed as unknown as [string, string | undefined, string, string];
    if (/^0+$/.test(under)) return fault("divided by 0");
    const part = exact(BigInt(over), BigInt(under));
    if (whole === undefined) return { ok: true, value: part };
    const value = part.add(exact(whole));
    return part.compare(1) < 0 ? { ok: true, value } : fault("big fraction", value.toFraction(true));
  }
  if (/^-/.test(text)) {
    const positive = parseNumber(text.slice(1).trim());
    return positive.ok ? fault("below 0", text.slice(1).trim()) : fault("below 0");
  }
  const noBar = /^(\d+)[\s-]+(\d+)\s+(\d+)$/.exec(text);
  if (noBar) {
    const [, whole, over, under] = noBar;
    return Number(over) < Number(under) ? fault("no bar", `${whole} ${over}/${under}`) : fault("no bar");
  }
  const turned = /^(\d+\/\d+)[\s-]+(\d+)$/.exec(text);
  if (turned) return fault("turned round", `${turned[2]} ${turned[1]}`);
  const comma = /^(\d+),(\d+)$/.exec(text);
  if (comma) return fault("comma", comma[2]?.length === 3 ? `${comma[1]}${comma[2]}` : `${comma[1]}.${comma[2]}`);
  return fault("no number");
}
