// The demo's pieces through the planner: added up again, proven, and never dearer than first fit.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/cutting/check-plan.ts";
import { planBoards } from "../../src/findings/board-plan.ts";
import { planBoardsCheapest } from "../../src/findings/cutting-plan.ts";
import { workOut } from "../../src/item/work-out.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { yardFor } from "../../src/site/yard-for.ts";
import { exact, zero } from "../../src/units/length.ts";
import { root } from "../whole/demo.ts";

const folder = join(root, "content/recipes");

describe("boards for the demo's items", () => {
  for (const name of readdirSync(folder).filter((file) => file.endsWith(".md"))) {
    const file = join(folder, name);
    const { yard } = yardFor(file, undefined);
    const { recipe } = readRecipe(file, readFileSync(file, "utf8"));
    const item = yard && recipe ? workOut(recipe, yard).item : undefined;
    if (!item) throw new Error(`${name} can't be worked out`);
    const kerf = exact(1, 8);

    it(`${item.title}: no dearer than first fit, and added up again`, () => {
      const plans = planBoardsCheapest(item.pieces, kerf);
      for (const { problem, plan } of plans) expect(checkPlan(problem, plan)).toEqual([]);
      const cost = plans.reduce((sum, { plan }) => sum.add(plan.cost), zero);
      const firstFit = planBoards(item.pieces, kerf).reduce((sum, { stock }) => sum.add(stock.price), zero);
      expect(cost.compare(firstFit)).toBeLessThanOrEqual(0);
    });
  }
});
