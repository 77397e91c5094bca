// A content folder's texts -> everything worked out, and every problem of every file.

import { type Ordered, orderedOf } from "../findings/ordered.ts";
import type { Summary } from "../leaves/revised/summary.ts";
import { parseSummary } from "../leaves/revised/summary-schema.ts";
import { type Problem, problem } from "../problems/problem.ts";
import { textUnder } from "../problems/yaml-tree.ts";
import { readFrontMatter } from "../recipe/front-matter.ts";
import { checkHiddenCharacters } from "../recipe/hidden-characters.ts";
import { readRecipe } from "../recipe/read-recipe.ts";
import type { Recipe } from "../recipe/recipe.ts";
import { readOrders } from "../yard/read-orders.ts";
import { checkLetters, checkPlans } from "./check-paper.ts";
import { type Content, drawingOf, type SourceFile, startOf } from "./content-files.ts";
import { notPrinted } from "./summary-for.ts";
import { type WorkedRecipe, workRecipe } from "./work-recipe.ts";
import { readYardAndShop, type YardAndShop } from "./yard-of.ts";

export type WorkedContent = YardAndShop & {
  readonly recipes: readonly WorkedRecipe[];
  /** What was kept when sheets were printed, by the recipe's slug; private. */
  readonly printed: ReadonlyMap<string, Summary>;
  /** Those that can be made; private. */
  readonly orders: readonly Ordered[];
};

/** Drafts, whole or broken, are left out: `problems` and `work` look at them. Recipes come in the order of their slugs. */
export function workContent(content: Content): WorkedContent {
  const yardAndShop = readYardAndShop(content.yard, content.shop);
  const recipes = content.recipes
    .filter((file) => !isDraft(file))
    .map((file) => workRecipe(file, yardAndShop))
    .sort((a, b) => compare(a.recipe?.slug ?? "", b.recipe?.slug ?? "") || compare(a.file, b.file));
  const { orders, problems: ordering } = workOrders(content.orders, recipes);
  const working = recipes.flatMap((worked) => worked.problems);
  const published = content.recipes.filter((file) => !isDraft(file));
  const kept = content.printed.map(({ file, text }) => ({ file, summary: parseSummary(text) }));
  const printed = new Map(kept.flatMap(({ summary }) => (summary ? [[summary.slug, summary] as const] : [])));
  const unread = kept.flatMap(({ file, summary }) => (summary ? [] : [notPrinted(file)]));
  const paper = [
    ...checkLetters([...published, ...content.yard, ...content.shop]),
    ...checkPlans(published, yardAndShop.shop),
  ];
  return {
    ...yardAndShop,
    ...{ recipes, orders, printed },
    problems: [...yardAndShop.problems, ...working, ...findSameSlugs(recipes), ...paper, ...ordering, ...unread],
  };
}

/** Where a recipe has a problem, orders wait: what is ordered may be what is broken. */
function workOrders(
  files: readonly SourceFile[],
  recipes: readonly WorkedRecipe[],
): Pick<WorkedContent, "orders" | "problems"> {
  const hidden = files.flatMap(({ file, text }) => checkHiddenCharacters(file, text));
  if (hidden.length > 0) return { orders: [], problems: hidden };
  const read = readOrders(files);
  if (recipes.some(({ problems }) => problems.length > 0)) return { orders: [], problems: read.problems };
  const goods = recipes.map(({ items }) => items);
  const worked = read.orders.map((order) => orderedOf(order, goods));
  return {
    orders: worked.flatMap(({ ordered }) => ordered ?? []),
    problems: [...read.problems, ...worked.flatMap(({ problems }) => problems)],
  };
}

/** Every recipe that can be read, drafts too: photographs may lie there for one that isn't in the site yet. */
export const recipesIn = (content: Content, { recipes }: WorkedContent): readonly (Recipe | undefined)[] => [
  ...recipes.map(({ recipe }) => recipe),
  ...content.recipes.filter(isDraft).map((source) => readRecipe(source.file, source.text, drawingOf(source)).recipe),
];

/** Read from the front-matter alone, so that a draft may have any problem. */
const isDraft = ({ file, text }: SourceFile): boolean =>
  textUnder(readFrontMatter(file, text).tree, "draft")?.text === "yes";

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** One problem for each recipe whose address another has, naming the other. */
function findSameSlugs(recipes: readonly WorkedRecipe[]): Problem[] {
  const problems: Problem[] = [];
  for (const { recipe, file } of recipes) {
    const other = recipe && recipes.find((one) => one.file !== file && one.recipe?.slug === recipe.slug);
    if (other) {
      problems.push(problem("same-slug", startOf(file), { slug: recipe.slug, other: other.file }, startOf(other.file)));
    }
  }
  return problems;
}
