import { describe, expect, it } from "vitest";
import { yardList } from "../../src/findings/yard-list.ts";
import type { Item } from "../../src/item/item.ts";
import { cuttingSheet } from "../../src/leaves/cutting-sheet.ts";
import { binderEdition } from "../../src/leaves/edition.ts";
import { sheetSetOf } from "../../src/leaves/sheets/sheet-set-of.ts";
import { poundsAsPrinted } from "../../src/units/mass.ts";
import { lengthsAsPrinted, modelLengths, plainNumber } from "./model-numbers.ts";
import { textsIn } from "./printed.ts";
import { blocksOf, factOn, factsOn, stepsOn, tableOn, tablesOn } from "./sheet-blocks.ts";
import { corral, rack, shop } from "./worked-goods.ts";

const edition = binderEdition(shop.division);
const lengthText = /\d+ \d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?/g;

/** Numbers in the parts of the sheets that carry sizes, with those of names ("No. 6 x 1") and of ordinary counts left out. */
function numbersOn(variants: readonly [Item, ...Item[]]): { size: string; where: string }[] {
  const set = sheetSetOf(variants, shop);
  const cutting = cuttingSheet(variants[0].slug, yardList(variants[0], shop.kerf), shop, edition);
  const sized = [
    ...tableOn(set, "pieces", "Pieces").rows.map((row) => row.slice(2, 5)),
    ...tablesOn(set, "kit").flatMap(({ rows }) => rows.map((row) => (/×/.test(row[2] ?? "") ? row[2] : ""))),
    factsOn(set, "panels").map(({ value }) => value),
    factsOn(set, "steps").map(({ value }) => value),
    factOn(set, "cover", "Width"),
    cutting.kerf,
    cutting.boards.map(({ stock }) => stock),
    cutting.boards.map(({ strips }) => strips.map((strip) => strip.replace(/\d+ × [A-Z]+( left| right)? at/g, ""))),
    [...JSON.stringify([blocksOf(set, "cover"), stepsOn(set)]).matchAll(/class=\\"figure\\">([^<]*) in</g)].map(
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
    expect(factOn(sheetSetOf(corral, shop), "cover", "Weight")).toContain(`${poundsAsPrinted(corral[0].weight)} lb`);
  });

  it("boards bought, packs and costs are those of the yard list, to the cent", () => {
    const list = yardList(corral[0], shop.kerf);
    const set = sheetSetOf(corral, shop);
    const boards = tableOn(set, "yard", "Boards to buy");
    expect(boards.rows.map((row) => Number(row[4]))).toEqual(list.boards.map(({ count }) => count));
    expect(tableOn(set, "yard", "Everything above").rows[0]?.[1]).toBe(`$${list.cost.valueOf().toFixed(2)}`);
  });
});
