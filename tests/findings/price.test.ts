import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { billedWeight } from "../../src/findings/billed-weight.ts";
import {
  hourlyReturn,
  netOf,
  netOfShown,
  priceThatNets,
  soldToPay,
  steppedPrice,
  upTo,
  withProfit,
} from "../../src/findings/price.ts";
import { exact } from "../../src/units/length.ts";
import { formatMoney } from "../../src/units/money.ts";
import type { Channel } from "../../src/yard/shop-rates.ts";

const channel = (own: Partial<Channel>): Channel => ({
  name: "stall",
  fee: exact(3, 100),
  fixed: exact("0.10"),
  sale: exact(0),
  tax: "out",
  step: exact("0.01"),
  ...own,
});

describe("prices", () => {
  it("(50 + 0.30) / (1 - 0.03) = 51.8556…: $51.86 leaves $50 and 0.42 of a cent", () => {
    const fees = channel({ fixed: exact("0.30") });
    expect(formatMoney(priceThatNets(exact(50), fees, exact(0)))).toBe("51.86");
    expect(netOfShown(exact("51.86"), fees, exact(0)).toFraction()).toBe("250021/5000");
  });

  it("adding the fee falls short: 50 x 1.03 + 0.30 = 51.80 leaves 51.80 - 1.554 - 0.30 = 49.946", () => {
    expect(netOf(exact("51.80"), channel({ fixed: exact("0.30") }), exact(0)).valueOf()).toBe(49.946);
  });

  it("with 5 % tax the fee is taken of 105: 100 - 105 x 0.03 - 0.10 = 96.75, and back again", () => {
    expect(netOf(exact(100), channel({}), exact(1, 20)).valueOf()).toBe(96.75);
    expect(priceThatNets(exact("96.75"), channel({}), exact(1, 20)).valueOf()).toBe(100);
  });

  it("the tax stands in the price or is added to it: to keep 96.75, show 105 or 100", () => {
    expect(steppedPrice(exact("96.75"), channel({ tax: "in" }), exact(1, 20)).valueOf()).toBe(105);
    expect(steppedPrice(exact("96.75"), channel({ tax: "out" }), exact(1, 20)).valueOf()).toBe(100);
  });

  it("goes up to the step, never down: 71.00 stays at a step of 1, 71.01 is 72, 71.01 by fives is 75", () => {
    expect(
      [upTo(exact(71), exact(1)), upTo(exact("71.01"), exact(1)), upTo(exact("71.01"), exact(5))].map(Number),
    ).toEqual([71, 72, 75]);
  });

  it("20 % margin is 25 % markup: 80 / 0.8 = 80 x 1.25 = 100", () => {
    expect(withProfit(exact(80), exact(1, 5), "margin").valueOf()).toBe(100);
    expect(withProfit(exact(80), exact(1, 4), "markup").valueOf()).toBe(100);
  });

  it("(90 - 40) / 2 h = $25 an hour; without work there is no such figure", () => {
    expect(hourlyReturn(exact(90), exact(40), exact(2))?.valueOf()).toBe(25);
    expect(hourlyReturn(exact(90), exact(40), exact(0))).toBeUndefined();
  });

  it("100 laid out at 30 a sale is back with the fourth; a sale that brings nothing never pays", () => {
    expect(soldToPay(exact(100), exact(30))).toBe(4);
    expect(soldToPay(exact(90), exact(30))).toBe(3);
    expect(soldToPay(exact(90), exact(0))).toBeUndefined();
  });

  it("billed is the greater: 9.2 lb in 20 x 16 x 12 = 3840 / 139 = 27.6 is 28 lb; 40 lb in the same box is 40 lb", () => {
    expect(billedWeight(9.2, 20 * 16 * 12, 139)).toBe(28);
    expect(billedWeight(40, 20 * 16 * 12, 139)).toBe(40);
  });

  it("278 / 139 = 2 is 2 lb, one cubic inch more is 3", () => {
    expect([billedWeight(1, 278, 139), billedWeight(1, 279, 139)]).toEqual([2, 3]);
  });
});

describe("fees", () => {
  const cents = (most: number) => fc.integer({ min: 0, max: most }).map((n) => exact(n, 100));
  const channels = fc
    .record({
      fee: fc.integer({ min: 0, max: 600 }).map((n) => exact(n, 1000)),
      fixed: cents(500),
      tax: fc.constantFrom("in" as const, "out" as const),
      step: fc.constantFrom("0.01", "0.50", "1.00", "5.00").map((step) => exact(step)),
    })
    .map(channel);
  const taxes = fc.integer({ min: 0, max: 250 }).map((n) => exact(n, 1000));

  it("never leave less than was asked, and a step less would", () => {
    fc.assert(
      fc.property(cents(100_000), channels, taxes, (net, way, tax) => {
        const shown = steppedPrice(net, way, tax);
        expect(netOfShown(shown, way, tax).compare(net)).toBeGreaterThanOrEqual(0);
        expect(netOfShown(shown.sub(way.step), way, tax).compare(net)).toBeLessThan(0);
      }),
    );
  });

  it("asked for more, the price is never lower", () => {
    fc.assert(
      fc.property(cents(100_000), cents(10_000), channels, taxes, (net, more, way, tax) => {
        expect(steppedPrice(net.add(more), way, tax).compare(steppedPrice(net, way, tax))).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});
