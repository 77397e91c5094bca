// The demo's pieces through the planner: added up again, proven, and what boards are bought.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/cutting/check-plan.ts";
import { boardsAsTheyLie } from "../../src/findings/board-plan.ts";
import { planBoardsCheapest } from "../../src/findings/cutting-plan.ts";
import { workOut } from "../../src/item/work-out.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { yardFor } from "../../src/site/yard-for.ts";
import { exact, zero } from "../../src/units/length.ts";
import { root } from "../whole/demo.ts";

const folder = join(root, "content/recipes");

/** Dollars: three boards of 96 at 5.48 for the corral, two of 72 at 3.98 and four of 96 at 5.48 for the rack; and what first fit took. */
const bought: Readonly<Record<string, readonly [cost: number, firstFit: number]>> = {
  "hose-and-pot-corral.md": [16.44, 19.9],
  "seedling-hardening-rack.md": [29.88, 31.84],
};

describe("boards for the demo's items", () => {
  for (const name of readdirSync(folder).filter((file) => file.endsWith(".md"))) {
    const file = join(folder, name);
    const { yard } = yardFor(file, undefined);
    const { recipe } = readRecipe(file, readFileSync(file, "utf8"));
    const item = yard && recipe ? workOut(recipe, yard).item : undefined;
    if (!item) throw new Error(`${name} can't be worked out`);
    const kerf = exact(1, 8);

    it(`${item.title}: proven, added up again, and as many dollars as its boards`, () => {
      const plans = planBoardsCheapest(item.pieces, kerf, "bought");
      for (const { problem, plan } of plans) {
        expect(checkPlan(problem, plan)).toEqual([]);
        expect(plan.proven).toBe(true);
      }
      const cost = plans.reduce((sum, { plan }) => sum.add(plan.cost), zero);
      const boards = boardsAsTheyLie(plans, kerf).reduce((sum, { stock }) => sum.add(stock.price), zero);
      expect(boards.equals(cost)).toBe(true);
      const [dollars, firstFit] = bought[name] ?? [cost.valueOf(), Number.POSITIVE_INFINITY];
      expect(cost.valueOf()).toBe(dollars);
      expect(cost.valueOf()).toBeLessThan(firstFit);
    });
  }
});
