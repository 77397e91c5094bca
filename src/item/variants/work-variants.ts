// Recipe + yard -> every variant worked out, the standard one first, and what is wrong with any of them.
import { inReadingOrder, type Problem } from "../../problems/problem.ts";
import { within } from "../../problems/sentences/words.ts";
import { hangsOnFinish, recipeFor } from "../../recipe/choices-recipe-for.ts";
import { type Chosen, variantsOf } from "../../recipe/choices-variants.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import type { Division } from "../../units/division.ts";
import type { Yard } from "../../yard/yard.ts";
import type { Item } from "../item.ts";
import { type Bodied, sixteenths, workBodies, workFinished } from "../work-out.ts";

/** A problem of the standard variant is told once; one that only another variant has says which. */
export function workVariants(
  recipe: Recipe,
  yard: Yard,
  division: Division = sixteenths,
): { readonly items: readonly Item[]; readonly problems: readonly Problem[] } {
  const variants = variantsOf(recipe);
  // Finishes of one form stand in the same bodies, unless something stands only with some finish.
  const byFinish = hangsOnFinish(recipe);
  const bodies = new Map<string, Bodied>();
  const bodied = (chosen: Chosen): Bodied => {
    const key = byFinish ? chosen.slug : chosen.form;
    const known = bodies.get(key) ?? workBodies(recipeFor(recipe, chosen), yard);
    bodies.set(key, known);
    return known;
  };
  const worked = variants.map((variant) => ({
    variant,
    ...workFinished(recipe, yard, bodied(variant), { chosen: variant, variants }, division),
  }));
  const told = new Set<string>();
  const problems = worked.flatMap(({ variant, problems: found }) =>
    found.flatMap((each) => {
      const key = `${each.code} ${each.at.file}:${each.at.line}:${each.at.column}`;
      if (variant.form !== "" && told.has(key)) return [];
      told.add(key);
      return variant.form === "" ? [each] : [inVariant(each, variant.formName)];
    }),
  );
  return { items: worked.flatMap(({ item }) => (item ? [item] : [])), problems: inReadingOrder(problems) };
}

const inVariant = (each: Problem, name: string): Problem => ({ ...each, says: `In "${name}", ${within(each.says)}.` });
