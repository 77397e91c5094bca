// One written value of a yard or shop file -> the thing it says, or a problem at its place.
import type { Written } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";
import { isDay } from "../units/day.ts";
import type { Exact } from "../units/length.ts";
import { parsePounds } from "../units/mass.ts";
import { type Money, parseMoney } from "../units/money.ts";
import { lengthFaultWords, parseLength } from "../units/parse-length.ts";

/** Where problems go while a file is read. */
export type Problems = Problem[];

/** A length of 0 or more; undefined, with a problem told, where it is none. */
export function parseYardLength(key: string, w: Written, problems: Problems): Exact | undefined {
  const read = parseLength(w.text);
  if (read.ok) return read.value;
  problems.push(
    problem("yard-length", w.at, {
      key,
      found: w.text,
      why: lengthFaultWords[read.fault],
      suggestion: read.suggestion,
    }),
  );
  return undefined;
}

/** A length over 0. */
export function parseYardSize(key: string, w: Written, problems: Problems): Exact | undefined {
  const length = parseYardLength(key, w, problems);
  if (length === undefined || length.compare(0) > 0) return length;
  problems.push(problem("yard-number", w.at, { key, found: w.text, expected: "a size over 0" }));
  return undefined;
}

/** `5/8 x 5 1/2` as sizes over 0, in the order of the names in `sides`. */
export function parseSides(key: string, w: Written, sides: readonly string[], problems: Problems): Exact[] | undefined {
  const texts = w.text.split(/\s*[x×]\s*/).map((t) => t.trim());
  if (texts.length !== sides.length || texts.includes("")) {
    problems.push(problem("yard-sides", w.at, { key, found: w.text, sides }));
    return undefined;
  }
  const sizes = texts.map((t) => parseYardSize(key, { text: t, at: w.at }, problems));
  return sizes.every((s) => s !== undefined) ? sizes : undefined;
}

/** A plain decimal number within the bounds. */
export function parsePlain(
  key: string,
  w: Written,
  least: number,
  most: number,
  problems: Problems,
): number | undefined {
  const value = /^\d*\.?\d+$/.test(w.text) ? Number(w.text) : Number.NaN;
  if (value >= least && value <= most) return value;
  const bounds = most === Number.POSITIVE_INFINITY ? `of ${least} or more` : `from ${least} to ${most}`;
  problems.push(problem("yard-number", w.at, { key, found: w.text, expected: `a number ${bounds}, without a unit` }));
  return undefined;
}

/** Exact dollars. */
export function parsePrice(w: Written, problems: Problems): Money | undefined {
  const money = parseMoney(w.text);
  if (money === undefined)
    problems.push(problem("yard-price", w.at, { found: w.text, below: /^\$?\s*-/.test(w.text) }));
  return money;
}

/** A day of the calendar as it is written in ISO 8601, 2026-10-03. */
export function parseDate(w: Written, problems: Problems): string | undefined {
  if (isDay(w.text)) return w.text;
  problems.push(problem("yard-date", w.at, { found: w.text }));
  return undefined;
}

/** The day a price was seen: its own, else the thing's, else the file's. */
export function parsePriced(
  name: Written,
  own: Written | undefined,
  ofFile: Written | undefined,
  problems: Problems,
): string | undefined {
  const written = own ?? ofFile;
  if (written) return parseDate(written, problems);
  problems.push(problem("yard-no-date", name.at, { name: name.text }));
  return undefined;
}

/** Pounds over 0. */
export function parseWeight(key: string, w: Written, problems: Problems): number | undefined {
  const pounds = parsePounds(w.text);
  if (pounds && pounds.compare(0) > 0) return pounds.valueOf();
  problems.push(
    problem("yard-number", w.at, {
      key,
      found: w.text,
      expected: 'a weight over 0 with its unit, like "3 oz" or "1.2 kg"',
    }),
  );
  return undefined;
}
