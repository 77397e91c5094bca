// `shopleaf nudges`: one recipe -> the sizes that, changed a little, save boards or money, as JSON.
import { findNudges } from "../../findings/nudges.ts";
import { nudgesJson } from "../../findings/nudges-json.ts";
import { workVariants } from "../../item/variants/work-variants.ts";
import { readRecipe } from "../../recipe/read-recipe.ts";
import { sawsOf } from "../../yard/saws.ts";
import { drawingOf, isProblem, readSource } from "../content-files.ts";
import { printJson, tellProblems } from "../print-json.ts";
import { WrongCall } from "../wrong-call.ts";
import { yardFor } from "../yard-for.ts";
import { parseOptions } from "./options.ts";

/** Only a recipe that works out without a problem can be nudged. */
export async function nudges(words: readonly string[]): Promise<number> {
  const { given, alone } = parseOptions(words, ["content"]);
  const [path, ...more] = alone;
  if (path === undefined || more.length > 0) throw new WrongCall(`nudges takes one recipe, not ${alone.length}`);
  const source = readSource(path);
  if (isProblem(source)) return tellProblems([source]);
  const { recipe, problems } = readRecipe(source.file, source.text, drawingOf(source));
  const { yard, shop, problems: yardProblems } = yardFor(path, given.content);
  if (!recipe || !yard || !shop) return tellProblems([...problems, ...yardProblems]);
  const worked = workVariants(recipe, yard, shop.division);
  const all = [...problems, ...yardProblems, ...worked.problems];
  if (all.length > 0) return tellProblems(all);
  const found = findNudges(recipe, yard, shop.kerf, sawsOf(shop).nudge, shop.division);
  printJson(nudgesJson(found, shop.division));
  return tellProblems([]);
}
