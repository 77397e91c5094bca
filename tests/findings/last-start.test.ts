import { describe, expect, it } from "vitest";
import { benchMinutes, leadOf, startBy, startByOfYear } from "../../src/findings/last-start.ts";
import { orderStart } from "../../src/findings/order-start.ts";
import { orderedOf } from "../../src/findings/ordered.ts";
import { pricingOf, pricingsOf } from "../../src/findings/pricing.ts";
import { seasonPlannerLeaf } from "../../src/leaves/season-planner.ts";
import { exact } from "../../src/units/length.ts";
import { readOrders } from "../../src/yard/read-orders.ts";
import { pricedShop, riserRecipe, riserWith, riserYard, workItem } from "./riser.ts";

const shop = pricedShop();
const bench = { from: 8 * 60, to: 18 * 60 };
const oiled = workItem(riserRecipe);
const plain = workItem(riserRecipe, riserYard(), "plain");

describe("how long a batch takes until it can be sold", () => {
  it("600 minutes are one day of ten hours, 601 are two; bare wood waits for no finish: 1 + 0 + 1 and 2 + 0 + 1", () => {
    expect(leadOf(plain, exact(600), bench)).toEqual({ work: 1, finish: 0, packing: 1, days: 2 });
    expect(leadOf(plain, exact(601), bench)).toEqual({ work: 2, finish: 0, packing: 1, days: 3 });
  });

  it("after every five days at the bench come two off: five days are 5, six are 6 + 2 = 8, eleven are 11 + 4 = 15", () => {
    expect([5, 6, 11].map((days) => leadOf(plain, exact(600 * days), bench).work)).toEqual([5, 8, 15]);
  });

  it("two coats of oil, 24 h apart, 72 h to cure: begun on day 1 at 8, the second on day 2, usable on day 5", () => {
    expect(leadOf(oiled, exact(60), bench)).toEqual({ work: 1, finish: 5, packing: 1, days: 7 });
  });

  it("the coats' own minutes are in their drying: 61.12 less 2 x 3.53 + 2 x 6 = 19.06 leaves 42.06", () => {
    expect(benchMinutes(pricingOf(oiled, shop).batchHours).valueOf()).toBe(42.06);
  });

  it("seven days before 2026-12-05 it is 2026-11-28; before 03-04 of any year it is 02-25", () => {
    const lead = leadOf(oiled, exact(60), bench);
    expect(startBy("2026-12-05", lead)).toBe("2026-11-28");
    expect(startByOfYear("03-04", lead)).toBe("02-25");
  });

  it("over the turn of the year: seven days before 01-03 it is 12-27", () => {
    expect(startByOfYear("01-03", leadOf(oiled, exact(60), bench))).toBe("12-27");
  });
});

describe("an order", () => {
  it("of three goes by the pace of two at once, and is begun so many days before it is due", () => {
    const { orders } = readOrders([
      {
        file: "o.yaml",
        text: "7:\n  item: Stall riser\n  count: 3\n  due: 2026-12-05\n  approved: no\n  price: 64.00\n",
      },
    ]);
    const { ordered } = orders[0] ? orderedOf(orders[0], [[oiled, plain]]) : {};
    const { hours } = pricingOf(oiled, shop);
    const two = hours.find(({ units }) => units === 2);
    if (!ordered || !two) throw new Error("no order");
    const start = orderStart(ordered, hours, bench);
    expect(start.lead).toEqual(leadOf(oiled, benchMinutes(two).div(2).mul(3), bench));
    expect(start.day).toBe("2026-11-28");
  });
});

describe("the season planner", () => {
  const goods = (season: string, title = "Stall riser") =>
    pricingsOf(
      ["oiled", "plain"].map((variant) =>
        workItem(riserWith(`season: ${season}`).replace("Stall riser", title), riserYard(), variant),
      ),
      shop,
    );

  it("counts back from the first day for the variant that takes longest, oiled: 7 days before 03-20 and 06-30", () => {
    const { table } = seasonPlannerLeaf([goods("03-20 to 06-30")], shop);
    expect(table.rows[0]?.cells.slice(0, 6)).toEqual(["03-13", "03-20", "06-30", "06-23", "1", "oiled"]);
    expect(table.rows[0]?.cells.at(-1)).toBe("1 + 5 + 1 = 7");
  });

  it("stands by the day to begin; what has no season isn't in it", () => {
    const { table } = seasonPlannerLeaf(
      [goods("09-01 to 10-31", "Late riser"), pricingsOf([oiled], shop), goods("03-20 to 06-30")],
      shop,
    );
    expect(table.rows.map(({ link }) => link.text)).toEqual(["Stall riser", "Late riser"]);
  });
});
