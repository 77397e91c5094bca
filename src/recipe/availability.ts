// `ready now 2`, `made to order in 3 weeks`, `sold` -> whether a buyer finds it ready, for the whole recipe or variant by variant.
import { nearest } from "../problems/nearest.ts";
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import { entriesUnder, type TreeMap, textUnder } from "../problems/yaml-tree.ts";
import { countVariants, mostVariants, variantsOf } from "./choices-variants.ts";
import type { Availability, Recipe } from "./recipe.ts";
import type { Gathered } from "./scan.ts";

/** What holds where nothing is said: it is made to order, and the shop's own words say in what time. */
const madeToOrder: Availability = { kind: "made" };

const timeUnits = ["day", "week", "month"] as const;

/** No more of one thing stand ready, and nobody waits longer than this many days, weeks or months. */
const most = 999;

/** Of all variants, or only of one of them by its slug. */
export type Offered = { readonly variant?: string; readonly is: Availability };

/** Errors: undefined where it is none of the three. */
export function parseAvailability(text: string): Availability | undefined {
  const words = text.trim().toLowerCase().replace(/\s+/g, " ");
  if (words === "sold" || words === "sold out") return { kind: "sold" };
  if (words === "made to order") return madeToOrder;
  const ready = /^(?:(\d{1,3}) ready now|ready now(?: (\d{1,3}))?)$/.exec(words);
  const count = Number(ready?.[1] ?? ready?.[2] ?? 1);
  if (ready) return count >= 1 && count <= most ? { kind: "ready", count } : undefined;
  const [, number = "", word = ""] = /^made to order in (\d{1,3}) (\w+?)s?$/.exec(words) ?? [];
  const unit = timeUnits.find((known) => known === word);
  return unit && Number(number) >= 1 ? { kind: "made", time: { count: Number(number), unit } } : undefined;
}

/** Empty where the recipe says nothing of it. */
export function readAvailability(tree: TreeMap, choices: Recipe["choices"], into: Gathered): readonly Offered[] {
  const whole = textUnder(tree, "availability");
  if (whole) return readOne(whole, into);
  const slugs = countVariants({ choices }) > mostVariants ? undefined : variantsOf({ choices }).map(({ slug }) => slug);
  return entriesUnder(tree, "availability").flatMap(({ key, value }) => {
    if (value.kind !== "text") return [];
    if (slugs && !slugs.includes(key.text)) {
      const near = nearest(key.text, slugs);
      into.problems.push(problem("availability-variant", key.at, { found: key.text, known: slugs, nearest: near }));
      return [];
    }
    return readOne(value, into).map(({ is }) => ({ variant: key.text, is }));
  });
}

function readOne(value: Written, into: Gathered): readonly Offered[] {
  const is = parseAvailability(value.text);
  if (!is) into.problems.push(problem("availability", value.at, { found: value.text }));
  return is ? [{ is }] : [];
}

export const availabilityOf = (offered: readonly Offered[], variant: string): Availability =>
  offered.find((one) => one.variant === undefined || one.variant === variant)?.is ?? madeToOrder;
