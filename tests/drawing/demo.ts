// The demo's items worked out from their recipes, and every drawing that is made of them.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { drawCoatedView } from "../../src/drawing/coated-view.ts";
import type { Drawing } from "../../src/drawing/drawing.ts";
import { drawExploded } from "../../src/drawing/exploded-view.ts";
import { drawMeasuredView } from "../../src/drawing/measured-view.ts";
import { drawPanel } from "../../src/drawing/panel-drawing.ts";
import { differentPanels } from "../../src/drawing/panel-space.ts";
import { drawPiece } from "../../src/drawing/piece-drawing.ts";
import { binderSheet, phoneSheet, type Sheet, storeSheet } from "../../src/drawing/sheet.ts";
import { hasPicture } from "../../src/drawing/step-extras.ts";
import { drawStep } from "../../src/drawing/step-picture.ts";
import type { Item } from "../../src/item/item.ts";
import { workOut } from "../../src/item/work-out.ts";
import { printProblem } from "../../src/problems/print.ts";
import type { Problem } from "../../src/problems/problem.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import type { Division } from "../../src/units/division.ts";
import { readYard } from "../../src/yard/read-yard.ts";

const content = join(import.meta.dirname, "../../content");
export const sixteenths: Division = { unit: "in", per: 16 };
export const millimetres: Division = { unit: "mm" };

const { yard } = readYard(
  readdirSync(join(content, "yard")).map((file) => ({ file, text: readFileSync(join(content, "yard", file), "utf8") })),
);

/** A recipe's text worked out in the demo's yard, as the standard variant or as another. */
export function itemFrom(name: string, text: string, variant?: string): Item {
  const { recipe, problems } = readRecipe(name, text);
  if (recipe === undefined || yard === undefined) throw new Error(`${name} can't be read: ${printed(problems)}`);
  const worked = workOut(recipe, yard, variant);
  if (worked.item === undefined) throw new Error(`${name} can't be worked out: ${printed(worked.problems)}`);
  return worked.item;
}

const printed = (problems: readonly Problem[]): string => problems.map(printProblem).join("\n");

export const demoItem = (slug: string, variant?: string): Item =>
  itemFrom(slug, readFileSync(join(content, "recipes", `${slug}.md`), "utf8"), variant);

/** Every recipe of the demo. */
export const demoItems: readonly Item[] = readdirSync(join(content, "recipes"))
  .filter((file) => file.endsWith(".md"))
  .map((file) => demoItem(file.slice(0, -3)));

/** The first recipe of a chapter of the guide. */
export function guideItem(chapter: string): Item {
  const text = readFileSync(join(content, "guide", `${chapter}.md`), "utf8");
  const recipe = /^```recipe\n(.*?)^```/ms.exec(text)?.[1];
  if (recipe === undefined) throw new Error(`chapter ${chapter} has no recipe`);
  return itemFrom(chapter, recipe);
}

export const corral = demoItem("hose-and-pot-corral");
export const rack = demoItem("seedling-hardening-rack");

const flat = (item: Item, division: Division, sheet: Sheet): Drawing[] => [
  ...differentPanels(item).map((panel) => drawPanel(item, panel, division, sheet)),
  ...item.pieces.map((piece) => drawPiece(item, piece, division, sheet)),
];

/** Every drawing of an item in every size it is made in. */
export const drawingsOf = (
  item: Item,
  variant: (slug: string) => Item = (slug) => demoItem(item.slug, slug),
): readonly Drawing[] => [
  ...[binderSheet, phoneSheet].flatMap((sheet) => [drawExploded(item, sheet), ...flat(item, sixteenths, sheet)]),
  ...item.sections.flatMap((section) =>
    section.steps.filter((step) => hasPicture(item, step)).map((step) => drawStep(item, step)),
  ),
  ...[storeSheet, phoneSheet].map((sheet) => drawMeasuredView(item, sixteenths, sheet)),
  ...item.variants.map(({ slug }) => drawCoatedView(variant(slug))),
];

/** The same with lengths in whole millimetres, where lengths stand on it. */
export const metricDrawingsOf = (item: Item): readonly Drawing[] => [
  ...flat(item, millimetres, binderSheet),
  ...[storeSheet, phoneSheet].map((sheet) => drawMeasuredView(item, millimetres, sheet)),
];
