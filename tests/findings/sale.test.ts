// Class C and its evidence: what a thing for children needs before it is sold. Sources: 16 CFR 1303, 1500.48, 1500.91, 1501;
// 15 USC 2063, 1278a; CPSC Publication 325 (openings over 3 1/2 in and under 9 in).
import { describe, expect, it } from "vitest";
import { isForSale, missingForSale, saleNeeds } from "../../src/findings/sale.ts";
import { buildSheetLeaf } from "../../src/leaves/build-sheet.ts";
import { careCardLeaf } from "../../src/leaves/care-card.ts";
import { productPageLeaf } from "../../src/leaves/product-page.ts";
import { barredText, saleSheet } from "../../src/leaves/sale-sheet.ts";
import { storeItem, storeShop } from "../../src/leaves/store-item.ts";
import { type Evidence, evidenceKinds, provenBy } from "../../src/recipe/evidence.ts";
import { type HazardClass, hazardClasses } from "../../src/recipe/recipe.ts";
import { exact } from "../../src/units/length.ts";
import { textsIn } from "../leaves/printed.ts";
import { listsOn, noticesOn, tableOn } from "../leaves/sheet-blocks.ts";
import { corral, rack, shop } from "../leaves/worked-goods.ts";

const whole: Evidence = Object.fromEntries(
  evidenceKinds.filter((kind) => kind !== "food").map((kind) => [kind, `tried ${kind}`]),
);
const [rackItem] = rack;
const low = { fittings: [], overall: { width: exact(20), depth: exact(20), height: exact(20) } };
const child = (evidence?: Evidence) => ({
  ...low,
  classes: ["C", "S"] as readonly HazardClass[],
  ...(evidence ? { evidence } : {}),
});
const without = (kind: string): Evidence => Object.fromEntries(Object.entries(whole).filter(([own]) => own !== kind));

describe("a thing for children", () => {
  it("needs 7 evidences: finish, edges, small parts, gaps, tip, tracking label, certificate", () => {
    expect(missingForSale(child()).map(({ kind }) => kind)).toEqual(evidenceKinds.slice(0, 7));
    for (const { needs, why, source } of saleNeeds(child()))
      for (const text of [needs, why, source]) expect(text).not.toBe("");
  });
  it.each(Object.keys(whole))("isn't sold without evidence of %s alone", (kind) => {
    expect(isForSale(child(without(kind)))).toBe(false);
    expect(missingForSale(child(without(kind))).map((need) => need.kind)).toEqual([kind]);
    expect(provenBy(["C"], without(kind)).child).toBe(false);
  });
  it("is sold with all 7, and what is for food is asked of nobody", () => {
    expect(isForSale(child(whole))).toBe(true);
    expect(provenBy(["C"], whole)).toEqual({ child: true, food: false });
    expect(provenBy(["S"], whole).child).toBe(false);
  });
  it("names the limits of the law: 90 ppm lead, a cylinder of 1 1/4, openings of 3 1/2 to 9", () => {
    const text = saleNeeds(child())
      .map(({ needs }) => needs)
      .join(" ");
    for (const limit of ["90 ppm", "1 1/4 in across", "over 3 1/2 in and under 9 in"]) expect(text).toContain(limit);
  });
});

it("no other class needs evidence", () => {
  for (const one of Object.keys(hazardClasses) as HazardClass[])
    expect(isForSale({ ...low, classes: [one] })).toBe(one !== "C");
});

describe("what can tip: the rack, 28 x 14 x 60, is more than three times as high as it is deep", () => {
  const bare = { ...rackItem, fittings: [] };
  it("is sold with its anchor kit; without it only where it is told how it was tried", () => {
    expect(isForSale(rackItem)).toBe(true);
    expect(missingForSale(bare).map(({ kind }) => kind)).toEqual(["tip"]);
    expect(isForSale({ ...bare, evidence: { tip: "pulled at its top with 15 lb" } })).toBe(true);
    expect(barredText({ ...bare })).toBe("Not in the store: no evidence of tip.");
    expect(saleSheet(bare)?.says).toContain("tall for its depth");
  });
  it("42 high on 14 is asked, 41 is not; nor is what isn't of class T", () => {
    const of = (height: number, classes: readonly HazardClass[] = ["T"]) =>
      isForSale({ classes, fittings: [], overall: { ...rackItem.overall, height: exact(height) } });
    expect([of(42), of(41), of(42, ["S"])]).toEqual([false, true, true]);
  });
});

describe("the binder", () => {
  const [plain, ...others] = corral;
  const withClass = (evidence: Evidence) =>
    [plain, ...others].map((item) => ({ ...item, classes: ["C"] as const, evidence })) as unknown as typeof corral;
  it("says what is missing and why, on the cover and in its own part", () => {
    const { set } = buildSheetLeaf(withClass(without("tip")), shop);
    expect(noticesOn(set, "cover").map(({ says }) => says)).toContain("Not in the store: no evidence of tip.");
    const { rows } = tableOn(set, "sale", "What has to be shown");
    expect(rows.find(([kind]) => kind === "tip")?.at(-1)).toBe("missing");
    expect(rows.find(([kind]) => kind === "edges")?.at(-1)).toBe("tried edges");
  });
  it("shows the papers where all is there, and nothing where nothing is asked", () => {
    const { set } = buildSheetLeaf(withClass(whole), shop);
    expect(noticesOn(set, "cover").map(({ says }) => says)).not.toContain("Not in the store: no evidence of tip.");
    expect(listsOn(set, "sale")[0]).toContain("maker, place, date and lot");
    expect(saleSheet(plain)).toBeUndefined();
    expect(barredText(plain)).toBeUndefined();
  });
  it("the page has its duties and the card its four lines; no word of the evidence is on either", () => {
    const goods = storeItem(withClass(whole), shop.division);
    const page = productPageLeaf(goods, storeShop(shop));
    expect(page.duties.join(" ")).toContain("lasting label");
    const card = careCardLeaf(goods, goods.variants[0], storeShop(shop));
    expect(card.toFill).toEqual(["Made by", "Made at", "Made on", "Lot"]);
    expect(textsIn([page, card, goods]).join("\n")).not.toContain("tried ");
  });
});
