import { renderToString } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import { PriceSheetPage } from "../../layouts/price-sheet.tsx";
import { type Pricing, pricingsOf } from "../../src/findings/pricing.ts";
import { binderIndexLeaf } from "../../src/leaves/binder-index.ts";
import { buildSheetLeaf } from "../../src/leaves/build-sheet.ts";
import type { Table } from "../../src/leaves/leaf.ts";
import { priceSheetLeaf } from "../../src/leaves/price-sheet.ts";
import { formatMinutes } from "../../src/leaves/work-table.ts";
import { exact } from "../../src/units/length.ts";
import { pricedShop, riserRecipe, riserWith, shopText, workItem } from "../findings/riser.ts";

const riser = workItem(riserRecipe);
const plain = workItem(riserRecipe, undefined, "plain");
const sheetOf = (text: string, lines = "") => {
  const shop = pricedShop(text);
  const variants =
    lines === "" ? [riser, plain] : [workItem(riserWith(lines)), workItem(riserWith(lines), undefined, "plain")];
  return priceSheetLeaf(pricingsOf(variants, shop) as [Pricing, ...Pricing[]], shop);
};
const sheet = sheetOf(shopText);
const row = (table: Table | undefined, name: string) => table?.rows.find(([first]) => first === name);

describe("the price sheet of the riser", () => {
  it("has a column for each way of selling, its target over its floor", () => {
    expect(sheet.prices?.heads).toEqual(["Sold", "Local", "Stall", "Posted"]);
    expect(row(sheet.prices, "Target")).toEqual(["Target", "$65.00", "$74.50", "$94.00"]);
    expect(row(sheet.prices, "Floor")).toEqual(["Floor", "$49.00", "$57.00", "$75.00"]);
  });

  it("says whether the tax is in the price, and what the fee is", () => {
    expect(row(sheet.prices, "Sales tax, 5 %")).toEqual([
      "Sales tax, 5 %",
      "added to it",
      "in the price",
      "added to it",
    ]);
    expect(row(sheet.prices, "Fee")).toEqual(["Fee", "none", "3 % and $0.10", "6.5 % and $0.45"]);
  });

  it("plain is cheaper than oiled: 65 - 48 = 17 local, 74.50 - 55.50 = 19 at the stall, 94 - 76 = 18 posted", () => {
    expect(sheet.variants?.rows.map((cells) => [cells[0], cells.at(-1)])).toEqual([
      ["oiled", "none"],
      ["plain", "local $17.00 less, stall $19.00 less, posted $18.00 less"],
    ]);
  });

  it("shows 1, 2, 5 and 10 at once, the dearest first", () => {
    expect(sheet.batches.heads).toEqual(["Made at once", "1", "2", "5", "10"]);
    expect(row(sheet.batches, "Time")?.[1]).toBe("1\u00a0h 1\u00a0min");
    expect(row(sheet.batches, "Cost")?.[1]).toBe("$48.27");
  });

  it("every price of the yard has the day it was seen", () => {
    expect(sheet.material.rows.map((cells) => [cells[0], cells.at(-1)])).toEqual([
      ["plank", "2026-10-03"],
      ["screw No. 8 x 2", "2026-09-01"],
      ["oil", "2026-10-03"],
      ["abrasives", "shop file"],
      ["sundries", "shop file"],
    ]);
    expect(sheet.notes[0]).toContain("2026-09-01, 2026-10-03");
  });

  it("tells how a time came about: guessed, or timed twice between 40/32 = 1.25 and 36/30 = 1.2", () => {
    const timed = sheetOf(`${shopText}timed:\n  screw: 40 for 32; 36 for 30\n`);
    expect(row(sheet.work, "fasteners driven")?.at(-1)).toBe("no, the shop's guess");
    expect(row(timed.work, "fasteners driven")?.at(-1)).toBe("2 times, 1.2 to 1.25");
  });

  it("the board may cost up to 24.46", () => {
    expect(sheet.alarm?.rows).toEqual([["plank", "96 in", "$9.60", "$24.46"]]);
  });

  it("says that a thing too heavy by its size isn't sent", () => {
    const heavy = sheetOf(shopText.replace("most: 100 lb", "most: 16 lb"));
    expect(heavy.prices?.heads).toEqual(["Sold", "Local", "Stall"]);
    expect(heavy.parcel.at(-1)?.value).toBe("not sent: over 16 lb");
  });

  it("where it could only be posted and is too heavy, there is no price, and the page says so", () => {
    const only = shopText.replace("most: 100 lb", "most: 16 lb").replace(/ {2}local:[\s\S]*(?= {2}posted:)/, "");
    const none = sheetOf(only);
    expect([none.prices, none.alarm]).toEqual([undefined, undefined]);
    expect(renderToString(PriceSheetPage({ leaf: none, root: "../" }))).toContain("too heavy to be posted");
  });

  it("says what the store shows: the posted target", () => {
    expect(sheet.facts[0]).toEqual({ name: "In the store", value: "$94.00, the target, postage in it" });
    expect(sheet.facts[1]).toEqual({ name: "Other finishes there", value: "plain $18.00 less" });
    expect(sheet.warnings).toEqual([]);
  });

  it("asked 70 posted is under the floor of 75 by 54.8658 + 13.70 - (70 x 0.93175 - 0.45) = 3.79 a sale", () => {
    const asked = sheetOf(shopText, "price: 70, stall 80");
    expect(asked.warnings).toEqual([
      "Posted: you ask $70.00, the floor is $75.00. Each one sold costs you $3.79 of your wage or your money.",
    ]);
    expect(row(asked.prices, "You ask")).toEqual(["You ask", "the target", "$80.00", "$70.00, under the floor"]);
    expect(row(asked.prices, "Break-even")?.at(-1)).toBe("1 of 1 sold");
    expect(asked.alarm?.rows[0]?.at(-1)).toBe("already under it; it would have to cost $6.15");
  });

  it("finds the posted target line by line: 54.8658, 73.1544, 86.8544, 87.3044, over 0.93175 is 93.6994, up to 94", () => {
    expect(sheet.found?.rows.map((cells) => cells.at(-1))).toEqual([
      "$54.8658",
      "$73.1544",
      "$86.8544",
      "$87.3044",
      "0.93175: $93.6994",
      "added to it",
      "$1.00: $94.00",
    ]);
  });

  it("has floor and target of every way at 1, 2, 5 and 10", () => {
    expect(sheet.byBatch?.heads).toEqual(["Made at once", "1", "2", "5", "10"]);
    expect(sheet.byBatch?.rows.map(([name, one]) => [name, one])).toEqual([
      ["Local, floor", "$49.00"],
      ["Local, target", "$65.00"],
      ["Stall, floor", "$57.00"],
      ["Stall, target", "$74.50"],
      ["Posted, floor", "$75.00"],
      ["Posted, target", "$94.00"],
    ]);
  });

  it("prices seen elsewhere: the middle of 79 and 60 is 69.50, with the days they are old", () => {
    const seen = sheetOf(shopText, "comparables:\n  fair: 79, 2026-05-09, 28 x 16 x 24\n  shop: 60, 2026-09-03");
    expect(seen.compared?.caption).toBe("Seen elsewhere: the middle price is $69.50");
    expect(seen.compared?.rows).toEqual([
      ["fair", "$79.00", "28 x 16 x 24 in", "2026-05-09", "147"],
      ["shop", "$60.00", "not noted", "2026-09-03", "30"],
    ]);
    expect(sheet.compared).toBeUndefined();
  });

  it("tells how its own batches went: screws 12 for 8 minutes is × 1.5 by one", () => {
    const own = sheetOf(shopText, "record:\n  2026-10-12: 1 made, screw 12");
    expect(own.work.heads.at(-1)).toBe("This recipe's batches");
    expect(row(own.work, "fasteners driven")?.at(-1)).toBe("× 1.5 by one");
    expect(row(own.work, "crosscuts")?.at(-1)).toBe("not noted");
  });

  it("its page sets every text, and hostile names stay text", () => {
    const hostile = `"><script>alert(1)</script>&`;
    const shop = { ...pricedShop(), name: hostile, notice: hostile };
    const bad = {
      ...riser,
      title: hostile,
      variant: { ...riser.variant, name: hostile },
      pieces: riser.pieces.map((piece) => ({ ...piece, board: { ...piece.board, name: hostile } })),
    };
    const leaf = priceSheetLeaf(pricingsOf([bad], shop) as [Pricing, ...Pricing[]], shop);
    const html = renderToString(PriceSheetPage({ leaf, root: "../" }));
    expect(html).toContain("$94.00");
    expect(html).toContain('href="../items/stall-riser.html"');
    expect(html).not.toContain("<script>");
  });
});

describe("links to it", () => {
  const priced = pricedShop();
  const { selling: _, ...unpriced } = priced;

  it("stand on build sheet and index where there are prices, and nowhere else", () => {
    expect(buildSheetLeaf([riser], priced).prices?.path).toBe("prices/stall-riser.html");
    expect(binderIndexLeaf([riser], priced).tabs[0]?.sheets[0]?.prices?.path).toBe("prices/stall-riser.html");
    expect(buildSheetLeaf([riser], unpriced).prices).toBeUndefined();
    expect(binderIndexLeaf([riser], unpriced).tabs[0]?.sheets[0]?.prices).toBeUndefined();
  });
});

it("61.12 minutes are 1 h 1 min, 59.6 are 1 h 0 min, 42.4 are 42 min", () => {
  expect(["61.12", "59.6", "42.4"].map((minutes) => formatMinutes(exact(minutes)))).toEqual([
    "1\u00a0h 1\u00a0min",
    "1\u00a0h 0\u00a0min",
    "42\u00a0min",
  ]);
});
