import { describe, expect, it } from "vitest";
import { planBoards } from "../../src/findings/board-plan.ts";
import { gluedJoins, type Hours, hoursOf, rateOf, sandedFeet } from "../../src/findings/hours.ts";
import { allHours, plansOf } from "../../src/findings/pricing.ts";
import { pricedShop, riserRecipe, shopText, workItem } from "./riser.ts";
import { fenceBoard, inch, kerf, piece } from "./timber.ts";

const shop = pricedShop();
const riser = workItem(riserRecipe);
const hours = allHours(riser, plansOf(riser, kerf), kerf, shop.minutes);
const line = (of: Hours | undefined, work: string) => of?.lines.find((one) => one.work === work);

/** The same item with other pieces, cut as they are packed. */
function sawing(...pieces: ReturnType<typeof piece>[]) {
  const item = { ...riser, pieces };
  return hoursOf(item, 1, planBoards(pieces, kerf), kerf, shop.minutes);
}

describe("the hours of a riser: shelf 24, two legs 8, six screws, two coats", () => {
  it("air reaches 308.25 + 2 x 108.25 - 4 x 4.125 = 508.25 sq in, 3.53 sq ft", () => {
    expect(sandedFeet(riser).valueOf()).toBe(3.53);
  });

  it("one takes 20 + (3 x 1 + 2 x 2) + 3.53 x 2 + (6 x 0.5 + 5) + (7.06 x 1 + 2 x 6) = 61.12 minutes", () => {
    expect(
      hours[0]?.lines.map(({ work, count, setUps, minutes }) => [work, count.valueOf(), setUps, minutes.valueOf()]),
    ).toEqual([
      ["crosscut", 3, 2, 7],
      ["sand", 3.53, 1, 7.06],
      ["screw", 6, 1, 8],
      ["coat", 7.06, 2, 19.06],
    ]);
    expect(hours[0]?.perUnit.toFraction()).toBe("1528/25");
  });

  it("two share fetching and set-ups: 20 + 10 + 14.12 + 11 + 26.12 = 81.24 minutes, 40.62 each", () => {
    expect([hours[1]?.minutes.valueOf(), hours[1]?.perUnit.valueOf()]).toEqual([81.24, 40.62]);
  });

  it("the more at once, the less time for one: 1, 2, 5, 10", () => {
    const each = hours.map(({ perUnit }) => perUnit.valueOf());
    expect(hours.map(({ units }) => units)).toEqual([1, 2, 5, 10]);
    expect([...each].sort((a, b) => b - a)).toEqual(each);
  });

  it("plain it has nothing to coat: 61.12 - 19.06 = 42.06 minutes", () => {
    const plain = workItem(riserRecipe, undefined, "plain");
    const [one] = allHours(plain, plansOf(plain, kerf), kerf, shop.minutes);
    expect(one?.perUnit.valueOf()).toBe(42.06);
  });

  it("sold as a pair, one sold is two made: 81.24 minutes", () => {
    const pair = { ...riser, soldAs: { count: 2, words: "pair", weight: 2 * riser.weight } };
    const [one] = allHours(pair, plansOf(pair, kerf), kerf, shop.minutes);
    expect([one?.units, one?.made, one?.perUnit.valueOf()]).toEqual([1, 2, 81.24]);
  });
});

describe("saw cuts are those of the board plan", () => {
  it("two strips of 1 11/16 out of 5 1/2 are two rips, at one setting, and the board's end is trimmed once: 1 + 4 crosscuts", () => {
    const done = sawing(piece("A", 4, inch("30"), fenceBoard, inch("1 11/16")));
    expect([line(done, "rip")?.count.valueOf(), line(done, "rip")?.setUps]).toEqual([2, 1]);
    expect([line(done, "crosscut")?.count.valueOf(), line(done, "crosscut")?.setUps]).toEqual([5, 1]);
  });

  it("three strips of 1 3/4 fill 5 1/2 with their two kerfs: 3 x 1 3/4 + 2/8 = 5 1/2, two rips", () => {
    expect(line(sawing(piece("A", 3, inch("60"), fenceBoard, inch("1 3/4"))), "rip")?.count.valueOf()).toBe(2);
  });

  it("a piece as long as the usable 70 1/2: the end is trimmed, and it is cut at the stop like any other: two crosscuts", () => {
    expect(line(sawing(piece("A", 1, inch("70 1/2"), fenceBoard)), "crosscut")?.count.valueOf()).toBe(2);
  });

  it("a board of full width isn't ripped", () => {
    expect(line(sawing(piece("A", 1, inch("30"), fenceBoard)), "rip")).toBeUndefined();
  });

  it("a piece glued up of three boards has two seams; two such pieces have four", () => {
    const blank = {
      board: fenceBoard,
      length: inch("12"),
      width: inch("5 1/2"),
      thickness: inch("5/8"),
      count: 3,
      grain: "along",
      ripped: false,
      planed: false,
    } as const;
    const glued = { ...piece("A", 2, inch("12"), fenceBoard), blanks: [blank] };
    expect(gluedJoins({ ...riser, pieces: [glued] })).toBe(4);
  });
});

describe("times that were taken", () => {
  const timed = pricedShop(`${shopText}timed:\n  screw: 40 for 32; 36 for 30; 30 for 20\n  sand: 9 for 4.5\n`);

  it("win over the shop's guess: (40 + 36 + 30) / (32 + 30 + 20) = 106/82 minutes a screw", () => {
    expect(rateOf(timed.minutes, "screw").rate.each.toFraction()).toBe("53/41");
  });

  it("are told with their number and spread: 3 times, 36/30 = 1.2 to 30/20 = 1.5; the set-up stays 5", () => {
    const { rate, taken } = rateOf(timed.minutes, "screw");
    expect([taken?.n, taken?.least.valueOf(), taken?.most.valueOf(), rate.setUp.valueOf()]).toEqual([3, 1.2, 1.5, 5]);
  });

  it("what wasn't timed keeps its guess", () => {
    expect(rateOf(timed.minutes, "coat")).toEqual({ rate: shop.minutes.rates.coat });
  });

  it("move the hours: six screws take 6 x 53/41 + 5 = 523/41 minutes", () => {
    const [one] = allHours(riser, plansOf(riser, kerf), kerf, timed.minutes);
    expect(line(one, "screw")?.minutes.toFraction()).toBe("523/41");
  });
});
