import { describe, expect, test } from "vitest";
import { joinsOf } from "../../src/item/joins/joins.ts";
import { placeMembers } from "../../src/item/places/place-members.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { benchYard } from "./bench-yard.ts";

describe("glue", () => {
  const text = `---
title: Two
overall: 20 x fit x fit
pieces:
  stud: 2x4
stand:
  low: stud, flat, from left to right, at front, bottom at 0
  high: stud, flat, from left to right, at front, on low
joins:
  high to low: glue
---
`;
  const { recipe } = readRecipe("x.md", text);
  const { placing } = placeMembers(recipe ?? fail(), benchYard);
  const joined = (yard: typeof benchYard, glue?: string) => {
    const rules = (recipe ?? fail()).joins.map((rule) => ({
      ...rule,
      ways: rule.ways.map((way) =>
        way.kind === "glue" && glue !== undefined ? { ...way, glue: { text: glue, at: way.at } } : way,
      ),
    }));
    const patch = [
      [0, 0, 1.5],
      [20, 0, 1.5],
      [20, 3.5, 1.5],
      [0, 3.5, 1.5],
    ] as const;
    const contact = { a: "low", b: "high", area: 70, normal: [0, 0, 1], patch } as const;
    return joinsOf(rules, placing ?? fail(), [contact], yard, new Map());
  };

  test("is the yard's first where none is named", () => {
    expect(joined(benchYard).joins).toMatchObject([{ glue: "wood glue" }]);
  });

  test("the yard doesn't have is told with the nearest", () => {
    expect(joined(benchYard, "wood glu").problems).toMatchObject([{ code: "unknown-glue", nearest: "wood glue" }]);
    expect(joined({ ...benchYard, glues: [] }).problems).toMatchObject([{ code: "no-glue" }]);
  });
});

function fail(): never {
  throw new Error("the recipe has no place");
}
