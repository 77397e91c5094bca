import { expect, test } from "vitest";
import { cordSheet } from "../../src/leaves/cord-sheet.ts";
import { binderEdition, setFractions } from "../../src/leaves/edition.ts";
import { demoItem } from "../item/bench-yard.ts";

const edition = binderEdition({ unit: "in", per: 16 });

test("the price ladder's rope is cut 15 + 48 1/4 + 29 3/4 + 2 x 4 = 101, each printed to the sixteenth", () => {
  const { item } = demoItem("stall-price-ladder");
  const sheet = item && cordSheet(item, edition);
  expect(sheet?.ropes?.rows).toEqual([
    ["hanging rope", "rope 1/4", "15", "48 1/4", "29 3/4", "2 × 4", "0", "101"].map(setFractions),
  ]);
  // 3.14 / (2 sin 47.4) = 2.1; half of 1250
  expect(sheet?.notes[0]).toMatch(/at 47\.4° above level and pulls 2\.1 lb; new and knotted it breaks at about 625 lb/);
});

test("its letters stand on A to E from the top down, 18 3/4 to 10 3/4 wide", () => {
  const { item } = demoItem("stall-price-ladder");
  const rows = (item && cordSheet(item, edition)?.letters?.rows) ?? [];
  expect(rows.map(([mark, , width, , says]) => [mark, width, says])).toEqual([
    ["A", setFractions("18 3/4"), "Tomatoes"],
    ["B", setFractions("16 3/4"), "Beans"],
    ["C", setFractions("14 3/4"), "Honey"],
    ["D", setFractions("12 3/4"), "Eggs"],
    ["E", setFractions("10 3/4"), "Ask us"],
  ]);
});

test("a thing without rope and letters has no such sheet", () => {
  const { item } = demoItem("hose-and-pot-corral");
  expect(item && cordSheet(item, edition)).toBeUndefined();
});
