// Choices: every variant worked out whole, with figures by hand, and everything re-flows from one of them to the next.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Item } from "../../../src/item/item.ts";
import { formFacts, formsOf } from "../../../src/item/variants/forms.ts";
import { workVariants } from "../../../src/item/variants/work-variants.ts";
import { workOut } from "../../../src/item/work-out.ts";
import { printProblem } from "../../../src/problems/print.ts";
import { recipeFor } from "../../../src/recipe/choices-recipe-for.ts";
import { countVariants, variantsOf } from "../../../src/recipe/choices-variants.ts";
import type { Recipe } from "../../../src/recipe/recipe.ts";
import { inches } from "../../../src/units/length.ts";
import { demoYard } from "../../cases/demo-yard.ts";
import { recipeOf } from "../../recipe/parse.ts";

const yard = demoYard();

const tray = (choices: string, more = ""): string => `---
title: Tray
overall: 20 x 14 x fit
sizes:
  rim: 3 1/2
pieces:
  wall: 1x6, ripped to rim
  slat: fence board, ripped to 2 1/2
stand:
  walls: 2 wall, on edge, from left to right, bottom at bottom, spread front to back
  cheeks: 2 wall, on edge, between walls, bottom at bottom, spread left to right
  slats: slat, flat, between walls, bottom at 1/2, spread between cheeks, gaps at most 3/8
  lid: 2 slat, flat, from left to right, on walls, spread 2 to depth - 2, only with lid
joins:
  walls to cheeks: 2 screw No. 8 x 2
  walls to slats: 1 screw No. 8 x 2
  lid to cheeks: 1 screw No. 6 x 1 5/8
finish:
  plain: none
  two-tone: 1 coat oil on slats; 1 coat white on lid; 1 coat stain on the rest
choices:
${choices}
${more}---
A tray.

## Build it

1. Screw **walls** and **cheeks** together.
2. Screw the **slats** between.
3. Screw the **lid** on.
`;

const three = `  size:
    S: as written
    M: width 24
    L: width 28, rim 4, slat is 1x4
  lid: without, with
  finish: plain, two-tone`;
const recipe = recipeOf(tray(three));

function worked(of: Recipe, slug?: string): Item {
  const { item, problems } = workOut(of, yard, slug);
  expect(problems.map(printProblem)).toEqual([]);
  if (!item) throw new Error(`no variant ${slug}`);
  return item;
}
const figures = (item: Item) => ({
  size: [item.overall.width, item.overall.depth, item.overall.height].map(inches),
  pieces: item.pieces.map((p) => [p.name, p.count, inches(p.length), inches(p.width), p.board.name]),
});

describe("variants of a tray of three sizes, with or without a lid, in two finishes", () => {
  it("are 3 * 2 * 2 = 12, the last choice changing fastest, named by what differs from the standard", () => {
    expect(countVariants(recipe)).toBe(12);
    expect(variantsOf(recipe).map(({ slug }) => slug)).toEqual([
      ...["plain", "two-tone", "with-lid", "with-lid-two-tone"],
      ...["m", "m-two-tone", "m-with-lid", "m-with-lid-two-tone"],
      ...["l", "l-two-tone", "l-with-lid", "l-with-lid-two-tone"],
    ]);
    expect(
      variantsOf(recipe)
        .map(({ name }) => name)
        .slice(0, 3),
    ).toEqual(["S, without lid, plain", "S, without lid, two-tone", "S, with lid, plain"]);
  });

  it("are all whole and without a problem", () => {
    const { items, problems } = workVariants(recipe, yard);
    expect(problems.map(printProblem)).toEqual([]);
    expect(items.map(({ variant }) => variant.slug)).toEqual(variantsOf(recipe).map(({ slug }) => slug));
    expect(items[0]?.variant.standard).toBe(true);
    expect(items.filter(({ variant }) => variant.standard)).toHaveLength(1);
  });

  it("S: 7 slats of 14 - 2 * 3/4 = 12 1/2; 6 would leave (20 - 1 1/2 - 15) / 5 = 7/10 between them", () => {
    expect(figures(worked(recipe))).toEqual({
      size: [20, 14, 3.5],
      pieces: [
        ["walls", 2, 20, 3.5, "1x6"],
        ["cheeks", 2, 12.5, 3.5, "1x6"],
        ["slats", 7, 12.5, 2.5, "fence board"],
      ],
    });
  });

  it("M: 24 wide; 22 1/2 between the cheeks takes 8 slats, (22 1/2 - 20) / 7 = 5/14 apart", () => {
    const item = worked(recipe, "m");
    expect(figures(item)).toEqual({
      size: [24, 14, 3.5],
      pieces: [
        ["walls", 2, 24, 3.5, "1x6"],
        ["cheeks", 2, 12.5, 3.5, "1x6"],
        ["slats", 8, 12.5, 2.5, "fence board"],
      ],
    });
    const gap = item.gaps.find(({ group }) => group === "slats");
    expect(inches(gap?.gap ?? 0)).toBeCloseTo(5 / 14, 12);
  });

  it("L: 28 wide and 4 high; 26 1/2 takes 10 slats, now ripped from 1x4 and 3/4 thick", () => {
    const item = worked(recipe, "l");
    expect(figures(item)).toEqual({
      size: [28, 14, 4],
      pieces: [
        ["walls", 2, 28, 4, "1x6"],
        ["cheeks", 2, 12.5, 4, "1x6"],
        ["slats", 10, 12.5, 2.5, "1x4"],
      ],
    });
    expect(item.members.filter(({ group }) => group === "slats").map(({ thickness }) => inches(thickness))).toEqual(
      Array.from({ length: 10 }, () => 0.75),
    );
  });

  it("with a lid: two boards more on top, 3 1/2 + 5/8 = 4 1/8 high, a step more, joins more", () => {
    const without = worked(recipe);
    const lidded = worked(recipe, "with-lid");
    expect(inches(lidded.overall.height)).toBe(4.125);
    expect(lidded.members.length - without.members.length).toBe(2);
    expect(without.sections.flatMap(({ steps }) => steps.map(({ number }) => number))).toEqual([1, 2]);
    expect(lidded.sections.flatMap(({ steps }) => steps.map(({ number }) => number))).toEqual([1, 2, 3]);
    const driven = (item: Item) => item.joins.flatMap((join) => join.driven).length;
    expect(driven(lidded) - driven(without)).toBe(2 * 2);
  });

  it("weigh what their own boards weigh: the lid adds 2 * 20 * 2 1/2 * 5/8 in3 of its board and 4 screws", () => {
    const without = worked(recipe);
    const lidded = worked(recipe, "with-lid");
    const board = lidded.members.find(({ group }) => group === "lid")?.board;
    expect(lidded.woodWeight - without.woodWeight).toBeCloseTo(2 * 20 * 2.5 * 0.625 * (board?.density ?? 0), 9);
    expect(lidded.weight - without.weight).toBeGreaterThan(lidded.woodWeight - without.woodWeight);
  });

  it("without a lid no coat is put on it, and what names it alone is gone", () => {
    const coated = worked(recipe, "two-tone").variant.finish.map(({ finish }) => finish.name);
    expect(coated).toEqual(["oil", "stain"]);
    expect(worked(recipe, "with-lid-two-tone").variant.finish.map(({ finish }) => finish.name)).toEqual([
      "oil",
      "white",
      "stain",
    ]);
  });

  it("of one form differ in their finish alone; the forms are told apart by size, weight, pieces and boards", () => {
    const { items } = workVariants(recipe, yard);
    const [first, ...others] = items;
    if (!first) throw new Error("nothing worked out");
    const forms = formsOf([first, ...others]);
    expect(forms.map((form) => form.map(({ variant }) => variant.slug))).toEqual([
      ["plain", "two-tone"],
      ["with-lid", "with-lid-two-tone"],
      ["m", "m-two-tone"],
      ["m-with-lid", "m-with-lid-two-tone"],
      ["l", "l-two-tone"],
      ["l-with-lid", "l-with-lid-two-tone"],
    ]);
    expect(forms.map(formFacts).map(({ name, pieces, boards }) => [name, pieces, boards.join(" + ")])).toEqual([
      ["S, without lid", 11, "1x6 + fence board"],
      ["S, with lid", 13, "1x6 + fence board"],
      ["M, without lid", 12, "1x6 + fence board"],
      ["M, with lid", 14, "1x6 + fence board"],
      ["L, without lid", 14, "1x6 + 1x4"],
      ["L, with lid", 16, "1x6 + 1x4"],
    ]);
  });

  it("that are not offered are told, with the nearest", () => {
    const { item, problems } = workOut(recipe, yard, "m-with-lit");
    expect(item).toBeUndefined();
    expect(problems).toMatchObject([{ code: "unknown-variant", nearest: "m-with-lid" }]);
  });
});

describe("a recipe for one variant", () => {
  it("is the recipe itself, word by word, where a variant changes nothing", () => {
    const plain = recipeOf(tray("  finish: plain, two-tone", "").replace(", only with lid", ""));
    const standard = variantsOf(plain)[0];
    expect(JSON.stringify(recipeFor(plain, standard), replaced)).toBe(JSON.stringify(plain, replaced));
  });

  it("has no condition and no choice left that could still change it", () => {
    for (const variant of variantsOf(recipe)) {
      const once = recipeFor(recipe, variant);
      expect(JSON.stringify(recipeFor(once, variant), replaced)).toBe(JSON.stringify(once, replaced));
    }
  });

  it("of any size is the recipe with that size typed: width 18 to 40 re-flows every board", () => {
    fc.assert(
      fc.property(fc.integer({ min: 18 * 4, max: 40 * 4 }), (quarters) => {
        const width = `${Math.floor(quarters / 4)} ${quarters % 4}/4`.replace(" 0/4", "");
        if (width === "20") return;
        const chosen = recipeOf(
          tray(`  size:\n    S: as written\n    other: width ${width}\n  lid: without, with\n  finish: plain`),
        );
        const typed = recipeOf(
          tray("  lid: without, with\n  finish: plain").replace("overall: 20 x", `overall: ${width} x`),
        );
        const [one, other] = [workOut(chosen, yard, "other"), workOut(typed, yard)];
        expect(one.problems.map(({ code }) => code)).toEqual(other.problems.map(({ code }) => code));
        if (one.item && other.item) expect(figures(one.item)).toEqual(figures(other.item));
      }),
      { numRuns: 12 },
    );
  });
});

const replaced = (_: string, value: unknown): unknown =>
  typeof value === "object" && value !== null && "toFraction" in value
    ? (value as { toFraction(): string }).toFraction()
    : value;

describe("conditions", () => {
  it("on paragraphs, steps, checks and cautions keep or drop them, and the words behind start with a capital", () => {
    const text = tray("  lid: without, with\n  finish: plain").replace(
      "A tray.",
      "A tray.\n\nOnly with lid: it keeps the rain out.\n\nOnly without lid: rain gets in.",
    );
    const said = (slug?: string) => worked(recipeOf(text), slug).intro.map(({ markdown }) => markdown);
    expect(said()).toEqual(["A tray.", "Rain gets in."]);
    expect(said("with-lid")).toEqual(["A tray.", "It keeps the rain out."]);
  });

  it("on claims hold them for one variant alone: 3 1/2 high without, 4 1/8 with the lid", () => {
    const claims = "claims:\n  height: 3 1/2, only without lid\n";
    const text = tray("  lid: without, with\n  finish: plain", claims);
    expect(workVariants(recipeOf(text), yard).problems).toEqual([]);
    const all = workVariants(recipeOf(text.replace(", only without lid", "")), yard).problems;
    expect(all.map(({ says }) => says)).toEqual([expect.stringContaining('In "with lid", ')]);
  });
});

describe("what is put on it, for whom, how many are one", () => {
  const used = (more: string) => recipeOf(tray("  lid: without, with\n  finish: plain", more));

  it("6 pots of 8 lb along 20 - 2 * 3/4 = 18 1/2 of slats stand 18 1/2 / 6 apart, the first 3/4 + 18 1/2 / 12 from the left", () => {
    const [pots] = worked(used("loads:\n  pots: 6 of 8 lb, on slats\n")).loads;
    expect(pots).toMatchObject({ name: "pots", pounds: 8, total: 48 });
    expect(pots?.places.map(({ at }) => at[0])).toEqual(
      [0, 1, 2, 3, 4, 5].map((i) => expect.closeTo(0.75 + (18.5 / 6) * (i + 0.5), 9)),
    );
    // Slats lie from 1/2 up and are 5/8 thick; the middle of the tray is at 7.
    for (const { at } of pots?.places ?? []) expect(at.slice(1)).toEqual([7, expect.closeTo(1.125, 9)]);
    expect(pots?.places[0]?.on).toHaveLength(7);
  });

  it("one of 250 lb stands on the middle, or at a side if the line says so", () => {
    const at = (where: string) => worked(used(`loads:\n  one: 250 lb, on slats${where}\n`)).loads[0]?.places[0]?.at;
    expect(at("")).toEqual([10, 7, expect.closeTo(1.125, 9)]);
    expect(at(", centred")).toEqual([10, 7, expect.closeTo(1.125, 9)]);
    expect(at(", at left")).toEqual([0.75, 7, expect.closeTo(1.125, 9)]);
    expect(at(", at back")).toEqual([10, 13.25, expect.closeTo(1.125, 9)]);
  });

  it("10 kg are 10 / 0.45359237 = 22.046 lb (the pound of 1959)", () => {
    const [sack] = worked(used("loads:\n  sack: 10 kg, on slats\n")).loads;
    expect(sack?.pounds).toBeCloseTo(22.0462262185, 9);
  });

  it("a load on the lid alone is gone without a lid", () => {
    const recipe = used("loads:\n  brick: 5 lb, on lid\n");
    expect(worked(recipe).loads).toEqual([]);
    expect(worked(recipe, "with-lid").loads).toHaveLength(1);
  });

  it("on each level stands the whole load: 2 shelves of 3 pots of 8 lb are 48 lb", () => {
    const shelves = recipeOf(`---
title: Two shelves
overall: 24 x fit x 20
pieces:
  slat: fence board
stand:
  posts: 2 slat, upright, facing left, from bottom to top, spread left to right, at front
  shelves: 2 slat, flat, between posts, spread 4 to top, at front
joins:
  posts to shelves: 2 screw No. 6 x 1 5/8
loads:
  pots: 3 of 8 lb, on each shelves
---
Two shelves.

## Build it

1. Screw **shelves** between **posts**.
`);
    const [pots] = worked(shelves).loads;
    expect(pots?.total).toBe(2 * 3 * 8);
    // Undersides of the lower at 4; tops of the upper at 20.
    expect([...new Set(pots?.places.map(({ at }) => at[2]))]).toEqual([4.625, 20]);
  });

  it("a pair weighs two of it, a set of 4 four", () => {
    const one = worked(used("")).weight;
    const sold = (words: string) => {
      const recipe = recipeOf(
        tray("  lid: without, with\n  finish: plain").replace("title: Tray\n", `title: Tray\nsold as: ${words}\n`),
      );
      return worked(recipe).soldAs;
    };
    expect(sold("pair")).toEqual({ count: 2, words: "pair", weight: 2 * one });
    expect(sold("set of 4")).toEqual({ count: 4, words: "set of 4", weight: 4 * one });
    expect(worked(used("")).soldAs).toBeUndefined();
  });
});

describe("words of the buyer's own", () => {
  it("make no variants and come with their standard", () => {
    const recipe = recipeOf(
      tray("  saying: at most 12 letters, as Herbs, mint\n  lid: without, with\n  finish: plain"),
    );
    expect(countVariants(recipe)).toBe(2);
    expect(worked(recipe).sayings).toEqual([{ name: "saying", most: 12, standard: "Herbs, mint" }]);
  });

  it("stand on the boards where a text names the choice", () => {
    const recipe = recipeOf(
      tray(
        "  words: at most 12 letters, as Herbs\n  lid: without, with\n  finish: plain",
        "text:\n  label: walls 1, 1 high, on front, by stencil, saying words\n",
      ),
    );
    expect(worked(recipe).textFields.map(({ says }) => says)).toEqual(["Herbs"]);
  });
});
