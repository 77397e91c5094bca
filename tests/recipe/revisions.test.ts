// Revisions and the word that sells a plan, as a maker writes them.
import { describe, expect, it } from "vitest";
import { readRecipe } from "../../src/recipe/read-recipe.ts";

const recipe = (lines: string): string => `---
title: Row marker
${lines}
overall: 12 x fit x 18
pieces:
  strip: fence board, ripped to 2 1/2
stand:
  stake: 1 strip, upright, facing front, from bottom to top, at left, at front
---
A marker.
`;
const read = (lines: string) => readRecipe("marker.md", recipe(lines));
const told = (lines: string): string[] => read(lines).problems.map(({ code, at }) => `${at.line}:${at.column} ${code}`);

describe("revisions", () => {
  it("stand in the order of their days, whichever way they are written", () => {
    expect(read("revisions:\n  2026-11-02: slats lowered\n  2026-10-05: first written").recipe?.revisions).toEqual([
      { day: "2026-10-05", says: "first written" },
      { day: "2026-11-02", says: "slats lowered" },
    ]);
  });
  it("a recipe without them has none, and sells no plan", () => {
    const { recipe: found } = read("draft: no");
    expect([found?.revisions, found?.hasPlan]).toEqual([[], false]);
  });
  it("a day that there isn't, and a day without a word, are told where they stand", () => {
    expect(told("revisions:\n  2026-02-30: first written")).toEqual(["4:3 bad-value"]);
    expect(told('revisions:\n  2026-02-20: ""')).toEqual(["4:16 bad-value"]);
  });
});

describe("plan: yes", () => {
  it("sells a plan; no and nothing don't", () => {
    expect(["plan: yes", "plan: no", "draft: no"].map((line) => read(line).recipe?.hasPlan)).toEqual([
      true,
      false,
      false,
    ]);
  });
  it("any other word is told, with the one that is meant", () => {
    expect(read("plan: true").problems.map(({ code, nearest }) => [code, nearest])).toEqual([["yes-or-no", "yes"]]);
  });
});
