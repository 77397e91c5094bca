// `spring fair: 79.00, 2026-05-09, 28 x 16 x 24` -> what others ask for the like, with the day it was seen. Private.
import { problem } from "../problems/problem.ts";
import { entriesUnder, type TreeMap } from "../problems/yaml-tree.ts";
import { isDay } from "../units/day.ts";
import { parseLength } from "../units/parse-length.ts";
import { parsePrice } from "../yard/parse-values.ts";
import { textsOf } from "./one-line.ts";
import type { Comparable } from "./recipe.ts";
import { type Form, type Gathered, split } from "./scan.ts";

export const comparableForm: Form = {
  form: "WHERE: MONEY, DAY[, W x D x H]",
  means: "What is asked elsewhere for the like, and the day you saw it; without a day it is refused.",
  example: "spring fair: 79.00, 2026-05-09, 28 x 16 x 24",
};

export const readComparables = (tree: TreeMap, into: Gathered): Comparable[] =>
  textsOf(entriesUnder(tree, "comparables")).flatMap(({ key, value }) => {
    const [money = value, seen, size, more] = split(value, ",");
    const price = parsePrice(money, into.problems);
    const dated = seen !== undefined && isDay(seen.text);
    if (!dated)
      into.problems.push(problem("comparable-undated", (seen ?? key).at, { where: key.text, found: value.text }));
    const odd = more ?? (size && !isSize(size.text) ? size : undefined);
    if (odd) into.problems.push(problem("comparable-size", odd.at, { found: odd.text }));
    if (!price || !dated) return [];
    return [{ at: value.at, where: key.text, price, seen: seen.text, ...(size && !odd ? { size: size.text } : {}) }];
  });

const isSize = (text: string): boolean => text.split(/\s*[x×]\s*/).every((part) => parseLength(part).ok);
