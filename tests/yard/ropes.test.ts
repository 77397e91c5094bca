import { describe, expect, test } from "vitest";
import { readYard } from "../../src/yard/read-yard.ts";

const hank = `priced: 2026-10-03
ropes:
  rope 1/4:
    words: polypropylene rope, 1/4 thick
    material: polypropylene
    diameter: 1/4
    weight: 0.2 oz
    price: 0.35
`;

const read = (text: string) => readYard([{ file: "yard.yaml", text }]);
const told = (text: string) => read(text).problems.map((p) => `${p.at.line}:${p.at.column} ${p.code}`);

describe("a rope of the yard", () => {
  test("of polypropylene 1/4 thick breaks at 1250 lb by the table and is sold by the foot, 12 in", () => {
    const rope = read(hank).yard?.ropes[0];
    expect(rope?.strength).toBe(1250);
    expect(rope?.sold.valueOf()).toBe(12);
    expect(rope?.weightPerFoot).toBeCloseTo(0.2 / 16, 12);
  });

  test("with a strength and a source of its own keeps both: 900 lb from its label", () => {
    const stated = hank.replace("    weight", "    strength: 900 lb\n    source: the label\n    weight");
    const rope = read(stated).yard?.ropes[0];
    expect([rope?.strength, rope?.strengthSource]).toEqual([900, "the label"]);
  });

  test.each([
    ["a strength from nobody", "    weight", "    strength: 900 lb\n    weight", "7:15 yard-rope-source"],
    ["a material the table lacks", "material: polypropylene", "material: jute", "3:3 yard-rope-strength"],
    ["a thickness the table lacks", "diameter: 1/4", "diameter: 5/16", "3:3 yard-rope-strength"],
    ["a thickness of nothing", "diameter: 1/4", "diameter: 0", "6:15 yard-number"],
    ["a weight without its unit", "0.2 oz", "0.2", "7:13 yard-number"],
  ])("%s is told at its line", (_, from, to, line) => expect(told(hank.replace(from, to))).toContain(line));
});
