// Lines that say their board themselves, and joins of several lines at once.
import { describe, expect, it } from "vitest";
import { workOut } from "../../src/item/work-out.ts";
import { printProblem } from "../../src/problems/print.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { inches } from "../../src/units/length.ts";
import { demoYard } from "../cases/demo-yard.ts";
import { lineOf, recipeOf } from "./parse.ts";

const crate = (joins: string) => `---
title: Crate end
overall: 20 x fit x fit
stand:
  slats: 3 of fence board ripped to 2, on edge, from left to right, at front, gap 1, bottom at bottom
  posts: 2 of fence board ripped to 1 1/2 planed to 1/2, upright, facing front, from bottom to top of slats 3, against back of slats, spread left to right
joins:
  ${joins}
finish:
  plain: none
---
An end {thickness of posts} and {thickness of slats} thick.

## Build it

1. Screw the **slats** to the **posts**.
`;

describe("a line that says its board itself", () => {
  it("is a piece of its own: slats 2 wide, posts 1 1/2 wide, and 3 * 2 + 2 * 1 = 8 long", () => {
    const recipe = recipeOf(crate("slats to posts: 1 screw No. 6 x 1"));
    expect(recipe.pieces.map(({ name, board }) => `${name.text} | ${board.text}`)).toEqual([
      "slats of fence board | fence board",
      "posts of fence board | fence board",
    ]);
    const { item, problems } = workOut(recipe, demoYard());
    expect(problems.map(printProblem)).toEqual([]);
    expect(
      item?.pieces.map(({ mark, count, length, width, thickness }) => [
        mark,
        count,
        ...[length, width, thickness].map(inches),
      ]),
    ).toEqual([
      ["A", 3, 20, 2, 0.625],
      ["B", 2, 8, 1.5, 0.5],
    ]);
  });

  it("tells where no board follows", () => {
    expect(lineOf("4 of, upright").problems.map((p) => p.code)).toEqual(["form-broken"]);
    expect(lineOf("4 of ripped to 2, upright").problems.map((p) => p.says)[0]).toContain(
      "the name of a board in the yard",
    );
  });

  it("needs no count", () => {
    expect(lineOf("of fence board, upright").line).toMatchObject({ count: 1, what: { text: "rails of fence board" } });
  });
});

describe("a join of several lines at once", () => {
  it("is a rule for each: slats and posts to posts and slats are four", () => {
    const told = readRecipe("test.md", crate("slats and posts to posts and slats: glue"));
    expect(told.recipe?.joins.map(({ a, b }) => `${a.text} to ${b.text}`)).toEqual([
      "slats to posts",
      "slats to slats",
      "posts to posts",
      "posts to slats",
    ]);
  });

  it("keeps the `and` between numbers: slats 1 and 3 and slats 2 are two", () => {
    const told = readRecipe("test.md", crate("slats 1 and 3 and slats 2 to posts: 1 screw No. 6 x 1"));
    expect(told.recipe?.joins.map(({ a }) => a.text)).toEqual(["slats 1 and 3", "slats 2"]);
  });
});
