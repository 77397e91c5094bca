// `shopleaf work`: one recipe -> the worked-out item as JSON.
import { findShortages } from "../../findings/board-shortages.ts";
import { cutPlanJson } from "../../findings/cut-plan-json.ts";
import { moneyJson } from "../../findings/money-json.ts";
import { yardList } from "../../findings/yard-list.ts";
import { workJson } from "../../item/work-json.ts";
import { workOut } from "../../item/work-out.ts";
import { readRecipe } from "../../recipe/read-recipe.ts";
import { drawingOf, isProblem, readSource } from "../content-files.ts";
import { printJson, tellProblems } from "../print-json.ts";
import { WrongCall } from "../wrong-call.ts";
import { yardFor } from "../yard-for.ts";
import { parseOptions } from "./options.ts";

/** Prints the item even where it has problems, as long as there is one: overlaps are seen best in it. */
export async function work(words: readonly string[]): Promise<number> {
  const { given, alone } = parseOptions(words, ["variant", "content"]);
  const [path, ...more] = alone;
  if (path === undefined || more.length > 0) throw new WrongCall(`work takes one recipe, not ${alone.length}`);
  const source = readSource(path);
  if (isProblem(source)) return tellProblems([source]);
  const { recipe, problems } = readRecipe(source.file, source.text, drawingOf(source));
  const { yard, shop, problems: yardProblems } = yardFor(path, given.content);
  if (!recipe || !yard) return tellProblems([...problems, ...yardProblems]);
  const standard = workOut(recipe, yard, undefined, shop?.division);
  const offered = standard.item?.variants.map(({ slug }) => slug) ?? [];
  if (given.variant !== undefined && standard.item && !offered.includes(given.variant)) {
    throw new WrongCall(`${recipe.slug} has no variant "${given.variant}", only ${offered.join(", ")}`);
  }
  const worked = given.variant === undefined ? standard : workOut(recipe, yard, given.variant, shop?.division);
  const all = [...problems, ...yardProblems, ...worked.problems];
  const { item } = worked;
  // Boards can be planned only for an item that is right.
  if (item && shop && all.length === 0) all.push(...findShortages(item, shop.kerf));
  const found =
    item && shop && all.length === 0 ? { ...cutPlanJson(yardList(item, shop.kerf)), ...moneyJson(item, shop) } : {};
  if (item) printJson({ ...workJson(item), ...found });
  return tellProblems(all);
}
