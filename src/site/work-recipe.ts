// The text of one recipe -> what it says and its worked-out variants, the standard one first, once for the same texts.
import { findShortages } from "../findings/board-shortages.ts";
import type { Item } from "../item/item.ts";
import { workVariants } from "../item/variants/work-variants.ts";
import { inReadingOrder, type Problem } from "../problems/problem.ts";
import { readRecipe } from "../recipe/read-recipe.ts";
import type { Recipe } from "../recipe/recipe.ts";
import { drawingOf, type SourceFile } from "./content-files.ts";
import { hashOf, Remembered } from "./remember.ts";
import type { YardAndShop } from "./yard-of.ts";

/** `items` is empty where a problem keeps the recipe from being read or worked out. */
export type WorkedRecipe = {
  readonly file: string;
  readonly recipe: Recipe | undefined;
  readonly items: readonly Item[];
  readonly problems: readonly Problem[];
  readonly hash: string;
};

const known = new Remembered<WorkedRecipe>();

/** Where no yard could be read, the recipe is only read. */
export function workRecipe(source: SourceFile, { yard, shop, hash: yardHash }: YardAndShop): WorkedRecipe {
  const { file, text, drawings = [] } = source;
  const hash = hashOf(yardHash, file, text, ...drawings.flatMap((drawing) => [drawing.name, drawing.text]));
  return known.answer(hash, () => {
    const { recipe, problems } = readRecipe(file, text, drawingOf(source));
    if (!recipe || !yard) return { file, recipe, items: [], problems, hash };
    const worked = workVariants(recipe, yard, shop?.division);
    const all = inReadingOrder([...problems, ...worked.problems]);
    // Boards can be planned only for items that are right.
    if (shop && all.length === 0) all.push(...worked.items.flatMap((item) => findShortages(item, shop.kerf)));
    return { file, recipe, items: worked.items, problems: all, hash };
  });
}

/** Lets go of recipes that were in neither this round nor the one before. */
export const forgetOldRecipes = (): void => known.turn();
