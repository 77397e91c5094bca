import { expect, it } from "vitest";
import { storeIndexLeaf } from "../../src/leaves/store-index.ts";
import type { StoreItem } from "../../src/leaves/store-item.ts";
import { storeItem, storeShop } from "../../src/leaves/store-item.ts";
import { exact } from "../../src/units/length.ts";
import { corral, shop } from "./worked-goods.ts";

const goods = storeItem(corral, shop.division);
const choiceOf = (item: StoreItem): string | undefined => storeIndexLeaf([item], storeShop(shop)).goods[0]?.choice;

const form = (name: string, width: number): StoreItem["forms"][number] => ({
  name,
  overall: { ...goods.overall, width: exact(width) },
  weight: 10,
  woods: goods.woods,
});

it("what comes in one size says how many finishes it has, by name", () => {
  const names = goods.variants.map(({ name }) => name).join(", ");
  expect(choiceOf(goods)).toBe(`${goods.variants.length} finishes: ${names}`);
});

it("12, 16 and 20 wide are 3 sizes; two of one size are versions", () => {
  expect(choiceOf({ ...goods, forms: [form("small", 12), form("medium", 16), form("large", 20)] })).toMatch(
    /^3 sizes, \d finishes: /,
  );
  expect(choiceOf({ ...goods, forms: [form("with a lid", 12), form("open", 12)] })).toMatch(/^2 versions, /);
});
