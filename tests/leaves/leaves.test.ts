import { describe, expect, it } from "vitest";
import type { BuildSheet } from "../../src/leaves/build-sheet.ts";
import { careCardLeaf } from "../../src/leaves/care-card.ts";
import { productPageLeaf } from "../../src/leaves/product-page.ts";
import { sheetSetOf } from "../../src/leaves/sheets/sheet-set-of.ts";
import { storeItem, storeShop } from "../../src/leaves/store-item.ts";
import { unfinishedNotice } from "../../src/leaves/unfinished.ts";
import { printBinder, printGuide, printStore, textsIn } from "./printed.ts";
import { factOn, factsOn, listsOn, noticesOn, stepsOn, tableOn } from "./sheet-blocks.ts";
import { corral, privateWords, rack, shop } from "./worked-goods.ts";

const binder = printBinder([corral, rack], shop);
const store = printStore([corral, rack], shop);
const guide = printGuide("# Lengths\n\nText.", shop);
const sheet = sheetSetOf(corral, shop);
const pieces = tableOn(sheet, "pieces", "Pieces").rows;
const goods = storeItem(corral, shop.division);
const page = productPageLeaf(goods, storeShop(shop));

describe("leaves", () => {
  it("no leaf and no page holds NaN, undefined, null or an object printed as text", () => {
    for (const { path, leaf, html } of [...binder, ...store, ...guide]) {
      for (const text of [...textsIn(leaf), html]) {
        expect(text, path).not.toMatch(/\bNaN\b|\bundefined\b|\bInfinity\b|\[object |⟦|⟧/);
      }
    }
  });

  it("the pieces table has a row for each mark, and its numbers add up to 41 members", () => {
    expect(pieces.map(([mark]) => mark)).toEqual(corral[0].pieces.map(({ mark }) => mark));
    expect(pieces.reduce((sum, row) => sum + Number(row[1]), 0)).toBe(41);
  });

  it("a face rail is printed 30 - 2 x 1 11/16 = 26 5/8, with a fraction slash", () => {
    expect(pieces.some((row) => row[2] === "26\u00a05\u20448")).toBe(true);
  });

  it("every mark of the pieces table is cut from some board of the plan", () => {
    const strips = listsOn(sheet, "cutting").join(" ");
    for (const [mark] of pieces) expect(strips).toContain(`× ${mark} at`);
  });

  it("steps are numbered on through all sections, each once", () => {
    const numbers = stepsOn(sheet).map((step) => step.number);
    expect(numbers).toEqual(numbers.map((_, i) => String(i + 1)));
  });

  it("a step's figure is worked out: the legs lie 30 in over all", () => {
    expect(stepsOn(sheet)[0]?.text.html).toBe(
      'Lay the <strong>legs</strong> good side down, <span class="figure">30 in</span> over all, and set the rails.',
    );
  });

  it("the diagonal of a face is the root of 30² + 26² = 39.6989 in, printed 39 11/16", () => {
    expect(factOn(sheet, "panels", "Corner")).toBe("39\u00a011\u204416 in");
  });

  it("the spacer between face rails is (23 - 6 x 1 11/16) / 5 = 2.575, printed 2 9/16 full", () => {
    expect(factsOn(sheet, "panels").find(({ name }) => name.startsWith("Spacer"))?.value).toBe("2\u00a09\u204416 full");
  });

  it("bare wood says so in three places: build sheet, product page, care card", () => {
    expect(noticesOn(sheet, "cover").map(({ title }) => title)).toEqual(["Unfinished: plain"]);
    expect(page.finishes.map(({ unfinished }) => unfinished !== undefined)).toEqual([true, false, false]);
    const cards = goods.variants.map((variant) => careCardLeaf(goods, variant, storeShop(shop)));
    expect(cards.map(({ unfinished }) => unfinished?.says === unfinishedNotice.says)).toEqual([true, false, false]);
    for (const path of [
      "binder/items/hose-and-pot-corral.html",
      "store/goods/hose-and-pot-corral.html",
      "store/care/hose-and-pot-corral/plain.html",
    ]) {
      expect([...binder, ...store].find((one) => one.path === path)?.html).toContain(unfinishedNotice.says);
    }
  });

  it("the buyer reads both systems, each from the model: 30 in (762 mm), 18 in (457 mm), 26 in (660 mm), 21 lb (9.7 kg)", () => {
    expect(page.sizes.map(({ value }) => value)).toEqual([
      "30 in (762 mm)",
      "18 in (457 mm)",
      "26 in (660 mm)",
      "about 21 lb (9.7 kg)",
    ]);
  });

  it("the swelling said to the buyer is 1.6875 x 0.00234 x 5 = 0.02 in (0.5 mm)", () => {
    expect(page.overTime[0]).toContain("up to 0.02 in (0.5 mm)");
    expect(page.overTime[0]).not.toMatch(/1 11.16/);
  });

  it("a care card names each finish's care once, where it stands, and the shop's", () => {
    const [, white] = goods.variants;
    if (!white) throw new Error("no white");
    expect(careCardLeaf(goods, white, storeShop(shop)).care).toHaveLength(4);
  });

  it("the rack's page and card tell the buyer to fasten it; the kit comes with it", () => {
    const item = storeItem(rack, shop.division);
    expect(productPageLeaf(item, storeShop(shop)).included).toContain("anchor kit for a wall");
    expect(store.find(({ path }) => path.endsWith("seedling-hardening-rack/plain.html"))?.html).toContain(
      "Fasten it to solid wood or masonry",
    );
  });
});

describe("the wall", () => {
  it("every private word stands somewhere in the goods or the shop, so that looking for it means something", () => {
    const all = textsIn([corral, rack, shop]).join("\n");
    for (const word of privateWords) expect(all).toContain(word);
  });

  it("no private word and no price reaches a leaf or a page of the store", () => {
    for (const { path, leaf, html } of store) {
      for (const text of [...textsIn(leaf), html]) {
        for (const word of privateWords) expect(text, path).not.toContain(word);
        expect(text, path).not.toMatch(/\$\d/);
      }
    }
  });

  it("no link of the store leads off its shelf", () => {
    for (const { path, html } of store) {
      const depth = path.split("/").length - 2;
      for (const [, target] of html.matchAll(/(?:href|src)="([^"#][^"]*)"/g)) {
        if (target === "data:," || target?.startsWith("mailto:")) continue;
        expect(target, path).not.toMatch(/^[a-z]+:|^\//);
        expect((target?.match(/\.\.\//g) ?? []).length, path).toBeLessThanOrEqual(depth);
      }
    }
  });

  it("every link of a shelf leads to one of its pages or assets", () => {
    const files = binder.flatMap(({ leaf }) => (leaf as Partial<BuildSheet>).printed ?? []);
    const pages = [...[...binder, ...store].map(({ path }) => path), ...files.map(({ link }) => `binder/${link.path}`)];
    for (const { path, html } of [...binder, ...store]) {
      for (const [, target] of html.matchAll(/<a [^>]*href="([^"#][^"]*)"/g)) {
        if (target?.startsWith("mailto:")) continue;
        expect(pages).toContain(new URL(target ?? "", `https://x/${path}`).pathname.slice(1));
      }
    }
  });
});
