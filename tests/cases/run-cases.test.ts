// Broken recipes in plain text -> exactly the problems that stand below them.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { workVariants } from "../../src/item/variants/work-variants.ts";
import { workOut } from "../../src/item/work-out.ts";
import type { Problem } from "../../src/problems/problem.ts";
import { sentences } from "../../src/problems/sentences.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { demoYard } from "./demo-yard.ts";
import { readCases } from "./read-cases.ts";

const testFolder = join(import.meta.dirname, "..");
const cases = readCases();
const yard = demoYard();

function problemsOf(recipe: string): readonly Problem[] {
  const read = readRecipe("case.md", recipe);
  if (!read.recipe) return read.problems;
  const built = read.recipe.choices.some(({ name }) => name.text !== "finish");
  return (built ? workVariants(read.recipe, yard) : workOut(read.recipe, yard)).problems;
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

it("every problem a maker can be told of stands in a case or is asked for by name in a test", () => {
  const seen = new Set(cases.flatMap((each) => each.expected.map((line) => line.split(" ")[1])));
  const tests = readdirSync(testFolder, { recursive: true, encoding: "utf8" }).filter((name) =>
    name.endsWith(".test.ts"),
  );
  const named = tests.map((name) => readFileSync(join(testFolder, name), "utf8")).join("\n");
  const untried = Object.keys(sentences).filter(
    (code) => !seen.has(code) && !new RegExp(`[ "\`]${code}["\` ]`).test(named),
  );
  expect(untried).toEqual([]);
});

it("no two stages have a code in common", () => {
  const folder = join(testFolder, "../src/problems/sentences");
  const codes = readdirSync(folder).flatMap((name) =>
    [...readFileSync(join(folder, name), "utf8").matchAll(/^ {2}"?([a-z][a-z0-9-]*)"?: \(/gm)].map((found) => found[1]),
  );
  expect(codes.filter((code, i) => codes.indexOf(code) !== i)).toEqual([]);
});
