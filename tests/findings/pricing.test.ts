import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { moneyJson } from "../../src/findings/money-json.ts";
import { type Pricing, plansOf, pricingOf, pricingsOf } from "../../src/findings/pricing.ts";
import type { Item } from "../../src/item/item.ts";
import { workJson } from "../../src/item/work-json.ts";
import { exact } from "../../src/units/length.ts";
import { formatMoney } from "../../src/units/money.ts";
import { pricedShop, riserRecipe, riserYard, shopText, workItem } from "./riser.ts";
import { board, stock } from "./timber.ts";

const shop = pricedShop();
const riser = workItem(riserRecipe);
const pricing = pricingOf(riser, shop);
const money = (of: Pricing["batchCosts"]["whole"] | undefined) => (of ? formatMoney(of) : undefined);
const sold = (of: Pricing, name: string) => of.channels.find(({ channel }) => channel.name === name);

describe("what a riser costs", () => {
  it("board 9.60, six screws 0.60, 3.02 fl oz of a 32 oz tin 2.265, abrasives 0.353, sundries 0.50: 13.318", () => {
    expect(pricing.batchCosts.lines.map(({ name, cost, priced }) => [name, cost.valueOf(), priced])).toEqual([
      ["plank", 9.6, "2026-10-03"],
      ["screw No. 8 x 2", 0.6, "2026-09-01"],
      ["oil", 2.265, "2026-10-03"],
      ["abrasives", 0.353, undefined],
      ["sundries", 0.5, undefined],
    ]);
    expect(pricing.batchCosts.material.valueOf()).toBe(13.318);
  });

  it("61.12 minutes at 30 an hour are 30.56; (13.318 + 30.56) x 1.1 = 48.2658", () => {
    expect(pricing.batchCosts.labour.valueOf()).toBe(30.56);
    expect(pricing.batchCosts.whole.valueOf()).toBe(48.2658);
    expect(pricing.batchCosts.overhead.valueOf()).toBe(4.3878);
  });

  it("whole boards, planned anew: 1, 1, 3 and 5 of them for 1, 2, 5 and 10: 9.60, 4.80, 5.76 and 4.80 for one", () => {
    const counts = pricing.costs.map(({ lines }) => lines.find(({ kind }) => kind === "board")?.amount.valueOf());
    expect(counts).toEqual([1, 1, 3, 5]);
    expect(pricing.costs.map(({ boards }) => money(boards))).toEqual(["9.60", "4.80", "5.76", "4.80"]);
  });

  it("laid out for one: a board 9.60, a pack 10.00 and a tin 24.00: 43.60", () => {
    expect(money(pricing.costs[0]?.laidOut)).toBe("43.60");
  });

  it("laid out for ten: 5 boards 48.00, 60 screws from one pack 10.00, 30.2 fl oz from one tin 24.00: 82.00", () => {
    expect(money(pricing.costs[3]?.laidOut)).toBe("82.00");
  });
});

describe("what it sells for", () => {
  it("local, no fee: 48.2658 / 0.75 = 64.3544, shown as 65; the floor 48.2658 as 49", () => {
    expect([money(sold(pricing, "local")?.target), money(sold(pricing, "local")?.floor)]).toEqual(["65.00", "49.00"]);
  });

  it("stall: (64.3544 + 4 + 0.10) / (1 - 0.03 x 1.05) = 70.6808, with 5 % tax 74.2149, by halves 74.50", () => {
    expect(money(sold(pricing, "stall")?.target)).toBe("74.50");
  });

  it("stall floor: (48.2658 + 4 + 0.10) / 0.9685 x 1.05 = 56.7725, by halves 57.00", () => {
    expect(money(sold(pricing, "stall")?.floor)).toBe("57.00");
  });

  it("24 x 5 1/2 x 8 3/4 with 1 in of room is 26 x 11 x 8 = 2288 / 139 = 16.5: billed 17 lb, 5.00 + 17 x 0.50 = 13.50", () => {
    expect(pricing.parcel.sizes).toEqual([26, 11, 8]);
    expect([pricing.parcel.bySize, pricing.parcel.billed, money(pricing.parcel.postage)]).toEqual([17, 17, "13.50"]);
  });

  it("posted: (13.318 + 3 + 30.56 + 3) x 1.1 = 54.8658, / 0.75 + 13.50 + 0.20 = 86.8544, + 0.45 over 0.93175 = 93.6994: 94", () => {
    expect(sold(pricing, "posted")?.cost.valueOf()).toBe(54.8658);
    expect(money(sold(pricing, "posted")?.target)).toBe("94.00");
  });

  it("local an hour brings (65 - (48.2658 - 30.56)) / (61.12 / 60) = 46.43", () => {
    expect(money(sold(pricing, "local")?.hourly)).toBe("46.43");
  });

  it("at a price that leaves just the floor an hour brings the wage of 30.00", () => {
    const atCost = pricingOf(
      riser,
      pricedShop(shopText.replace("profit: 25", "profit: 0").replaceAll(/step: .*/g, "step: 0.0001")),
    );
    for (const { hourly } of atCost.channels) expect(money(hourly)).toBe("30.00");
  });

  it("of one sold, 43.60 laid out is back with the first sale at 65", () => {
    expect(sold(pricing, "local")?.pays).toBe(1);
  });

  it("billed above what may be sent, there is no posted price", () => {
    const light = pricingOf(riser, pricedShop(shopText.replace("most: 100 lb", "most: 16 lb")));
    expect(light.channels.map(({ channel }) => channel.name)).toEqual(["local", "stall"]);
    expect([light.parcel.billed, light.parcel.postage]).toEqual([17, undefined]);
  });

  it("plain it costs less: (11.053 + 21.03) x 1.1 = 35.2913, / 0.75 = 47.0551: 48, so oil is 17 more", () => {
    const [oiled, plain] = pricingsOf([riser, workItem(riserRecipe, undefined, "plain")], shop);
    expect(plain?.batchCosts.whole.valueOf()).toBe(35.2913);
    expect(oiled && plain && money(sold(oiled, "local")?.target.sub(sold(plain, "local")?.target ?? 0))).toBe("17.00");
  });
});

/** The same item from boards at other prices. */
const withBoards = (
  item: Item,
  change: (one: Item["pieces"][number]["board"]) => Item["pieces"][number]["board"],
): Item => ({
  ...item,
  pieces: item.pieces.map((piece) => ({ ...piece, board: change(piece.board) })),
});
const dearer = (item: Item, price: ReturnType<typeof exact>): Item =>
  withBoards(item, (one) => ({ ...one, lengths: one.lengths.map((length) => ({ ...length, price })) }));

describe("the alarm", () => {
  it("the stall leaves least: 74.50 / 1.05 - 2.235 - 0.10 - 52.2658 = 16.3516; / 1.1 = 14.8651, so up to 24.46 for 9.60", () => {
    expect(
      pricing.alarm.boards.map(({ board, lengths }) => [
        board,
        ...lengths.map(({ now, most }) => [money(now), money(most)]),
      ]),
    ).toEqual([["plank", ["9.60", "24.46"]]]);
  });

  it("at 24.46 every floor is at most the target of today; at 24.47 one is above it", () => {
    const above = (price: string) =>
      pricingOf(
        dearer(riser, exact(price)),
        pricedShop(shopText.replaceAll(/step: .*/g, "step: 0.0001")),
      ).channels.filter(({ channel, floor }) => floor.compare(sold(pricing, channel.name)?.target ?? 0) > 0);
    expect(above("24.46")).toEqual([]);
    expect(above("24.47").map(({ channel }) => channel.name)).toEqual(["stall"]);
  });
});

describe("dearer boards", () => {
  const lengths = ["48", "72", "96"] as const;
  const prices = fc.tuple(...lengths.map(() => fc.integer({ min: 200, max: 3000 })));
  const bought = (cents: readonly number[]) =>
    withBoards(riser, () =>
      board(
        "plank",
        "3/4",
        "5 1/2",
        lengths.map((length, i) => stock(length, length, `${exact(cents[i] ?? 0, 100).valueOf()}`)),
      ),
    );

  it("never make the boards of any batch cheaper, whichever length it is", () => {
    fc.assert(
      fc.property(prices, fc.integer({ min: 0, max: 2 }), fc.integer({ min: 1, max: 2000 }), (cents, which, more) => {
        const before = pricingOf(bought(cents), shop).costs;
        const after = pricingOf(bought(cents.map((one, i) => (i === which ? one + more : one))), shop).costs;
        for (const [i, { boards }] of before.entries())
          expect(after[i]?.boards.compare(boards)).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 30 },
    );
  });

  it("all by the same share, never lower any price", () => {
    fc.assert(
      fc.property(prices, fc.integer({ min: 1, max: 5 }), (cents, times) => {
        const before = pricingOf(bought(cents), shop);
        const after = pricingOf(bought(cents.map((one) => one * times)), shop);
        for (const { channel, target, floor } of before.channels) {
          expect(sold(after, channel.name)?.target.compare(target)).toBeGreaterThanOrEqual(0);
          expect(sold(after, channel.name)?.floor.compare(floor)).toBeGreaterThanOrEqual(0);
        }
      }),
      { numRuns: 30 },
    );
  });
});

describe("as JSON", () => {
  const json = { ...workJson(riser), ...moneyJson(riser, shop) };

  it("has the promised keys hours, cost and price behind those of the item", () => {
    expect(Object.keys(json)).toEqual([...Object.keys(workJson(riser)), "hours", "cost", "price"]);
  });

  it("money is text with two decimals, hours are numbers", () => {
    expect(json).toMatchObject({
      hours: [{ units: 1, work: [{ work: "crosscut", count: 3 }, {}, {}, {}] }, {}, {}, {}],
      cost: { batch: 1, perUnit: "48.27", batches: [{ units: 1, material: "13.32", labour: "30.56" }, {}, {}, {}] },
      price: {
        channels: [{ name: "local", target: "65.00" }, { name: "stall" }, { name: "posted" }],
        parcel: { billed: 17 },
      },
    });
    expect(json.hours?.[0]?.perUnit).toBeCloseTo(61.12 / 60, 12);
    expect(JSON.stringify([json.cost, json.price])).not.toMatch(/null|NaN|\d\.\d{3}/);
  });

  it("a key whose figures the shop has not said is absent", () => {
    const { selling: _, ...timed } = shop;
    const { minutes: __, ...bare } = timed;
    expect(Object.keys(moneyJson(riser, timed))).toEqual(["hours"]);
    expect(moneyJson(riser, bare)).toEqual({});
  });

  it("every plan of a batch holds all its pieces: 3, 6, 15, 30", () => {
    const held = [...plansOf(riser, shop.kerf).values()].map(
      (plan) => plan.flatMap(({ strips }) => strips.flatMap(({ pieces }) => pieces)).length,
    );
    expect(held).toEqual([3, 6, 15, 30]);
  });
});

it("the yard's own text prices it too: 96 in at 12.00 makes 2.40 more material for one", () => {
  const dear = pricingOf(workItem(riserRecipe, riserYard("96: 12.00")), shop);
  expect(dear.batchCosts.material.sub(pricing.batchCosts.material).valueOf()).toBe(2.4);
});
