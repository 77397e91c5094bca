// Will it fit: the packed size on the product page, from the item and the shop's padding alone.
import { expect, it } from "vitest";
import type { Item } from "../../src/item/item.ts";
import { listingCopy } from "../../src/leaves/listing-copy.ts";
import { productPageLeaf } from "../../src/leaves/product-page.ts";
import { storeItem, storeShop } from "../../src/leaves/store-item.ts";
import { exact } from "../../src/units/length.ts";
import { usualLimits } from "../../src/yard/listing-limits.ts";
import type { Selling } from "../../src/yard/shop-rates.ts";
import { corral, shop } from "./worked-goods.ts";

const selling: Selling = {
  batch: 1,
  overhead: exact(0),
  profit: exact(0),
  profitAs: "markup",
  salesTax: exact(0),
  abrasives: exact(0),
  glue: exact(0),
  sundries: exact(0),
  packing: { material: exact(7129), minutes: exact(7), weight: exact(2), room: exact(3, 2) },
  postage: { divisor: exact(139), base: exact(0), pound: exact(0), most: exact(100) },
  channels: [],
};
const fitOf = (variants: readonly [Item, ...Item[]], name: string, own?: Selling): string | undefined =>
  productPageLeaf(storeItem(variants, shop.division, own), storeShop(shop))
    .fit.find((fact) => fact.name === name)
    ?.value.replaceAll("\u00a0", " ");
const packedOf = (variants: readonly [Item, ...Item[]], own?: Selling) => fitOf(variants, "Packed size", own);

it("30 x 18 x 26 with 1 1/2 of padding all round is 33 x 29 x 21 in, 838 x 737 x 533 mm, and goes through 29 x 21", () => {
  expect(packedOf(corral, selling)).toBe("33 × 29 × 21 in (838 × 737 × 533 mm)");
  expect(fitOf(corral, "Smallest opening", selling)).toMatch(/^29 × 21 in \(737 × 533 mm\)/);
});

it("29 across goes through a door that leaves 30; with 7 of padding 32 and 40 are too wide", () => {
  expect(fitOf(corral, "Through a door", selling)).toBe("yes: an inside door leaves about 30 in (762 mm)");
  const wide = { ...selling, packing: { ...selling.packing, room: exact(7) } };
  // 18 + 14 = 32, 26 + 14 = 40: neither goes through 30.
  expect(fitOf(corral, "Through a door", wide)).toMatch(/^not one/);
});

it("33 x 29 x 21 doesn't go into a boot of 38 x 26 x 18; 5 x 4 x 3 in its padding of 1 1/2 does", () => {
  expect(fitOf(corral, "Into a small car", selling)).toMatch(/^not into a boot of 38 × 26 × 18 in/);
  const small = corral.map((item) => ({
    ...item,
    overall: { width: exact(5), depth: exact(4), height: exact(3) },
  })) as unknown as typeof corral;
  expect(fitOf(small, "Into a small car", selling)).toMatch(/^yes/);
});

it("a pair of 30 x 18 x 26 lies side by side: 2 x 18 + 3 = 39 is the longest", () => {
  const pair = corral.map((item) => ({
    ...item,
    soldAs: { count: 2, words: "pair", weight: 2 * item.weight },
  })) as unknown as typeof corral;
  expect(packedOf(pair, selling)).toMatch(/^39 × 33 × 29 in/);
});

it("a shop that says nothing of packing says nothing of a packed size", () => {
  expect(packedOf(corral)).toBeUndefined();
});

it("the listing has it too, in plain signs; nothing else of how the shop packs gets there", () => {
  const copy = listingCopy(storeItem(corral, shop.division, selling), storeShop(shop), usualLimits);
  expect(copy.measures.join("\n")).toContain("33 x 29 x 21 in (838 x 737 x 533 mm)");
  expect(JSON.stringify(copy)).not.toContain("7129");
});
