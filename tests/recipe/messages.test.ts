// What a maker's likely slips are answered with: the words that were meant, in names this recipe has.
import { describe, expect, it } from "vitest";
import { workOut } from "../../src/item/work-out.ts";
import type { Problem } from "../../src/problems/problem.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { demoYard } from "../cases/demo-yard.ts";

const screen = (changes: readonly (readonly [string, string])[]): readonly Problem[] => {
  const text = `---
title: Screen
overall: 36 x fit x 48
sizes:
  foot: 6
pieces:
  strip: fence board, ripped to 1 1/2
panels:
  end:
    size: width x height
    legs: 2 strip, upright, from bottom to top, spread left to right
    rails: 3 strip, level, between legs, spread foot to top
stand:
  screen: end, at front
joins:
  rails to legs: 2 pocket screw No. 6 x 1, back
finish:
  plain: none
---
A screen.

## Screw it up

makes end

1. Lay the **legs** and the **rails**.

## Stand it up

1. Stand the **screen** up.
`;
  const changed = changes.reduce((sofar, [from, to]) => {
    if (!sofar.includes(from)) throw new Error(`nothing reads ${from}`);
    return sofar.replace(from, to);
  }, text);
  const { recipe, problems } = readRecipe("screen.md", changed);
  return recipe ? workOut(recipe, demoYard()).problems : problems;
};

describe("messages", () => {
  it("nothing is said of the screen as it is", () => {
    expect(screen([])).toEqual([]);
  });

  it("a misspelt key is told once, and what stands under it is known", () => {
    expect(screen([["pieces:", "peices:"]]).map(({ code, nearest }) => [code, nearest])).toEqual([
      ["unknown-key", "pieces"],
    ]);
    expect(screen([["panels:", "panles:"]]).map(({ code }) => code)).toEqual(["unknown-key"]);
    expect(screen([["sizes:", "size:"]]).map(({ code }) => code)).toEqual(["unknown-key"]);
  });

  it("2 x 4 with blanks is the yard's 2x4", () => {
    const [first] = screen([["fence board, ripped to 1 1/2", "2 x 4"]]);
    expect(first).toMatchObject({ code: "unknown-board", found: "2 x 4", nearest: "2x4" });
    expect(first?.mend).toMatch(/^Write "2x4"/);
  });

  it.each([
    ["between legs", "spanning legs", "between legs"],
    ["spread foot to top", "distribute foot to top", "spread foot to top"],
    ["spread left to right", "evenly spaced left to right", "spread left to right"],
    ["upright", "vertical", "upright"],
    ["level", "horizontally", "level"],
  ])("for `%s` the words `%s` are answered with `%s`", (from, to, nearest) => {
    expect(screen([[`, ${from}`, `, ${to}`]])).toMatchObject([{ code: "unknown-clause", nearest }]);
  });

  it("`distribute between` is answered with `spread between`", () => {
    expect(screen([["spread foot to top", "distribute between legs"]])[0]).toMatchObject({
      code: "unknown-clause",
      nearest: "spread between legs",
    });
  });

  it("a number in the text is answered with the size that is written so, else with a gap that is there", () => {
    const [foot] = screen([["the **rails**", "the **rails** 6 in up"]]);
    expect(foot).toMatchObject({ code: "bare-figure", expected: "a figure that is worked out, such as {foot}" });
    expect(foot?.mend).toBe("Write {foot}, which is the same now, if that is meant, or {6 in} if it never changes.");
    const [strip] = screen([["the **rails**", 'the **rails**, 1-1/2" wide']]);
    expect(strip?.expected).toMatch(/\{width of strip\}$/);
    const [other] = screen([["the **rails**", "the **rails** 7 in up"]]);
    expect(other?.expected).toMatch(/\{gap of end legs\}$|\{gap of end rails\}$/);
    // What is suggested can be worked out.
    const figure = /\{(.*)\}$/.exec(other?.expected ?? "")?.[1] ?? "";
    expect(screen([["the **rails**", `the **rails** {${figure}} up`]])).toEqual([]);
  });

  it("height-thickness of strip is a minus without its blanks", () => {
    expect(screen([["spread foot to top", "spread foot to height-thickness of strip"]])).toMatchObject([
      {
        code: "hyphen-for-minus",
        found: "height-thickness of strip",
        expected: "height - thickness of strip",
        mend: "Write height - thickness of strip.",
      },
    ]);
    expect(screen([["spread foot to top", "spread foot to height - thickness of strip"]])).toEqual([]);
  });

  it("a bench section without `makes` is told where its panel is stood, with the line to write", () => {
    const [twice] = screen([["makes end\n\n", ""]]);
    expect(twice).toMatchObject({ code: "named-twice" });
    expect(twice?.mend).toMatch(/A section that builds a panel on the bench says `makes end` right under its heading/);
  });

  it("an end that no step stands is made as an end", () => {
    const found = screen([["Stand the **screen** up", "Rest"]]);
    expect(found).toMatchObject([
      { code: "panel-not-stood", says: "screen is made as an end, but no step stands it in place." },
    ]);
  });
});

describe("two boards in one place", () => {
  const pile = (third: string): readonly Problem[] => {
    const text = `---
title: Pile
overall: 20 x fit x fit
pieces:
  stud: 2x4
stand:
  low: stud, flat, from left to right, at front, bottom at 0
  high: stud, flat, from left to right, at front, bottom at 1
${third}joins:
  high to low: glue
---
A pile.

## Pile them up

1. Put **low**, **high**${third === "" ? "" : " and **roof**"} down.
`;
    const { recipe, problems } = readRecipe("pile.md", text);
    return recipe ? workOut(recipe, demoYard()).problems : problems;
  };
  const mend = (problems: readonly Problem[]) => problems.find(({ code }) => code === "two-in-one-place")?.mend;

  it("high shares 1/2 with low: 1/2 up is the least way out", () => {
    expect(mend(pile(""))).toMatch(/^Move high 1\/2 toward the top, shorten/);
  });

  it("with a roof on high, 1/2 up runs into it, and 2 1/2 down into the floor: it goes aside, 3 1/2", () => {
    expect(mend(pile("  roof: stud, flat, from left to right, at front, on high\n"))).toMatch(
      /^Move high 3 1\/2 toward the (front|back), shorten/,
    );
  });
});
