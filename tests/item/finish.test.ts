import { describe, expect, test } from "vitest";
import { memberOf, told, tried, worked } from "./bench-yard.ts";

/** Three boards 20 x 2 x 5/8 in a pile; each face between two of them is 40 square inches. */
const pile = (finish: string) => `
overall: 20 x fit x fit
pieces:
  strip: fence board, ripped to 2
stand:
  low: strip, flat, from left to right, at front, bottom at 0
  middling: strip, flat, from left to right, at front, on low
  high: strip, flat, from left to right, at front, on middling
joins:
  middling to low: 2 screw No. 6 x 1
  high to middling: 2 screw No. 6 x 1
${finish}
`;

const skin = 2 * (20 * 2 + 20 * 0.625 + 2 * 0.625);

describe("coats", () => {
  test("cover what air reaches: 3 skins of 107 1/2 less 4 faces of 40 is 162 1/2 sq in", () => {
    const { variant, members } = worked(pile("finish:\n  oiled: 2 coats oil on all"));
    expect(skin).toBe(107.5);
    expect(variant.finish).toMatchObject([{ coats: 2, members: members.map((m) => m.id) }]);
    expect(variant.finish[0]?.area).toBeCloseTo(162.5, 9);
    // 162 1/2 / 144 sq ft, twice, at 300 sq ft a gallon.
    expect(variant.finish[0]?.gallons).toBeCloseTo(((162.5 / 144) * 2) / 300, 12);
  });

  test("the rest is what no other line names: 107 1/2 - 40 and 107 1/2 - 80", () => {
    const item = worked(pile("finish:\n  two: 1 coat white on high; 2 coats oil on the rest"));
    expect(item.variant.finish.map((f) => [f.finish.name, f.members])).toEqual([
      ["white", ["high"]],
      ["oil", ["low", "middling"]],
    ]);
    expect(item.variant.finish[0]?.area).toBeCloseTo(67.5, 9);
    expect(item.variant.finish[1]?.area).toBeCloseTo(67.5 + 27.5, 9);
    expect(memberOf(item, "middling").coats).toMatchObject([{ coats: 2, finish: { name: "oil" } }]);
    expect(memberOf(item, "high").coats).toMatchObject([{ coats: 1, finish: { name: "white" } }]);
  });

  test("what no coat names is left bare: two of the three", () => {
    const item = worked(pile("finish:\n  lid: 2 coats oil on high"));
    expect(item.variant).toMatchObject({ unfinished: false, bare: ["low", "middling"] });
    expect(worked(pile("finish:\n  two: 1 coat white on high; 2 coats oil on the rest")).variant.bare).toEqual([]);
  });

  test("a member in two lines, a rest of nothing, and a finish the yard doesn't know are told", () => {
    expect(told(pile("finish:\n  two: 1 coat white on high and low; 2 coats oil on low"))).toEqual([
      'coated-twice 14: "two" coats low in two places.',
    ]);
    expect(told(pile("finish:\n  two: 1 coat white on all; 2 coats oil on the rest"))[0]).toMatch(/^no-rest 14/);
    expect(tried(pile("finish:\n  two: 1 coat wite on all")).problems).toMatchObject([
      { code: "unknown-finish", nearest: "white" },
    ]);
  });
});

describe("variants", () => {
  const three = pile("finish:\n  bare: none\n  oiled: 2 coats oil on all\nchoices:\n  finish: oiled, bare");

  test("come in the order they are offered, the first is the standard one", () => {
    const item = worked(three);
    expect(item.variants.map((v) => v.slug)).toEqual(["oiled", "bare"]);
    expect(item.variant).toMatchObject({ slug: "oiled", standard: true, unfinished: false });
  });

  test("are asked for by slug; without coats they are unfinished", () => {
    expect(worked(three, undefined, "bare").variant).toMatchObject({
      slug: "bare",
      standard: false,
      unfinished: true,
      finish: [],
    });
    expect(tried(three, undefined, "oild").problems).toMatchObject([
      { code: "unknown-variant", nearest: "oiled", expected: "one of oiled, bare" },
    ]);
  });

  test("an item without any finish has one, unfinished", () => {
    expect(worked(pile("")).variants).toEqual([{ slug: "unfinished", name: "unfinished", form: "" }]);
    expect(worked(pile("")).variant.unfinished).toBe(true);
  });

  test("don't differ in weight, places or marks", () => {
    const [one, other] = [worked(three), worked(three, undefined, "bare")];
    expect(one.weight).toBe(other.weight);
    expect(one.pieces).toEqual(other.pieces);
  });
});
