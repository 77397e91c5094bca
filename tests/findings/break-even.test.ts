import { describe, expect, it } from "vitest";
import { breakEven, setUpMinutes } from "../../src/findings/break-even.ts";
import { pricingOf } from "../../src/findings/pricing.ts";
import { exact } from "../../src/units/length.ts";
import { pricedShop, riserRecipe, riserWith, shopText, workItem } from "./riser.ts";

const shop = pricedShop(shopText.replace("    sale: 4.00", "    sale: 4.00\n    day: 40.00"));
const sold = (lines = "") => {
  const { channels, batchHours } = pricingOf(workItem(lines === "" ? riserRecipe : riserWith(lines)), shop);
  return { stall: channels.find(({ channel }) => channel.name === "stall"), batchHours };
};

describe("break-even", () => {
  it("a day of $40 at $16.35 over the floor is paid by the third sold; at nothing over it, never", () => {
    expect(breakEven(exact("16.35"), exact(10), 1, exact(40)).day).toBe(3);
    expect(breakEven(exact(0), exact(10), 1, exact(40)).day).toBeUndefined();
  });

  it("setting up for $30, a tenth of it in each of ten, and $2 over the floor: 30 / (2 + 3) = 6 sold", () => {
    expect(breakEven(exact(2), exact(30), 10).setUp).toBe(6);
  });

  it("at just the floor the whole batch pays the setting up: 30 / (0 + 3) = 10", () => {
    expect(breakEven(exact(0), exact(30), 10).setUp).toBe(10);
  });

  it("$3 short of the floor, with a share of $3, nothing is left for it", () => {
    expect(breakEven(exact(-3), exact(30), 10)).toEqual({});
  });

  it("the riser: to fetch 20, crosscut 2 stops x 2, screws 5, two coats x 6: 41 minutes", () => {
    expect(setUpMinutes(sold().batchHours).valueOf()).toBe(41);
  });

  it("screws that take twice as long set up twice as long: 41 + 5 = 46", () => {
    expect(setUpMinutes(sold("record:\n  2026-10-12: 1 made, screw 16").batchHours).valueOf()).toBe(46);
  });

  it("at the stall 16.3516 are over the floor: a day of 40 is paid by 3; asked at 57, 0.2099 over it, by 191", () => {
    expect(sold().stall?.even.day).toBe(3);
    expect(sold("price: 120, stall 57").stall?.asked?.even.day).toBe(191);
  });
});
