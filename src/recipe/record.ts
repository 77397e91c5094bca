// `2026-10-12: 5 made, fetch 18, rip 22, screw 260` -> a batch that was made, and the minutes it took. Private.

import { nearest } from "../problems/nearest.ts";
import type { Written } from "../problems/place.ts";
import { further } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";
import { entriesUnder, type TreeMap } from "../problems/yaml-tree.ts";
import { isDay } from "../units/day.ts";
import { type Exact, exact } from "../units/length.ts";
import { slug } from "../units/slug.ts";
import { type Work, works } from "../yard/shop-rates.ts";
import { countVariants, isCalled, mostVariants, variantsOf } from "./choices-variants.ts";
import { textsOf } from "./one-line.ts";
import type { BatchRecord, Recipe } from "./recipe.ts";
import { type Form, type Gathered, split } from "./scan.ts";

export const recordForm: Form = {
  form: "DAY: N made[ in VARIANT], WORK MINUTES[, WORK MINUTES]",
  means:
    "A batch you made and the minutes each work took with its setting up, or all of it together; they set right the hours of this recipe.",
  example: "2026-10-12: 5 made in stained, fetch 18, rip 22, screw 260",
};

/** What minutes can be written down for: every kind of work, the fetching and laying out, or all of the batch together. */
export const recordable = ["fetch", ...works, "all"] as const;
export type Recordable = (typeof recordable)[number];

/** The line to fill in and put under `record:` in the recipe; the blanks are where the pen goes. */
export const recordLine = (units: number, variant: string, of: readonly (Work | "fetch")[]): string =>
  `20__-__-__: ${units} made in ${variant}, ${of.map((work) => `${work} ___`).join(", ")}`;

/** No batch is larger than this. */
const largestBatch = 50;

export const readRecord = (tree: TreeMap, into: Gathered): BatchRecord[] =>
  textsOf(entriesUnder(tree, "record")).flatMap(({ key, value }) => {
    const [day = ""] = key.text.split(" ");
    if (!isDay(day)) {
      into.problems.push(problem("record-day", key.at, { found: key.text }));
      return [];
    }
    const [head = value, ...lines] = split(value, ",");
    const made = readMade(head, into);
    const minutes = readMinutes(lines, into);
    if (made && lines.length === 0) into.problems.push(problem("record-empty", value.at, { found: value.text }));
    return made ? [{ at: key.at, day, ...made, minutes }] : [];
  });

function readMade(head: Written, into: Gathered): Pick<BatchRecord, "units" | "variant"> | undefined {
  const [, count = "", variant] = /^(\d+) made(?: in (\S.*))?$/.exec(head.text) ?? [];
  const units = Number(count);
  if (units < 1 || units > largestBatch) {
    into.problems.push(problem("record-made", head.at, { found: head.text, most: largestBatch }));
    return undefined;
  }
  if (variant === undefined) return { units };
  return { units, variant: { text: variant, at: further(head.at, head.text.length - variant.length) } };
}

function readMinutes(lines: readonly Written[], into: Gathered): BatchRecord["minutes"] {
  const minutes: Partial<Record<Recordable, Exact>> = {};
  for (const line of lines) {
    const [, word = "", number = ""] = /^(\w+) (\d+(?:\.\d+)?)$/.exec(line.text) ?? [];
    const work = recordable.find((known) => known === word);
    const known = [...recordable];
    const near = nearest(line.text.split(" ")[0] ?? "", known);
    if (!work || Number(number) === 0) {
      const suggestion = near === word ? undefined : near;
      into.problems.push(problem("record-minutes", line.at, { found: line.text, known, nearest: suggestion }));
    } else if (minutes[work]) into.problems.push(problem("record-twice", line.at, { work }));
    else minutes[work] = exact(number);
  }
  return minutes;
}

/** Batches of variants that the recipe does not offer. */
export function checkRecord(recipe: Recipe): Problem[] {
  if (countVariants(recipe) > mostVariants) return [];
  const variants = variantsOf(recipe);
  const known = variants.map((one) => one.slug);
  return recipe.record.flatMap(({ variant }) =>
    !variant || variants.some((one) => isCalled(variant.text, one))
      ? []
      : [
          problem("record-no-variant", variant.at, {
            what: variant.text,
            known,
            nearest: nearest(slug(variant.text), known),
          }),
        ],
  );
}
