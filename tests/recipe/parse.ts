// Short ways to read parts of a recipe in tests.
import type { Problem } from "../../src/problems/problem.ts";
import { readClause } from "../../src/recipe/clause.ts";
import { readLine } from "../../src/recipe/line.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import type { Clause, Line, Recipe, Reference, Sum } from "../../src/recipe/recipe.ts";
import { readReference } from "../../src/recipe/reference.ts";
import { gathered, Scan } from "../../src/recipe/scan.ts";
import { readSum } from "../../src/recipe/sum.ts";
import type { Exact } from "../../src/units/length.ts";

export const start = { file: "test.md", line: 1, column: 1 };
const written = (text: string) => ({ text, at: start });
const form = { form: "SUM", means: "A sum.", example: "1" };

export function sumOf(text: string): Sum {
  const scan = new Scan(written(text), form, gathered());
  const sum = readSum(scan);
  scan.end();
  return sum;
}

export function referenceOf(text: string): Reference {
  const scan = new Scan(written(text), form, gathered());
  const reference = readReference(scan, "the end");
  scan.end();
  return reference;
}

export function clauseOf(text: string): Clause {
  const into = gathered();
  const clause = readClause(written(text), into);
  if (!clause) throw new Error(into.problems[0]?.says);
  return clause;
}

export function lineOf(text: string): { line: Line; problems: readonly Problem[] } {
  const into = gathered();
  return { line: readLine(written("rails"), written(text), into), problems: into.problems };
}

export function recipeOf(text: string): Recipe {
  const { recipe, problems } = readRecipe("test.md", text);
  if (!recipe) throw new Error(problems.map((p) => `${p.at.line}:${p.at.column} ${p.says}`).join("\n"));
  return recipe;
}

/** The same data without places and source texts; fractions as texts. */
export function bareOf(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(bareOf);
  if (typeof value !== "object" || value === null) return value;
  if ("toFraction" in value) return (value as Exact).toFraction();
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, inner]) =>
      key === "at" || (key === "text" && "at" in value && Object.keys(value).length > 2) ? [] : [[key, bareOf(inner)]],
    ),
  );
}
