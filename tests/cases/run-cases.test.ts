// Broken recipes in plain text -> exactly the problems that stand below them.
import { describe, expect, it } from "vitest";
import { workOut } from "../../src/item/work-out.ts";
import type { Problem } from "../../src/problems/problem.ts";
import { itemSentences } from "../../src/problems/sentences/item.ts";
import { recipeSentences } from "../../src/problems/sentences/recipe.ts";
import { treeSentences } from "../../src/problems/sentences/tree.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { demoYard } from "./demo-yard.ts";
import { readCases } from "./read-cases.ts";

const cases = readCases();
const yard = demoYard();

function problemsOf(recipe: string): readonly Problem[] {
  const read = readRecipe("case.md", recipe);
  return read.recipe ? workOut(read.recipe, yard).problems : read.problems;
}

const asLine = (p: Problem): string => `${p.at.line}:${p.at.column} ${p.code} ${p.says}`;

describe("broken recipes", () => {
  for (const { title, from, recipe, expected } of cases)
    it(`${title} (${from})`, () => {
      const problems = problemsOf(recipe);
      expect(problems.map(asLine).join("\n")).toBe(expected.join("\n"));
      for (const each of problems) expect(each.mend).toMatch(/^\S.*[.…)}”"]$/);
    });

  it("there are at least fifty of them", () => {
    expect(cases.filter((each) => each.expected.length > 0).length).toBeGreaterThanOrEqual(50);
  });
});

describe("every problem a recipe can have stands in some case", () => {
  const seen = new Set(cases.flatMap((each) => each.expected.map((line) => line.split(" ")[1])));
  for (const code of Object.keys({ ...treeSentences, ...recipeSentences, ...itemSentences }))
    it(code, () => {
      expect([...seen]).toContain(code);
    });
});
