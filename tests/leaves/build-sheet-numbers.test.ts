import { describe, expect, it } from "vitest";
import { yardList } from "../../src/findings/yard-list.ts";
import type { Item } from "../../src/item/item.ts";
import { buildSheetLeaf } from "../../src/leaves/build-sheet.ts";
import { poundsAsPrinted } from "../../src/units/mass.ts";
import { lengthsAsPrinted, modelLengths, plainNumber } from "./model-numbers.ts";
import { textsIn } from "./printed.ts";
import { corral, rack, shop } from "./worked-goods.ts";

const lengthText = /\d+ \d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?/g;

/** Numbers in the parts of the sheet that carry sizes, with those of names ("No. 6 x 1") and of ordinary counts left out. */
function numbersOn(variants: readonly [Item, ...Item[]]): { size: string; where: string }[] {
  const sheet = buildSheetLeaf(variants, shop);
  const sized = [
    ...sheet.pieces.rows.map((row) => row.slice(2, 5)),
    sheet.panels.map(({ facts }) => facts.map(({ value }) => value)),
    sheet.gaps.map(({ value }) => value),
    sheet.facts.slice(0, 1).map(({ value }) => value),
    sheet.cutting.kerf,
    sheet.cutting.boards.map(({ stock }) => stock),
    sheet.cutting.boards.map(({ strips }) =>
      strips.map((strip) => strip.replace(/\d+ × [A-Z]+( left| right)? at/g, "")),
    ),
    [...JSON.stringify([sheet.intro, sheet.sections]).matchAll(/class=\\"figure\\">([^<]*) in</g)].map(
      ([, text]) => text,
    ),
  ];
  return textsIn(sized).flatMap((text) =>
    [...plainNumber(text).matchAll(lengthText)].map(([size]) => ({ size, where: text })),
  );
}

describe("numbers on the build sheet", () => {
  it.each([
    ["corral", corral],
    ["rack", rack],
  ] as const)("every length printed on the %s's sheet is one of the model's, as printed at 1/16", (_, variants) => {
    const [item] = variants;
    const known = lengthsAsPrinted(modelLengths(item, yardList(item, shop.kerf), shop), shop.division);
    const found = numbersOn(variants);
    expect(found.length).toBeGreaterThan(40);
    expect(found.filter(({ size }) => !known.has(size))).toEqual([]);
  });

  it("a length that is not the model's would be seen: 27 5/8 is none of the corral's", () => {
    const [item] = corral;
    expect(lengthsAsPrinted(modelLengths(item, yardList(item, shop.kerf), shop), shop.division).has("27 5/8")).toBe(
      false,
    );
  });

  it("the weight printed is the model's", () => {
    const weight = buildSheetLeaf(corral, shop).facts.find(({ name }) => name === "Weight")?.value;
    expect(weight).toContain(`${poundsAsPrinted(corral[0].weight)} lb`);
  });

  it("boards bought, packs and costs are those of the yard list, to the cent", () => {
    const list = yardList(corral[0], shop.kerf);
    const { yard } = buildSheetLeaf(corral, shop);
    expect(yard.boards.rows.map((row) => Number(row[4]))).toEqual(list.boards.map(({ count }) => count));
    expect(yard.costs.rows[0]?.[1]).toBe(`$${list.cost.valueOf().toFixed(2)}`);
  });
});
