import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import type { Item } from "../../src/item/item.ts";
import { workOut } from "../../src/item/work-out.ts";
import { readingNotes } from "../../src/leaves/reading-notes.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { demoYard } from "../cases/demo-yard.ts";

const division = { unit: "in", per: 16 } as const;

function demoItem(slug: string): Item {
  const text = readFileSync(join(import.meta.dirname, `../../content/recipes/${slug}.md`), "utf8");
  const { recipe } = readRecipe(slug, text);
  const item = recipe && workOut(recipe, demoYard()).item;
  if (!item) throw new Error(`${slug} can't be worked out`);
  return item;
}

it("the corral's rails 1 is the lowest, at 3 from the floor; its slats aren't called by number", () => {
  expect(readingNotes(demoItem("hose-and-pot-corral"), "", division)).toEqual([
    "Numbers count in order: rails 1 is the lowest.",
  ]);
});

it("the rack's 16 boards count from the front, 4 to a deck, decks from below; its strips from below", () => {
  const [orders] = readingNotes(demoItem("seedling-hardening-rack"), "", division);
  expect(orders).toContain("strips 1 is the lowest");
  expect(orders).toContain("boards 1 is the front one of the lowest");
});

it("of the trestle's 4 planks the second alone is bored: it has a mark of its own", () => {
  const notes = readingNotes(demoItem("trestle-pair-with-plank-top"), "", division);
  expect(notes[0]).toContain("planks 1 is the front one");
  expect(notes[1]).toBe("By mark: planks 1 D, 2 E, 3 D, 4 D.");
});

it("full and scant are told once, and only where they are printed: less than half of 1/16 is 1/32", () => {
  const item = demoItem("hose-and-pot-corral");
  expect(readingNotes(item, "Spacer block 1 1/8 scant", division).at(-1)).toMatch(/less than 1.32 in\.$/);
  expect(readingNotes(item, "Spacer block 1 1/8", division).join(" ")).not.toMatch(/scant/);
});
