import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import type { Item } from "../../src/item/item.ts";
import { workOut } from "../../src/item/work-out.ts";
import { binderEdition } from "../../src/leaves/edition.ts";
import { panelsSheet } from "../../src/leaves/panels-sheet.ts";
import { piecesTable } from "../../src/leaves/pieces-table.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { demoYard } from "../cases/demo-yard.ts";
import { plainNumber } from "./model-numbers.ts";

const division = { unit: "in", per: 16 } as const;
const edition = binderEdition(division);

function demoItem(slug: string): Item {
  const text = readFileSync(join(import.meta.dirname, `../../content/recipes/${slug}.md`), "utf8");
  const { recipe } = readRecipe(slug, text);
  const item = recipe && workOut(recipe, demoYard()).item;
  if (!item) throw new Error(`${slug} can't be worked out`);
  return item;
}

const workOn = (slug: string, name: string): string | undefined =>
  piecesTable(demoItem(slug), edition.bare)
    .rows.find((row) => row[5] === name)
    ?.at(-1);

it("the trestle's legs splay 14°: mitred 14° at both ends, its brace too, with 2 pocket holes at each end", () => {
  expect(workOn("trestle-pair-with-plank-top", "trestle legs")).toBe("mitre 14° both ends, crosscut");
  expect(workOn("trestle-pair-with-plank-top", "trestle brace")).toBe("mitre 14° both ends, crosscut, 4 pocket holes");
});

it("the planter's slats stand between walls that lean 12°: bevelled 12° at both ends", () => {
  expect(workOn("tapered-herb-planter", "floor-slats")).toMatch(/^rip, bevel 12° both ends, crosscut/);
});

it("a diagonal is told only where boards have corners to hook on, and as long as the drawing's: 39 11/16 on the face", () => {
  const told = (slug: string) =>
    panelsSheet(demoItem(slug), division, edition).map(({ name, facts, picture }) => ({
      name,
      value: facts.find((fact) => fact.name.startsWith("Corner"))?.value,
      drawn: picture.svg.html,
    }));
  expect(told("hose-and-pot-corral")[0]?.value).toBe("39\u00a011\u204416 in");
  for (const { value, drawn } of told("trestle-pair-with-plank-top")) {
    if (value !== undefined) expect(plainNumber(drawn)).toContain(plainNumber(value).replace(" in", ""));
  }
});
