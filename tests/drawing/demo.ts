// The demo's two items worked out from their recipes, and every drawing that is made of them.
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
import { drawStep } from "../../src/drawing/step-picture.ts";
import type { Item } from "../../src/item/item.ts";
import { workOut } from "../../src/item/work-out.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import type { Division } from "../../src/units/division.ts";
import { readYard } from "../../src/yard/read-yard.ts";

const content = join(import.meta.dirname, "../../content");
export const sixteenths: Division = { unit: "in", per: 16 };
export const millimetres: Division = { unit: "mm" };

const { yard } = readYard(
  readdirSync(join(content, "yard")).map((file) => ({ file, text: readFileSync(join(content, "yard", file), "utf8") })),
);

export function demoItem(slug: string, variant?: string): Item {
  const { recipe, problems } = readRecipe(slug, readFileSync(join(content, "recipes", `${slug}.md`), "utf8"));
  if (recipe === undefined || yard === undefined) throw new Error(`${slug} can't be read: ${problems[0]?.code}`);
  const { item } = workOut(recipe, yard, variant);
  if (item === undefined) throw new Error(`${slug} can't be worked out`);
  return item;
}

export const corral = demoItem("hose-and-pot-corral");
export const rack = demoItem("seedling-hardening-rack");

const flat = (item: Item, division: Division, sheet: Sheet): Drawing[] => [
  ...differentPanels(item).map((panel) => drawPanel(item, panel, division, sheet)),
  ...item.pieces.map((piece) => drawPiece(item, piece, division, sheet)),
];

/** Every drawing of an item in every size it is made in. */
export const drawingsOf = (item: Item): readonly Drawing[] => [
  ...[binderSheet, phoneSheet].flatMap((sheet) => [drawExploded(item, sheet), ...flat(item, sixteenths, sheet)]),
  ...item.sections.flatMap((section) => section.steps.map((step) => drawStep(item, step))),
  ...[storeSheet, phoneSheet].map((sheet) => drawMeasuredView(item, sixteenths, sheet)),
  ...item.variants.map(({ slug }) => drawCoatedView(demoItem(item.slug, slug))),
];

/** The same with lengths in whole millimetres, where lengths stand on it. */
export const metricDrawingsOf = (item: Item): readonly Drawing[] => [
  ...flat(item, millimetres, binderSheet),
  ...[storeSheet, phoneSheet].map((sheet) => drawMeasuredView(item, millimetres, sheet)),
];
