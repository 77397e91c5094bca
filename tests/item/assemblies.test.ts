import { describe, expect, test } from "vitest";
import { workOut } from "../../src/item/work-out.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { inches } from "../../src/units/length.ts";
import { demoYard } from "../cases/demo-yard.ts";
import { member, placed } from "./placing.ts";

const table = `
overall: 60 x 20 x fit
pieces:
  stud: 2x4
  plank: 2x6
panels:
  flank:
    size: width-of-horse x 24
    posts: 2 stud, upright, from bottom to top, spread left to right
    rail: 1 stud, level, between posts, top at top
assemblies:
  horse:
    size: 10 x width-of-horse x 24
    near-side: flank, at left
    far-side: flank, at right
    ledge: 1 stud, flat, between near-side posts and far-side posts, centred front to back, top at top
stand:
  left-horse: horse, left at 5, at front
  right-horse: horse, facing back, right at width - 5, at front
  planks: 3 plank, flat, from left to right, on left-horse, spread front to back
`.replaceAll("width-of-horse", "20");

describe("two horses of two sides each, used again and turned", () => {
  const placing = placed(table);

  test("have 2 x (2 x (2 + 1) + 1) + 3 = 17 members, named by their paths", () => {
    expect(placing.members).toHaveLength(17);
    expect(member(placing, "left-horse/near-side/posts/2").panel).toBe("left-horse/near-side");
    expect(member(placing, "left-horse/near-side/posts/2").assembly).toBe("left-horse");
  });

  test("stand with the left horse's sides at 5 and 5 + 10 - 1 1/2 = 13 1/2", () => {
    expect(inches(member(placing, "left-horse/near-side/posts/1").min.x)).toBe(5);
    expect(inches(member(placing, "left-horse/far-side/posts/1").min.x)).toBe(13.5);
  });

  test("turn the right horse round: its near side stands at the right, 60 - 5 - 1 1/2 = 53 1/2", () => {
    expect(inches(member(placing, "right-horse/near-side/posts/1").min.x)).toBe(53.5);
    expect(inches(member(placing, "right-horse/far-side/posts/1").min.x)).toBe(45);
  });

  test("show their good faces outside: the turned near side looks right", () => {
    expect(member(placing, "left-horse/near-side/posts/1").lie.show).toEqual({ axis: "x", sign: -1 });
    expect(member(placing, "right-horse/near-side/posts/1").lie.show).toEqual({ axis: "x", sign: 1 });
  });

  test("have ledges 10 - 2 x 1 1/2 = 7 long", () => {
    expect(inches(member(placing, "right-horse/ledge").length)).toBe(7);
  });
});

const whole = (body: string) => `---
title: Plank table
${table.trim()}
joins:
  rail to posts: 2 pocket screw No. 8 x 2 1/2, back
  flank rail to horse ledge: 2 screw No. 10 x 3 1/2
  planks to rail: 1 screw No. 10 x 3 1/2
finish:
  oil: 2 coats oil on all
---
A table.
${body}`;

const steps = `
## Screw up the sides
makes flank, 4 times

1. Lay the **posts** down.
2. Screw the **rail** between them.

## Put the horses together
makes horse, twice

1. Stand **near-side** and **far-side** up; screw the **ledge** between them.

## Lay the top

1. Stand **left-horse** and **right-horse** up.
2. Screw the **planks** down.
`;

const told = (body: string) => {
  const read = readRecipe("x.md", whole(body));
  const problems = read.recipe ? workOut(read.recipe, demoYard()).problems : read.problems;
  return problems.map((p) => `${p.code} ${p.says}`);
};

describe("steps of an assembly", () => {
  test("name each board in its panel, each panel in its assembly, each assembly in the item", () => {
    expect(told(steps)).toEqual([]);
  });

  test("that forget a side of the horse are told so", () => {
    expect(told(steps.replace("and **far-side** up", "up")).join("\n")).toContain("far-side");
  });

  test("that make one horse too few are told so", () => {
    expect(told(steps.replace("makes horse, twice", "makes horse, once")).join("\n")).toContain("made-count");
  });

  test("that stand only one horse are told of the other", () => {
    expect(told(steps.replace(" and **right-horse** up", " up")).join("\n")).toContain("right-horse");
  });
});
