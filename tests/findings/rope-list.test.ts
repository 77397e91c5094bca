import { expect, test } from "vitest";
import { yardList } from "../../src/findings/yard-list.ts";
import { exact, inches } from "../../src/units/length.ts";
import { demoItem } from "../item/bench-yard.ts";

test("the price ladder's 100.990 of rope is bought as 9 ft at 0.35 = 3.15, and is in the sum", () => {
  const { item } = demoItem("stall-price-ladder");
  if (!item) throw new Error("no ladder");
  const list = yardList(item, exact(1, 8));
  const [bought] = list.ropes;
  expect(bought?.takes).toBeCloseTo(100.99, 3);
  expect(bought && inches(bought.buy)).toBe(108);
  expect(bought?.cost.toFraction()).toBe("63/20");
  const without = yardList({ ...item, cords: [] }, exact(1, 8));
  expect(list.cost.sub(without.cost).toFraction()).toBe("63/20");
});
