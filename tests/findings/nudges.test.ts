// Sizes that save wood when they are changed a little, by hand; and that every one told is a true saving.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { planBoards } from "../../src/findings/board-plan.ts";
import { findNudges, type Nudge } from "../../src/findings/nudges.ts";
import { nudgeWords } from "../../src/findings/nudges-json.ts";
import { workOut } from "../../src/item/work-out.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { yardFor } from "../../src/site/yard-for.ts";
import { exact } from "../../src/units/length.ts";
import { readYard } from "../../src/yard/read-yard.ts";
import { root } from "../whole/demo.ts";
import { riserRecipe, riserYard } from "./riser.ts";
import { kerf } from "./timber.ts";

const sixteenths = { unit: "in", per: 16 } as const;

function nudgesOf(text: string, lengths: string, most = exact(1, 2)): { found: Nudge[]; said: string[] } {
  const { yard } = readYard([{ file: "yard.yaml", text: riserYard(lengths) }]);
  const { recipe, problems } = readRecipe("riser.md", text);
  if (!yard || !recipe) throw new Error(problems.map(({ says }) => says).join("\n"));
  const found = findNudges(recipe, yard, kerf, most, sixteenths);
  return { found, said: found.map((one) => nudgeWords(one, sixteenths)) };
}

const wide = riserRecipe.replace("overall: 24 x", "overall: 32 1/8 x");
const stud = "48: 9.60";

describe("a riser of a shelf and two legs of 8 out of boards of 48", () => {
  it("32 1/8 + 2 x 8 + 2 x 1/8 = 48 3/8 takes two boards; 31 3/4 takes 48, one board: 3/8 saves 9.60", () => {
    const { said, found } = nudgesOf(wide, stud);
    expect(said).toEqual(["width 31 3/4 instead of 32 1/8: one board fewer, 9.60 less"]);
    expect(found[0]?.overall.width.valueOf()).toBe(31.75);
  });

  it("by at most 1/4 nothing is saved", () => {
    expect(nudgesOf(wide, stud, exact(1, 4)).said).toEqual([]);
  });

  it("a size that is fixed is left alone", () => {
    expect(nudgesOf(wide.replace("pieces:", "fixed: width\npieces:"), stud).said).toEqual([]);
  });

  it("so is one that a claim holds", () => {
    expect(nudgesOf(wide.replace("finish:", "claims:\n  width: 32 1/8\nfinish:"), stud).said).toEqual([]);
  });

  it("where one board holds all there is nothing to save", () => {
    expect(nudgesOf(riserRecipe, stud).said).toEqual([]);
  });

  it("what is neither size, piece nor line can't be fixed: fixed-unknown, with the nearest", () => {
    const { problems } = readRecipe("riser.md", wide.replace("pieces:", "fixed: width, shelv\npieces:"));
    expect(problems.map(({ code, nearest, at }) => [code, nearest, at.line])).toEqual([["fixed-unknown", "shelf", 4]]);
  });
});

it("the trestle pair's top at 71 15/16 instead of 72 comes out of six-foot boards: what is told is saved when the recipe says so", () => {
  const file = join(root, "content/recipes/trestle-pair-with-plank-top.md");
  const text = readFileSync(file, "utf8");
  const { yard } = yardFor(file, undefined);
  const costOf = (of: string): number => {
    const { recipe } = readRecipe(file, of);
    const item = recipe && yard ? workOut(recipe, yard).item : undefined;
    if (!item) throw new Error("it can't be worked out");
    return planBoards(item.pieces, kerf).reduce((sum, { stock }) => sum + stock.price.valueOf(), 0);
  };
  const { recipe } = readRecipe(file, text);
  if (!recipe || !yard) throw new Error("it can't be read");
  const [best] = findNudges(recipe, yard, kerf, exact(1, 2), sixteenths);
  expect(best && nudgeWords(best, sixteenths)).toMatch(/^width 71 15\/16 instead of 72: /);
  expect(costOf(text) - costOf(text.replace("overall: 72 x", "overall: 71 15/16 x"))).toBeCloseTo(
    best?.saves.cost.valueOf() ?? 0,
    9,
  );
});
