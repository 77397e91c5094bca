// `85.00`, or `98.00, stall 85.00` by variant -> what the maker asks, as the buyer is shown it.
import { nearest } from "../problems/nearest.ts";
import type { Written } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";
import { entriesUnder, type TreeMap, textUnder } from "../problems/yaml-tree.ts";
import type { Exact } from "../units/length.ts";
import { slug } from "../units/slug.ts";
import { parsePrice } from "../yard/parse-values.ts";
import { countVariants, isCalled, mostVariants, variantsOf } from "./choices-variants.ts";
import { textsOf } from "./one-line.ts";
import type { AskedPrice, Recipe } from "./recipe.ts";
import { type Form, type Gathered, split } from "./scan.ts";

export const priceForm: Form = {
  form: "MONEY[, stall MONEY][, local MONEY]",
  means: "What you ask: in the store, and where you sell otherwise; one for all variants, or a line for each.",
  example: "98.00, stall 85.00",
};

/** One line for all variants, or one for each that is named. */
export function readPrices(tree: TreeMap, into: Gathered): AskedPrice[] {
  const one = textUnder(tree, "price");
  if (one) return readPrice(undefined, one, into);
  return textsOf(entriesUnder(tree, "price")).flatMap(({ key, value }) => readPrice(key, value, into));
}

function readPrice(variant: Written | undefined, value: Written, into: Gathered): AskedPrice[] {
  const [first = value, ...others] = split(value, ",");
  const shown = readMoney(first, into);
  const elsewhere: { stall?: Exact; local?: Exact } = {};
  for (const part of others) {
    const [, where, money = ""] = /^(stall|local)\s+(.*)$/.exec(part.text) ?? [];
    if (where !== "stall" && where !== "local") {
      into.problems.push(problem("price-where", part.at, { found: part.text }));
      continue;
    }
    if (elsewhere[where]) into.problems.push(problem("price-where-twice", part.at, { where }));
    const read = readMoney({ text: money, at: part.at }, into);
    if (read) elsewhere[where] = read;
  }
  return shown ? [{ at: value.at, ...(variant ? { variant } : {}), shown, ...elsewhere }] : [];
}

function readMoney(w: Written, into: Gathered): Exact | undefined {
  const money = parsePrice(w, into.problems);
  if (!money || money.compare(0) > 0) return money;
  into.problems.push(problem("price-nothing", w.at, { found: w.text }));
  return undefined;
}

/** Prices of variants that the recipe does not offer, and a second price of one. */
export function checkPrices(recipe: Recipe): Problem[] {
  if (countVariants(recipe) > mostVariants) return [];
  const variants = variantsOf(recipe);
  const known = variants.map((one) => one.slug);
  return recipe.prices.flatMap(({ variant }, i): Problem[] => {
    if (!variant) return [];
    const meant = variants.find((one) => isCalled(variant.text, one));
    const what = variant.text;
    if (!meant) return [problem("price-no-variant", variant.at, { what, known, nearest: nearest(slug(what), known) })];
    const before = recipe.prices.slice(0, i).find((one) => one.variant && isCalled(one.variant.text, meant));
    return before ? [problem("price-twice", variant.at, { what }, before.at)] : [];
  });
}

/** What is asked for this variant: its own line, else the one for all. */
export function askedFor(
  { prices }: Pick<Recipe, "prices">,
  of: { readonly slug: string; readonly name: string },
): AskedPrice | undefined {
  return prices.find(({ variant }) => variant === undefined || isCalled(variant.text, of));
}
