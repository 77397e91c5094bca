// Whether a buyer finds it ready: the three ways of saying it, for all variants or for some.
import { describe, expect, it } from "vitest";
import { availabilityOf, parseAvailability } from "../../src/recipe/availability.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";

const recipe = (lines: string) => `---
title: Row marker
${lines}
overall: 12 x fit x 18
pieces:
  strip: fence board, ripped to 2 1/2
stand:
  sign: 1 strip, on edge, from left to right, at front, top at top
  stake: 1 strip, upright, facing front, from bottom to 17, against back of sign, centred
joins:
  stake to sign: 2 screw No. 6 x 1, back
finish:
  plain: none
  oil: 2 coats oil on all
---
A marker.

## Put it together

1. Lay the **sign** down.
2. Screw the **stake** across it.
`;

describe("availability", () => {
  it.each([
    ["ready now", { kind: "ready", count: 1 }],
    ["ready now 2", { kind: "ready", count: 2 }],
    ["2 ready now", { kind: "ready", count: 2 }],
    ["made to order", { kind: "made" }],
    ["made to order in 3 weeks", { kind: "made", time: { count: 3, unit: "week" } }],
    ["Made to order in 1 day", { kind: "made", time: { count: 1, unit: "day" } }],
    ["sold", { kind: "sold" }],
  ])("%s", (text, is) => expect(parseAvailability(text)).toEqual(is));

  it.each(["ready now 0", "ready", "in 3 weeks", "made to order in 0 weeks", "made to order in 3 years", "maybe", ""])(
    "%s says nothing",
    (text) => expect(parseAvailability(text)).toBeUndefined(),
  );

  it("said once it holds for every variant; said by variant, the others are made to order", () => {
    const whole = readRecipe("marker.md", recipe("availability: ready now 2")).recipe?.availability ?? [];
    expect([availabilityOf(whole, "plain"), availabilityOf(whole, "oil")]).toEqual([
      { kind: "ready", count: 2 },
      { kind: "ready", count: 2 },
    ]);
    const some = readRecipe("marker.md", recipe("availability:\n  oil: sold")).recipe?.availability ?? [];
    expect([availabilityOf(some, "plain"), availabilityOf(some, "oil")]).toEqual([{ kind: "made" }, { kind: "sold" }]);
  });

  it("a variant that there isn't is told with those there are", () => {
    const [one] = readRecipe("marker.md", recipe("availability:\n  oill: sold")).problems;
    expect(one).toMatchObject({ code: "availability-variant", expected: "one of plain, oil", nearest: "oil" });
  });
});
