import { describe, expect, test } from "vitest";
import type { Item } from "../../src/item/item.ts";
import { workJson } from "../../src/item/work-json.ts";
import { inches } from "../../src/units/length.ts";
import { demoItem, memberOf, pieceOf } from "./bench-yard.ts";

function whole(slug: string, variant?: string): Item {
  const { item, problems } = demoItem(slug, variant);
  if (!item || problems.length > 0) throw new Error(problems.map((p) => `${p.at.line}: ${p.says}`).join("\n"));
  return item;
}

const screws = (item: Item, name: string) =>
  item.joins.flatMap((j) => j.driven).filter((d) => d.fastener.name === name).length;

describe("the hose-and-pot corral", () => {
  const item = whole("hose-and-pot-corral");

  test("has 41 members of five pieces: 12 + 4 + 4 + 9 + 12", () => {
    expect(item.members).toHaveLength(41);
    expect(item.pieces.map((p) => [p.mark, p.count, inches(p.length)])).toEqual([
      // 30 - 2 x 1 11/16
      ["A", 12, 26.625],
      ["B", 4, 26],
      // 26 - 3
      ["C", 4, 23],
      ["D", 9, 18],
      // 18 - 2 x 5/8 - 2 x 1 11/16
      ["E", 12, 13.375],
    ]);
  });

  test("weighs its 12 x 26 5/8 + 4 x 26 + 4 x 23 + 9 x 18 + 12 x 13 3/8 = 838 in of strip, 1 11/16 x 5/8, by the yard's cedar, and its 126 screws", () => {
    const run = 12 * 26.625 + 4 * 26 + 4 * 23 + 9 * 18 + 12 * 13.375;
    expect(run).toBe(838);
    const density = pieceOf(item, "A").board.density;
    expect(item.woodWeight).toBeCloseTo(run * 1.6875 * 0.625 * density, 9);
    const metal = item.joins.flatMap((j) => j.driven).reduce((sum, d) => sum + d.fastener.weight, 0);
    expect(item.weight).toBeCloseTo(item.woodWeight + metal, 9);
  });

  test("balances in the middle, left to right and front to back: 30 / 2 and 18 / 2", () => {
    expect(item.centreOfMass[0]).toBeCloseTo(15, 2);
    expect(item.centreOfMass[1]).toBeCloseTo(9, 2);
  });

  test("is held by 2 pocket screws at 48 rail ends, 3 screws at 4 corners, 1 under each of 9 slats front and back", () => {
    expect(screws(item, "pocket screw No. 6 x 1")).toBe(2 * (2 * 12 + 2 * 12));
    expect(screws(item, "screw No. 6 x 1 5/8")).toBe(4 * 3 + 2 * 9);
    expect(item.overlaps).toEqual([]);
  });

  test("touches 12 rails at 2 ends on legs and 12 on posts: 24 + 24 ends of 1 11/16 x 5/8", () => {
    const end = 1.6875 * 0.625;
    const ends = item.contacts.filter((c) => Math.abs(c.area - end) < 1e-9 && /rails/.test(c.a) !== /rails/.test(c.b));
    const onUprights = ends.filter((c) => /legs|posts/.test(c.a + c.b));
    expect(onUprights).toHaveLength(48);
  });

  test("differs in no figure between its finishes but in the paint", () => {
    for (const slug of item.variants.map((v) => v.slug)) {
      const other = whole("hose-and-pot-corral", slug);
      expect(other.weight).toBe(item.weight);
      expect(other.pieces).toEqual(item.pieces);
    }
  });

  test("two-colour paints the odd and even of 24 rails, 12 and 12, and the other 17 members", () => {
    const { variant } = whole("hose-and-pot-corral", "two-colour");
    expect(variant.finish.map((f) => f.members.length)).toEqual([12, 12, 17]);
  });
});

describe("the seedling hardening rack", () => {
  const item = whole("seedling-hardening-rack");

  test("has 36 members of four pieces: 4 legs, 8 strips, 8 sides, 16 boards", () => {
    expect(item.members).toHaveLength(36);
    expect(item.pieces.map((p) => [p.count, inches(p.length)])).toEqual([
      [4, 60],
      [16, 28],
      // 28 - 2 1/2
      [8, 25.5],
      // 14 - 2 x 5/8
      [8, 12.75],
    ]);
    expect(item.overlaps).toEqual([]);
  });

  test("has an anchor kit that goes along and has no place", () => {
    expect(item.fittings).toMatchObject([{ id: "anchor", count: 1, fitting: { name: "anchor kit" } }]);
    expect(item.fittings[0]?.box).toBeUndefined();
  });
});

describe("the item as JSON", () => {
  const item = whole("hose-and-pot-corral");
  const json = workJson(item);

  test("has the promised keys and none of a stage that isn't built", () => {
    expect(Object.keys(json)).toEqual([
      "title",
      "slug",
      "variant",
      "chosen",
      "overall",
      "weight",
      "centreOfMass",
      "pieces",
      "members",
      "overlaps",
      "loads",
      "cords",
      "text",
      "finish",
      "bare",
      "steps",
    ]);
  });

  test("says places in inches as plain numbers, without exponents", () => {
    const slat = json.members.find((m) => m.id === "slats/9");
    expect(slat?.min).toEqual(Object.values(memberOf(item, "slats/9").min).map(inches));
    expect(JSON.stringify(json)).not.toMatch(/[0-9]e-|null|NaN/);
  });

  test("is the same text twice", () => {
    expect(JSON.stringify(workJson(whole("hose-and-pot-corral")))).toBe(JSON.stringify(json));
  });
});
