import { renderToString } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import { LetteringProofPage } from "../../layouts/lettering-proof.tsx";
import { OrderBookPage } from "../../layouts/order-book.tsx";
import { OrderSheetPage } from "../../layouts/order-sheet.tsx";
import { drawLettered } from "../../src/drawing/lettering/lettered-view.ts";
import { type Ordered, orderedOf } from "../../src/findings/ordered.ts";
import { pricingOf } from "../../src/findings/pricing.ts";
import { letteringProofLeaf } from "../../src/leaves/lettering-proof.ts";
import { orderBookLeaf } from "../../src/leaves/order-book.ts";
import { orderSheetLeaf } from "../../src/leaves/order-sheet.ts";
import { spelled } from "../../src/leaves/spelled.ts";
import { storeShop } from "../../src/leaves/store-item.ts";
import { signFont } from "../../src/site/letter-font.ts";
import type { Order } from "../../src/yard/order.ts";
import { readOrders } from "../../src/yard/read-orders.ts";
import { demoItem } from "../drawing/demo.ts";
import { pricedShop, riserRecipe, riserWith, riserYard, workItem } from "../findings/riser.ts";

const shop = pricedShop();
const font = signFont();
const riser = [workItem(riserRecipe), workItem(riserRecipe, riserYard(), "plain")];
const ladder = [demoItem("stall-price-ladder"), demoItem("stall-price-ladder", "slate")];
const goods = [riser, ladder];

const order = (lines: string, mark = "14 MK"): Order => {
  const { orders, problems } = readOrders([
    { file: "orders.yaml", text: `${mark}:\n  due: 2026-12-05\n  approved: no\n  price: 64.00\n${lines}` },
  ]);
  if (!orders[0]) throw new Error(problems.map(({ says }) => says).join(" "));
  return orders[0];
};
const made = (lines: string, mark?: string): Ordered => {
  const { ordered, problems } = orderedOf(order(lines, mark), goods);
  if (!ordered) throw new Error(problems.map(({ says }) => says).join(" "));
  return ordered;
};
const told = (lines: string, of = goods) =>
  orderedOf(order(lines), of).problems.map(({ at, code, nearest }) => [`${at.line}:${at.column}`, code, nearest]);

const five = "  item: Stall price ladder\n  saying: Apples / Pears / Plums / Quinces / Ask us\n";

describe("what is ordered", () => {
  it("is a recipe by its title, in the standard variant or the one that is named", () => {
    expect(made("  item: stall riser\n").item.variant.slug).toBe("oiled");
    expect(made("  item: Stall riser\n  variant: plain\n").item.variant.slug).toBe("plain");
  });

  it("unknown things and variants are told with the nearest there is", () => {
    expect(told("  item: Stall rizer\n")).toEqual([["5:9", "order-item", "Stall riser"]]);
    expect(told("  item: Stall riser\n  variant: plan\n")).toEqual([["6:12", "order-variant", "plain"]]);
  });

  it("five texts stand on five rows from the top down; one text stands on all", () => {
    expect(made(five).item.textFields.map(({ says }) => says)).toEqual([
      "Apples",
      "Pears",
      "Plums",
      "Quinces",
      "Ask us",
    ]);
    expect(made("  item: Stall price ladder\n  saying: Eggs\n").words).toEqual([
      "Eggs",
      "Eggs",
      "Eggs",
      "Eggs",
      "Eggs",
    ]);
  });

  it("without a saying the standard words stay", () => {
    expect(made("  item: Stall price ladder\n").words[0]).toBe("Tomatoes");
  });

  it("two texts for five rows, an empty row, and words for a thing without letters are told", () => {
    expect(told("  item: Stall price ladder\n  saying: Eggs / Beans\n")).toEqual([["6:11", "order-rows", undefined]]);
    expect(told("  item: Stall price ladder\n  saying: A / B /  / D / E\n")).toEqual([
      ["6:20", "order-empty-row", undefined],
    ]);
    expect(told("  item: Stall riser\n  saying: Eggs\n")).toEqual([["6:11", "order-no-letters", undefined]]);
  });

  it("letters that no sign is cut in are told", () => {
    expect(told("  item: Stall price ladder\n  saying: Äpfel ☃\n")).toEqual([["6:11", "text-letters", undefined]]);
  });

  it("words too long for the room of their row are told with both widths", () => {
    const long = "  item: Stall price ladder\n  saying: A / B / C / D / Gooseberries and currants\n";
    const { problems } = orderedOf(order(long), goods);
    expect(problems.map(({ code }) => code)).toEqual(["order-too-wide"]);
    expect(problems[0]?.says).toMatch(/takes 2\d(\.\d)? in in letters 1\.5 in high, and the row is 1\d(\.\d)? in wide/);
  });

  it("more letters than are offered are told, and that the buyer's words are missing", () => {
    const offered = [workItem(riserWith("").replace("choices:\n", "choices:\n  saying: at most 4 letters, as Eggs\n"))];
    expect(told("  item: Stall riser\n  saying: Honey\n", [offered])).toEqual([["6:11", "order-letters", undefined]]);
    expect(told("  item: Stall riser\n", [offered])).toEqual([["5:9", "order-says-nothing", undefined]]);
  });
});

describe("the work sheet of an order", () => {
  const two = made(`${five}  variant: slate\n  count: 2\n  notes: Knock at the back.\n`);
  const sheet = orderSheetLeaf(two, shop, undefined);

  it("cuts twice the pieces for two: one plank of each length on it is two", () => {
    const once = ladder[1]?.pieces.map(({ count }) => String(count * 2));
    expect(sheet.pieces.rows.map(([, count]) => count)).toEqual(once);
    expect(sheet.pieces.caption).toBe("To cut for 2, sizes in inches");
  });

  it("spells every row, says what it takes and what room it has", () => {
    expect(sheet.letters?.rows[1]).toEqual([
      "2",
      "Pears",
      "P · e · a · r · s",
      expect.any(String),
      "1\u00a01\u20442",
      "5.6",
      expect.any(String),
    ]);
  });

  it("says what is agreed, together for two, and that nothing is approved", () => {
    expect(sheet.facts).toContainEqual({ name: "Together", value: "$128.00" });
    expect(sheet.facts).toContainEqual({ name: "Proof", value: "not yet approved" });
    expect(sheet.warnings).toEqual(["The buyer hasn't said yes to the proof: put on no letter before that."]);
  });

  it("warns of a price under every floor: 40 is under the local 49", () => {
    const cheap = made("  item: Stall riser\n").order;
    const ordered = { ...made("  item: Stall riser\n"), order: { ...cheap, price: shop.wage.add(10) } };
    const { warnings } = orderSheetLeaf(ordered, shop, pricingOf(ordered.item, shop));
    expect(warnings).toEqual(["Agreed for $40.00, under every floor; the lowest is $49.00 (local)."]);
  });

  it("its page sets it all, with a link to the proof; without words there is none", () => {
    const html = renderToString(OrderSheetPage({ leaf: sheet, root: "../" }));
    for (const text of ["Knock at the back.", 'href="../proofs/14-mk.html"', "Quinces", "2026-12-05"])
      expect(html).toContain(text);
    expect(orderSheetLeaf(made("  item: Stall riser\n"), shop, undefined).proof).toBeUndefined();
  });
});

describe("the order book", () => {
  it("stands by the day they are due, then by their marks", () => {
    const late = { ...made(five, "3 AB"), order: { ...made(five, "3 AB").order, due: "2026-12-01" } };
    const book = orderBookLeaf(
      [made(five, "9 ZZ"), made("  item: Stall riser\n", "2 AA"), late],
      shop,
      () => undefined,
    );
    expect(book.table.rows.map(({ link }) => link.text)).toEqual(["3 AB", "2 AA", "9 ZZ"]);
    expect(book.together).toBe("3 orders, agreed for $192.00 together.");
    expect(renderToString(OrderBookPage({ leaf: book, root: "" }))).toContain('href="orders/3-ab.html"');
  });
});

describe("the proof", () => {
  const proof = letteringProofLeaf(made(`${five}  notes: Knock at the back.\n`, "77 QX"), storeShop(shop), font);
  const html = renderToString(LetteringProofPage({ leaf: proof, root: "../" }));

  it("spells a text letter by letter, blanks told, a letter with its accent as one", () => {
    expect(spelled("Ask us")).toBe("A · s · k · (blank) · u · s");
    expect(spelled("Cafe\u0301")).toBe("C · a · f · e\u0301");
    expect(proof.rows.rows[4]).toEqual([
      "5",
      "Ask us",
      "A · s · k · (blank) · u · s",
      "5",
      "1\u00a01\u20442 in (38 mm)",
    ]);
  });

  it("holds nothing of the buyer, the order or its price", () => {
    for (const text of ["77 QX", "77-qx", "64.00", "2026-12-05", "Knock"]) expect(html.includes(text)).toBe(false);
    expect(proof.ask.join(" ")).toContain('reply "yes"');
  });

  it("draws the words as they are ordered: an E as high as its row, on the middle of it", () => {
    const [drawing] = drawLettered(made("  item: Stall price ladder\n  saying: E\n").item, font);
    const letters = drawing?.marks.filter((mark) => mark.kind === "region" && mark.tone.kind === "coat") ?? [];
    const ours = letters.slice(-5).map((mark) => (mark.kind === "region" ? mark.loops.flat() : []));
    for (const points of ours) {
      const [us, vs] = [points.map(([u]) => u), points.map(([, v]) => v)];
      expect((Math.max(...vs) - Math.min(...vs)) / (drawing?.scale ?? 1)).toBeCloseTo(1.5, 1);
      expect((Math.max(...us) + Math.min(...us)) / 2).toBeCloseTo((drawing?.width ?? 0) / 2, 6);
    }
    expect(drawing?.description).toContain("with its letters: E; E; E; E; E.");
  });

  it("hostile words stay text", () => {
    const bad = made(five);
    const words = ['"><script>alert(1)</script>&', ...bad.words.slice(1)];
    const item = {
      ...bad.item,
      textFields: bad.item.textFields.map((field, i) => ({ ...field, says: words[i] ?? "" })),
    };
    const page = renderToString(
      LetteringProofPage({ leaf: letteringProofLeaf({ ...bad, item, words }, storeShop(shop), font), root: "" }),
    );
    expect([page.includes("<script>"), page.includes("&lt;script>")]).toEqual([false, true]);
  });
});
