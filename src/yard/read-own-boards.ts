// What lies in the shop of one board -> lengths and widths with their number, without their fresh ends.
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import type { TreeEntry } from "../problems/yaml-tree.ts";
import type { Exact } from "../units/length.ts";
import { type Problems, parseSides, parseYardSize } from "./parse-values.ts";
import type { OwnBoard } from "./yard.ts";

/** What holds for the boards of every file: the longest that can be fetched, and what a fresh end takes. */
export type OfAllFiles = { readonly vehicle: Exact | undefined; readonly freshEnd: Exact };

/** `31 1/2: 2` is as wide as the board, `40 x 1 11/16: 3` is a strip of it. Undefined where a line is wrong. */
export function readOwnBoards(
  entries: readonly TreeEntry[],
  whole: Exact,
  freshEnd: Exact,
  problems: Problems,
): OwnBoard[] | undefined {
  const read = entries.map(({ key, value }) => {
    const count = value.kind === "text" ? readCount(value, problems) : undefined;
    const size = readSize(key, whole, problems);
    if (count === undefined || !size) return undefined;
    const [length, width] = size;
    if (width.compare(whole) > 0) {
      const facts = { found: width.toFraction(true), whole: whole.toFraction(true) };
      problems.push(problem("yard-own-wide", key.at, facts));
      return undefined;
    }
    const usable = length.sub(freshEnd);
    if (usable.compare(0) > 0) return { length, usable, width, count };
    const [said, loss] = [length, freshEnd].map((size) => size.toFraction(true)) as [string, string];
    problems.push(problem("yard-nothing-left", key.at, { length: said, loss }));
    return undefined;
  });
  return read.every((one) => one !== undefined) ? read : undefined;
}

function readSize(key: Written, whole: Exact, problems: Problems): readonly [Exact, Exact] | undefined {
  if (/[x×]/.test(key.text)) {
    const [length, width] = parseSides("in-stock", key, ["length", "width"], problems) ?? [];
    return length && width ? [length, width] : undefined;
  }
  const length = parseYardSize("in-stock", key, problems);
  return length && [length, whole];
}

function readCount(value: Written, problems: Problems): number | undefined {
  if (/^[1-9]\d{0,3}$/.test(value.text)) return Number(value.text);
  const expected = "how many there are, a whole number over 0";
  problems.push(problem("yard-number", value.at, { key: "in-stock", found: value.text, expected }));
  return undefined;
}
