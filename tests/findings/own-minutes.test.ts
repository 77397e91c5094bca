import { describe, expect, it } from "vitest";
import { compare } from "../../src/findings/comparables.ts";
import { allHours, plansOf } from "../../src/findings/pricing.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { recordLine } from "../../src/recipe/record.ts";
import { pricedShop, riserRecipe, riserWith, riserYard, workItem } from "./riser.ts";

const shop = pricedShop();
/** Hours of a single riser: by the shop 20 to fetch, screws 8, coats 19.06, 61.12 in all. */
const hours = (lines: string, variant?: string) => {
  const item = workItem(lines === "" ? riserRecipe : riserWith(lines), riserYard(), variant);
  return allHours(item, plansOf(item, shop.kerf), shop.kerf, shop.minutes);
};
const line = (of: ReturnType<typeof hours>, work: string, i = 0) => of[i]?.lines.find((one) => one.work === work);

describe("a recipe's own minutes", () => {
  it("one riser: screws guessed at 6 x 0.5 + 5 = 8 took 12, so they take 1.5 times as long, in every batch", () => {
    const own = hours("record:\n  2026-10-12: 1 made, screw 12");
    expect(line(own, "screw")?.minutes.valueOf()).toBe(12);
    expect(line(own, "screw")?.own).toMatchObject({ n: 1 });
    expect(line(own, "screw", 2)?.minutes.valueOf()).toBe((30 * 0.5 + 5) * 1.5);
  });

  it("two batches count by their minutes: (12 + 18) over (8 + 20) = 15/14, between 0.9 and 1.5 times", () => {
    const own = line(hours("record:\n  2026-10-12: 1 made, screw 12\n  2026-10-20: 5 made, screw 18"), "screw")?.own;
    expect(own?.share.toFraction()).toBe("15/14");
    expect([own?.n, own?.least.valueOf(), own?.most.valueOf()]).toEqual([2, 0.9, 1.5]);
  });

  it("fetching 25 instead of 20 minutes; what wasn't written down stays: 61.12 + 5 = 66.12", () => {
    const [one] = hours("record:\n  2026-10-12: 1 made, fetch 25");
    expect(one?.fetch.valueOf()).toBe(25);
    expect(one?.perUnit.valueOf()).toBe(66.12);
  });

  it("of the whole alone: 76.4 for 61.12 is 1.25 times, for every work; a line of its own wins: 53.12 x 1.25 + 8 = 74.4", () => {
    expect(hours("record:\n  2026-10-12: 1 made, all 76.4")[0]?.perUnit.valueOf()).toBe(76.4);
    const both = hours("record:\n  2026-10-12: 1 made, all 76.4\n  2026-10-20: 1 made, screw 8");
    expect(both[0]?.perUnit.valueOf()).toBe(74.4);
  });

  it("a batch of three is planned for itself: screws 18 x 0.5 + 5 = 14, taken 7, are half", () => {
    expect(line(hours("record:\n  2026-10-12: 3 made, screw 7"), "screw")?.minutes.valueOf()).toBe(4);
  });

  it("coats of another finish don't count, its screws do", () => {
    const lines = "record:\n  2026-10-12: 1 made in plain, coat 99, screw 12";
    expect(line(hours(lines), "coat")?.own).toBeUndefined();
    expect(line(hours(lines), "screw")?.own?.n).toBe(1);
    expect(line(hours(lines, "plain"), "coat")).toBeUndefined();
  });

  it("work that the thing has none of changes nothing: no ropes to tie, 61.12 stays", () => {
    expect(hours("record:\n  2026-10-12: 1 made, tie 40")[0]?.perUnit.valueOf()).toBe(61.12);
  });

  it("the line to fill in is one that can be read once it is filled", () => {
    const blank = recordLine(5, "oiled", ["fetch", "crosscut", "screw"]);
    expect(blank).toBe("20__-__-__: 5 made in oiled, fetch ___, crosscut ___, screw ___");
    const filled = blank.replace("20__-__-__", "2026-11-03").replaceAll("___", "30");
    expect(readRecipe("riser.md", riserWith(`record:\n  ${filled}`)).problems).toEqual([]);
  });
});

describe("prices seen elsewhere", () => {
  const seen = (lines: string) => compare(workItem(riserWith(`comparables:\n${lines}`)), "2026-10-03");

  it("of 40, 55 and 79 the middle one is 55; of two, 40 and 55, half way: 47.50", () => {
    const three = seen("  fair: 79, 2026-05-09, 28 x 16 x 24\n  shop: 40, 2026-09-01\n  net: 55.00, 2026-10-02");
    expect(three?.median.valueOf()).toBe(55);
    expect(three?.rows[0]?.size).toBe("28 x 16 x 24");
    expect(seen("  shop: 40, 2026-09-01\n  net: 55.00, 2026-10-02")?.median.valueOf()).toBe(47.5);
  });

  it("from 2026-05-09 to the newest board price of 2026-10-03 it is 22 + 30 + 31 + 31 + 30 + 3 = 147 days", () => {
    expect(seen("  fair: 79, 2026-05-09")).toMatchObject({ against: "2026-10-03", rows: [{ age: 147 }] });
  });

  it("seen after it, it counts to itself: 0 days", () => {
    expect(seen("  fair: 79, 2026-11-20")).toMatchObject({ against: "2026-11-20", rows: [{ age: 0 }] });
  });

  it("none typed, none told", () => {
    expect(compare(workItem(riserRecipe), "2026-10-03")).toBeUndefined();
  });
});
