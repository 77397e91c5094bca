import { describe, expect, it } from "vitest";
import { planBoards } from "../../src/findings/board-plan.ts";
import { findShortages } from "../../src/findings/board-shortages.ts";
import { cutPlanJson } from "../../src/findings/cut-plan-json.ts";
import { yardList } from "../../src/findings/yard-list.ts";
import type { Item } from "../../src/item/item.ts";
import { binderEdition } from "../../src/leaves/edition.ts";
import { yardSheet } from "../../src/leaves/yard-sheet.ts";
import type { Board, BoardLength, OwnBoard } from "../../src/yard/yard.ts";
import { corral, rack, shop } from "../leaves/worked-goods.ts";
import { board, fenceBoard, inch, piece, stock } from "./timber.ts";

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

describe("what lies in the shop and what the seller has", () => {
  const whole = stock("72", "70 1/2", "4.25");
  const from = (lengths: readonly BoardLength[], own: readonly OwnBoard[] = []) => ({
    ...board("fence board", "5/8", "5 1/2", lengths),
    ...(own.length > 0 ? { own } : {}),
  });
  const three = (of: Board): Item => ({ ...plain, pieces: [piece("A", 3, inch("35"), of)] });
  const offcut: OwnBoard = { length: inch("36"), usable: inch("35 3/4"), width: inch("5 1/2"), count: 2 };

  it("three of 35 take two boards at $4.25, 2 x 35 + 1/8 of 70 1/2 one of them; with an offcut of 36 in the shop, one", () => {
    expect(yardList(three(from([whole])), shop.kerf).boards.map(({ count }) => count)).toEqual([2]);
    const list = yardList(three(from([whole], [offcut])), shop.kerf);
    expect(list.boards.map(({ count, cost }) => [count, cost.valueOf()])).toEqual([[1, 4.25]]);
    expect(list.own.map(({ length, count }) => [length.valueOf(), count])).toEqual([[36, 1]]);
    expect(list.plan.filter(({ own }) => own).map(({ endLoss }) => endLoss.valueOf())).toEqual([1 / 4]);
  });

  it("a price holds for the next one too: it counts on nothing in the shop, two boards at $4.25", () => {
    const boards = planBoards(three(from([whole], [offcut])).pieces, shop.kerf);
    expect(boards.map(({ own, stock: { price } }) => [own, price.valueOf()])).toEqual([
      [false, 4.25],
      [false, 4.25],
    ]);
  });

  it("more in the shop never costs more at the yard", () => {
    let before = Number.POSITIVE_INFINITY;
    for (const count of [1, 2, 3, 4]) {
      const { boards } = yardList(three(from([whole], [{ ...offcut, count }])), shop.kerf);
      const cost = boards.reduce((sum, line) => sum + line.cost.valueOf(), 0);
      expect(cost).toBeLessThanOrEqual(before);
      before = cost;
    }
    expect(before).toBe(0);
  });

  it("where the seller has one of 72 only, the other is bought 48 long at $4.00", () => {
    const lengths = [stock("48", "46 1/2", "4.00"), { ...whole, most: 1 }];
    const list = yardList(three(from(lengths)), shop.kerf);
    expect(list.boards.map(({ stock: { length }, count }) => [length.valueOf(), count])).toEqual([
      [72, 1],
      [48, 1],
    ]);
  });

  it("one board there is too few for three of 35: too-few-boards, at the board's place in the yard", () => {
    const short = from([{ ...whole, most: 1 }]);
    expect(findShortages(three(short), shop.kerf).map(({ code, at, says }) => [code, at, says])).toEqual([
      [
        "too-few-boards",
        short.at,
        'The boards of "fence board" are too few for the hose-and-pot corral: there are 1 of 72 in.',
      ],
    ]);
    expect(findShortages(three(from([{ ...whole, most: 2 }])), shop.kerf)).toEqual([]);
    expect(findShortages(three(from([whole])), shop.kerf)).toEqual([]);
  });
});

describe("what the JSON says of the plan", () => {
  it("one board of 72 at $4.25 for two of 30: places from the fresh end, money as text, proven", () => {
    const item: Item = { ...plain, pieces: [piece("A", 2, inch("30"), fenceBoard)] };
    const { cutPlan, yardList: bought } = cutPlanJson(yardList(item, shop.kerf));
    expect(cutPlan).toEqual({
      boards: [
        {
          number: 1,
          board: "fence board",
          length: 72,
          width: 5.5,
          own: false,
          cost: "4.25",
          order: "rip",
          endLoss: 1.5,
          pieces: [
            { mark: "A", length: 30, width: 5.5, at: 0, across: 0, turned: false, flipped: false },
            { mark: "A", length: 30, width: 5.5, at: 30.125, across: 0, turned: false, flipped: false },
          ],
        },
      ],
      cost: "4.25",
      lowerBound: "4.25",
      proven: true,
    });
    expect(bought.boards).toEqual([
      { board: "fence board", length: 72, count: 1, each: "4.25", cost: "4.25", priced: "2026-01-10" },
    ]);
  });
});

describe("what the vehicle can't take", () => {
  it("is named on the yard list: 120 stays at the yard", () => {
    const long = {
      ...board("fence board", "5/8", "5 1/2", [stock("72", "70 1/2", "4.25")]),
      tooLong: [stock("120", "118 1/2", "7.00")],
    };
    const item: Item = { ...plain, pieces: [piece("A", 1, inch("30"), long)] };
    const { notes } = yardSheet([{ item, list: yardList(item, shop.kerf) }], binderEdition(shop.division).bare);
    expect(notes).toContain("Too long for the vehicle, so left at the yard: fence board of 120.");
  });
});
