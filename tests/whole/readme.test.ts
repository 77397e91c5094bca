// The README's own recipe: it must build with the demo's yard, as it stands there.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { workOut } from "../../src/item/work-out.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { inches } from "../../src/units/length.ts";
import { demoYard } from "../cases/demo-yard.ts";
import { root } from "./demo.ts";

test("the README's boot tray builds: 2 1/2 + 5/8 = 3 1/8 high, its four boards (12 - 4 x 2 1/2) / 3 = 2/3 apart", () => {
  const readme = readFileSync(join(root, "README.md"), "utf8");
  const text = /```\n(---\n[\s\S]*?)```/.exec(readme)?.[1] ?? "";
  const { recipe, problems } = readRecipe("README.md", text);
  expect(problems.map((p) => p.says)).toEqual([]);
  const { item, problems: worked } = workOut(recipe as NonNullable<typeof recipe>, demoYard());
  expect(worked.map((p) => p.says)).toEqual([]);
  expect(inches(item?.overall.height ?? 0)).toBe(3.125);
  expect(inches(item?.gaps.find((g) => g.group === "boards")?.gap ?? 0)).toBeCloseTo(2 / 3, 12);
});
