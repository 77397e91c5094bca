import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { edgeGap } from "../../src/geometry/distance.ts";
import type { Driven, Item } from "../../src/item/item.ts";
import { workOut } from "../../src/item/work-out.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { demoYard } from "../cases/demo-yard.ts";
import { told, tried, worked } from "./bench-yard.ts";

const near = (v: readonly number[]) => v.map((x) => expect.closeTo(x, 9));
const rows = (item: Item): (readonly Driven[])[] => item.joins.map((join) => join.driven);

/** A 2x4 post on its face at a corner: a level rail comes to it from the right, another from the back, both 10 up. */
const corner = (joins: string, rail = "2x2") => `
overall: 20 x 20 x 20
pieces:
  stud: 2x2
  rail: ${rail}
stand:
  post: stud, upright, facing left, from bottom to top, at left, at front
  long-rail: rail, level, on edge, from right of post to right, at front, bottom at 10
  deep-rail: rail, level, on edge, from back of post to back, at left, bottom at 10
joins:
${joins}
`;

describe("two rows that would meet inside the wood", () => {
  test("No. 10 and No. 10 into one post must pass at (0.190 + 0.190) / 2 + 1/16 = 0.2525: the later moves 5/16 up", () => {
    const item = worked(corner("  post to long-rail: 1 screw No. 10 x 3\n  post to deep-rail: 1 screw No. 10 x 3"));
    const [[first] = [], [second] = []] = rows(item);
    // The first in the middle of its 1 1/2 x 1 1/2: 10 + 3/4.
    expect(first?.head).toEqual(near([0, 0.75, 10.75]));
    // 4/16 = 0.25 is less than 0.2525, so the next sixteenth: 10 3/4 + 5/16.
    expect(second?.head).toEqual(near([0.75, 0, 11.0625]));
  });

  test("two ways on one line stand clear of each other too: 2 screws, then a dowel in the middle of them", () => {
    const item = worked(
      corner("  post to long-rail: 1 screw No. 10 x 3; 1 dowel 3/8 x 2\n  post to deep-rail: glue", "2x4"),
    );
    const [screw, dowel] = rows(item)[0] ?? [];
    // (0.190 + 0.375) / 2 + 0.0625 = 0.345: 6/16.
    expect(Math.abs((dowel?.head[2] ?? 0) - (screw?.head[2] ?? 0))).toBeCloseTo(0.375, 9);
  });

  test("where 1 1/2 of height has no free place for two beside two, both lines are named with the numbers", () => {
    const { problems } = tried(
      corner("  post to long-rail: 2 screw No. 10 x 3\n  post to deep-rail: 2 screw No. 10 x 3"),
    );
    expect(problems.map((p) => p.code)).toEqual(["fasteners-cross"]);
    expect(problems[0]).toMatchObject({ at: { line: 13 }, also: { line: 12 }, found: "0" });
    expect(problems[0]?.says).toMatch(
      /^screw No\. 10 x 3 from post into deep-rail meets screw No\. 10 x 3 from post into long-rail inside the wood/,
    );
  });
});

describe("the same two boards on two lines", () => {
  const twice = (second: string) =>
    corner(`  post to long-rail: 1 screw No. 10 x 3\n  ${second}\n  post to deep-rail: glue`);

  test("are told with both lines, whichever way round", () => {
    expect(told(twice("long-rail to post: 1 pocket screw No. 8 x 2 1/2, back"))).toEqual([
      'joined-twice 13: long-rail and post are already held at the same place by "post to long-rail" on line 12.',
    ]);
  });

  test("may be glued besides", () => {
    expect(told(twice("long-rail to post: glue"))).toEqual([]);
  });
});

describe("a cut where a fastener stands", () => {
  const shelf = (cut: string) => `
overall: 20 x fit x fit
pieces:
  stud: 2x4
stand:
  board: stud, flat, from left to right, at front, bottom at 10
  legs: 2 stud, upright, facing left, from bottom to 10, at front, spread left to right
joins:
  board to legs: 2 screw No. 10 x 3
cuts:
  ${cut}
`;

  test("a hole 3/4 from the end and 7/8 from the edge is where the screw stands: all its 1 1/2 of wood", () => {
    expect(told(shelf("board: hole 1, 3/4 from left, 7/8 from front"))).toEqual([
      "fastener-in-cut 10: screw No. 10 x 3 from board into legs/1 stands 1 1/2 deep in board, but a hole takes away 1 1/2 of that wood.",
    ]);
  });

  test("a blind hole 1/2 deep, 1/4 off, takes 1/2 of 1 1/2; one 1 off is clear", () => {
    const [blind] = tried(shelf("board: hole 1, 1 from left, 7/8 from front, 1/2 deep, in top")).problems;
    expect(blind).toMatchObject({ code: "fastener-in-cut", also: { line: 12 }, found: "1 of wood round it" });
    expect(told(shelf("board: hole 1, 1 3/4 from left, 7/8 from front"))).toEqual([]);
  });

  test("a clearance hole 1/4 on its line is bored for it, and so is a counterbore", () => {
    expect(told(shelf("board: hole 1/4, 3/4 from both ends, 7/8 from both edges"))).toEqual([]);
    expect(told(shelf("board: hole 1/4, 3/4 from left, 7/8 from front, in top, counterbore 1/2 x 1/2"))).toEqual([]);
  });

  test("a hole across the leg, 1/2 below its top, takes its 1/4 of the 1 1/2 of bite", () => {
    expect(told(shelf("legs: hole 1/4, 1/2 from top, 7/8 from front"))).toEqual([
      "fastener-in-cut 10: screw No. 10 x 3 from board into legs/1 stands 1 1/2 deep in legs/1, but a hole takes away 1/4 of that wood.",
    ]);
  });

  test("a notch beside the screw is clear, over it is not", () => {
    expect(told(shelf("legs: notch 3 x 1/4, at bottom, at front"))).toEqual([]);
    expect(told(shelf("board: lap 1 long, 3/4 deep, in top, at left"))[0]).toMatch(
      /a lap takes away 3\/4 of that wood/,
    );
  });

  test("a corner rounded to 1 3/4 keeps it: the screw at 3/4 and 7/8 is hypot(1, 7/8) = 1.33 from the round's middle", () => {
    expect(told(shelf("board: rounded corners 1 3/4"))).toEqual([]);
  });
});

describe("in the demo's own recipes", () => {
  const folder = join(import.meta.dirname, "../../content/recipes");
  const files = readdirSync(folder).filter((name) => name.endsWith(".md"));

  test.each(files)("%s: between any two shanks is 1/16 of wood or more, and nothing is told", (file) => {
    const { recipe } = readRecipe(file, readFileSync(join(folder, file), "utf8"), (name) =>
      readFileSync(join(folder, name), "utf8"),
    );
    const { item, problems } = recipe ? workOut(recipe, demoYard()) : { problems: undefined, item: undefined };
    expect(problems).toEqual([]);
    const all = item?.joins.flatMap((each) => each.driven) ?? [];
    const wood = all.flatMap((one, i) =>
      all.slice(0, i).map((other) => {
        const apart = edgeGap({ a: one.head, b: one.tip }, { a: other.head, b: other.tip });
        return apart - (one.fastener.diameter + other.fastener.diameter) / 2;
      }),
    );
    expect(Math.min(1, ...wood)).toBeGreaterThanOrEqual(1 / 16 - 1e-9);
  });
});
