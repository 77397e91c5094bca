import { describe, expect, it } from "vitest";
import { readOrders } from "../../src/yard/read-orders.ts";

const read = (text: string) => readOrders([{ file: "orders.yaml", text }]);
const told = (text: string) => read(text).problems.map(({ at, code }) => `${at.line}:${at.column} ${code}`);
const good = "  item: Stall riser\n  due: 2026-12-05\n  approved: no\n  price: 64.00\n";

describe("orders", () => {
  it("are called by their number or the buyer's initials; one of it unless more are said", () => {
    const [order] = read(`14 MK:\n${good}`).orders;
    expect(order).toMatchObject({ mark: "14 MK", slug: "14-mk", count: 1, due: "2026-12-05", approved: false });
    expect(order?.price.valueOf()).toBe(64);
  });

  it("say a text for each row with / between blanks; 1/2 within a text stays", () => {
    const [order] = read(`7:\n${good}  saying: Eggs / 1/2 dozen / Honey\n`).orders;
    expect(order?.sayings.map(({ text, at }) => [text, at.column])).toEqual([
      ["Eggs", 11],
      ["1/2 dozen", 18],
      ["Honey", 30],
    ]);
  });

  it("without a due day, a price or a word on the proof are told, all at once", () => {
    expect(told("7:\n  item: Stall riser\n")).toEqual(["1:1 missing-key", "1:1 missing-key", "1:1 missing-key"]);
  });

  it("an unreadable day, a price that is none, a count over 99 and an unsure proof are told", () => {
    expect(told("7:\n  item: Stall riser\n  due: 2026-02-30\n  approved: no\n  price: soon\n  count: 100\n")).toEqual([
      "3:8 order-date",
      "5:10 yard-price",
      "6:10 yard-number",
    ]);
    expect(told("7:\n  item: Stall riser\n  due: 2026-02-03\n  approved: perhaps\n  price: 4\n")).toEqual([
      "4:13 not-one-of",
    ]);
  });

  it("past due is no mistake: no clock is asked", () => {
    expect(told(`7:\n${good.replace("2026-12-05", "1999-01-04")}`)).toEqual([]);
  });

  it("a mark that stands twice, even in other letters, and one without any are told", () => {
    expect(told(`14 MK:\n${good}14-mk:\n${good}`)).toEqual(["6:1 order-twice"]);
    expect(told(`"!":\n${good}`)).toEqual(["1:2 order-mark"]);
  });

  it("a mark of 41 letters is too long for the name of a page; of ../../x only the x is left in it", () => {
    expect(told(`${"7".repeat(41)}:\n${good}`)).toEqual(["1:1 order-mark"]);
    expect(read(`../../x:\n${good}`).orders[0]?.slug).toBe("x");
  });
});
