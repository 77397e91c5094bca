import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Item } from "../../src/item/item.ts";
import { workOut } from "../../src/item/work-out.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { inches } from "../../src/units/length.ts";
import { demoYard } from "../cases/demo-yard.ts";

const file = "content/recipes/stall-price-ladder.md";
const text = readFileSync(file, "utf8");

function ladder(change: (text: string) => string = (same) => same, variant?: string): Item {
  const read = readRecipe(file, change(text));
  const out = read.recipe ? workOut(read.recipe, demoYard(), variant) : { item: undefined, problems: [] };
  const told = [...read.problems, ...out.problems].map((p) => `${p.at.line}: ${p.says}`);
  if (!out.item || told.length > 0) throw new Error(told.join("\n"));
  return out.item;
}

const lengths = (item: Item) => item.members.map((m) => inches(m.length));

describe("the stall price ladder", () => {
  const item = ladder();
  const [cord] = item.cords;

  test("is 22 x 3/4 x (5 x 3 1/2 + 4 x 2) = 25 1/2 without its rope", () => {
    expect(Object.values(item.overall).map(inches)).toEqual([22, 0.75, 25.5]);
  });

  test("has planks of 14, 16, 18, 20, 22 from the bottom up, each centred: left ends at 4, 3, 2, 1, 0", () => {
    expect(lengths(item)).toEqual([14, 16, 18, 20, 22]);
    expect(item.members.map((m) => inches(m.min.x))).toEqual([4, 3, 2, 1, 0]);
  });

  test("has four holes of 1/4 + 1/8 = 3/8 a plank, their middles 15/16 from ends and edges, as 14 - 15/16 = 13 1/16", () => {
    const cuts = item.members[0]?.cuts.flatMap((cut) => (cut.kind === "hole" ? [cut] : [])) ?? [];
    expect(cuts.map((cut) => cut.across)).toEqual([0.375, 0.375, 0.375, 0.375]);
    expect(cuts.map((cut) => cut.at3[0]).sort((a, b) => a - b)).toEqual([0.9375, 0.9375, 13.0625, 13.0625]);
  });

  test("takes 20 holes x 3/4 = 15 of rope in the wood", () => {
    expect(cord?.through).toBeCloseTo(15, 12);
  });

  test("takes 10 x 1 5/8 behind the planks + 8 x root of (3 7/8 squared + 1 squared) = 16.25 + 32.016 = 48.266 on them", () => {
    expect(cord?.between).toBeCloseTo(16.25 + 8 * Math.hypot(3.875, 1), 12);
    expect(cord?.between).toBeCloseTo(48.266, 3);
  });

  test("hangs by 2 x root of (10 1/16 squared + 10 15/16 squared) = 29.724", () => {
    expect(cord?.hanging).toBeCloseTo(2 * Math.hypot(10.0625, 10.9375), 12);
    expect(cord?.hanging).toBeCloseTo(29.724, 3);
  });

  test("is threaded with 15 + 48.266 + 29.724 + 2 x 4 = 100.990 of rope, bought as 9 ft", () => {
    expect(cord?.length).toBeCloseTo(100.99, 3);
  });

  test("hangs at atan(10.9375 / 10.0625) = 47.4 degrees, over the 45 that is usual", () => {
    expect(cord?.load?.degrees).toBeCloseTo(47.39, 2);
  });

  test("has rows 22 - 2 x (15/16 + 3/16) - 2 x 1/2 = 18 3/4 wide on top and 14 - 3 1/4 = 10 3/4 at the bottom", () => {
    expect(item.textFields.map((field) => field.width)).toEqual([18.75, 16.75, 14.75, 12.75, 10.75]);
    expect(item.textFields.map((field) => field.free)).toEqual([19.75, 17.75, 15.75, 13.75, 11.75]);
  });

  test("reads from the top down on its good side, rows (3 1/2 - 1 1/2) / 2 = 1 above the lower edge: 22 + 1 = 23", () => {
    expect(item.textFields.map((field) => field.says)).toEqual(["Tomatoes", "Beans", "Honey", "Eggs", "Ask us"]);
    // 15/16 + 3/16 + 1/2 = 1 5/8 from the left end
    expect(item.textFields[0]).toMatchObject({
      member: "planks/5",
      side: "front",
      corner: [1.625, 0, 23],
      height: 1.5,
    });
    expect(item.textFields[0]?.ways).toEqual(["stencil", "film", "engraving"]);
  });

  test("comes in white-grey, slate and natural, each without a problem", () => {
    expect(item.variants.map((variant) => variant.slug)).toEqual(["white-grey", "slate", "natural"]);
    for (const { slug } of item.variants) expect(ladder(undefined, slug).variant.slug).toBe(slug);
  });

  test("says the length of its rope in the step that cuts it", () => {
    const figures = item.sections.flatMap((s) => s.steps).flatMap((step) => step.text.figures);
    const found = figures.flatMap((figure) => (figure.kind === "length" ? [inches(figure.value)] : []));
    expect(found).toContain(cord?.length);
  });

  test("has under 70 lines of front-matter", () => {
    expect(text.split("---\n")[1]?.split("\n").length).toBeLessThan(70);
  });
});

describe("the ladder made of other planks", () => {
  const change = (from: string, to: string) => (all: string) => all.replace(from, to);

  test("of 12 growing by 3: 12, 15, 18, 21, 24; slanted rope root of (3 7/8 squared + 1 1/2 squared)", () => {
    const wide = ladder((all) =>
      [
        ["overall: 22", "overall: 24"],
        ["shortest: 14", "shortest: 12"],
        ["step: 2", "step: 3"],
        ["planks 5: 22", "planks 5: 24"],
        ["planks 1: 14", "planks 1: 12"],
      ].reduce((text, [from = "", to = ""]) => text.replace(from, to), all),
    );
    expect(lengths(wide)).toEqual([12, 15, 18, 21, 24]);
    expect(wide.cords[0]?.between).toBeCloseTo(16.25 + 8 * Math.hypot(3.875, 1.5), 12);
    expect(wide.cords[0]?.hanging).toBeCloseTo(2 * Math.hypot(12 - 0.9375, 10.9375), 12);
  });

  test("without steps its ropes are upright: 8 x 3 7/8 over the gaps", () => {
    const straight = ladder((all) =>
      [
        ["overall: 22", "overall: 14"],
        ["step: 2", "step: 0"],
        ["planks 5: 22", "planks 5: 14"],
      ].reduce((text, [from = "", to = ""]) => text.replace(from, to), all),
    );
    expect(straight.cords[0]?.between).toBeCloseTo(16.25 + 8 * 3.875, 12);
  });

  test("with a hook 14 up instead of 10: legs of root of (10 1/16 squared + 14 15/16 squared)", () => {
    expect(ladder(change("hang: 10", "hang: 14")).cords[0]?.hanging).toBeCloseTo(2 * Math.hypot(10.0625, 14.9375), 12);
  });

  test("with gaps of 3: 5 x 3 1/2 + 4 x 3 = 29 1/2 high, 8 x root of (4 7/8 squared + 1)", () => {
    const tall = ladder((all) =>
      [
        ["25 1/2", "29 1/2"],
        ["row-gap: 2", "row-gap: 3"],
        ["gap of planks: 2", "gap of planks: 3"],
      ].reduce((text, [from = "", to = ""]) => text.replace(from, to), all),
    );
    expect(inches(tall.overall.height)).toBe(29.5);
    expect(tall.cords[0]?.between).toBeCloseTo(16.25 + 8 * Math.hypot(4.875, 1), 12);
  });

  test("strung with 3/8 rope its holes and rows follow: 1/2 holes, 22 - 2 x (1 1/4 + 1/4) - 1 = 18 wide", () => {
    const thick = ladder((all) =>
      [
        ["rope-size: 1/4", "rope-size: 3/8"],
        ["in-from: 15/16", "in-from: 1 1/4"],
        ["hanging-rope: rope 1/4", "hanging-rope: rope 3/8"],
      ].reduce((text, [from = "", to = ""]) => text.replace(from, to), all),
    );
    expect(thick.textFields[0]?.width).toBeCloseTo(18, 12);
  });
});
