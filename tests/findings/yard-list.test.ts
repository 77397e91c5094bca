import { describe, expect, it } from "vitest";
import { yardList } from "../../src/findings/yard-list.ts";
import { corral, rack, shop } from "../leaves/worked-goods.ts";

const [plain, white, oiled] = corral;

describe("yard list", () => {
  it("the corral is bought as 5 fence boards at $4.25: $21.25", () => {
    const { boards } = yardList(plain, shop.kerf);
    expect(boards.map(({ board, count, cost }) => [board.name, count, cost.valueOf()])).toEqual([
      ["fence board", 5, 21.25],
    ]);
  });

  it("fasteners come in whole packs, and no pack too many", () => {
    for (const { fastener, count, packs, cost } of yardList(plain, shop.kerf).fasteners) {
      expect(packs * fastener.pack.count).toBeGreaterThanOrEqual(count);
      expect((packs - 1) * fastener.pack.count).toBeLessThan(count);
      expect(cost.equals(fastener.pack.price.mul(packs))).toBe(true);
    }
  });

  it("counts every fastener that is driven, once", () => {
    const driven = plain.joins.reduce((sum, join) => sum + join.driven.length, 0);
    expect(yardList(plain, shop.kerf).fasteners.reduce((sum, { count }) => sum + count, 0)).toBe(driven);
  });

  it("41 members of 2 sq ft, two coats at 200 sq ft a gallon: 0.82 gal of oil, 4 tins of a quart, $72", () => {
    const [tin] = yardList(oiled, shop.kerf).finishes;
    expect(tin?.gallons).toBeCloseTo(0.82, 12);
    expect([tin?.tins, tin?.cost.valueOf()]).toEqual([4, 72]);
  });

  it("two finishes are two tins: 20 members take 0.4 gal of white, 21 take 0.42 gal of oil, two quarts of each", () => {
    expect(yardList(white, shop.kerf).finishes.map(({ finish, tins }) => [finish.name, tins])).toEqual([
      ["white", 2],
      ["oil", 2],
    ]);
  });

  it("the whole costs what its lines cost together, to the cent", () => {
    const list = yardList(oiled, shop.kerf);
    const lines = [...list.boards, ...list.fasteners, ...list.finishes, ...list.fittings];
    expect(list.cost.valueOf()).toBe(lines.reduce((sum, line) => sum + line.cost.valueOf(), 0));
    expect(list.cost.sub(yardList(plain, shop.kerf).cost).valueOf()).toBe(72);
  });

  it("every price carries the day it was seen, oldest first", () => {
    expect(yardList(oiled, shop.kerf).priced).toEqual(["2025-01-01", "2026-01-10", "2026-02-03"]);
  });

  it("the rack brings one anchor kit at $6", () => {
    const [kit] = yardList(rack[0], shop.kerf).fittings;
    expect([kit?.count, kit?.cost.valueOf()]).toEqual([1, 6]);
  });
});
