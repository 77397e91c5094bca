// Listing copy: what is pasted elsewhere, its limits, its notices, and that nothing in it is more than the model and the page say.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Item } from "../../src/item/item.ts";
import { workVariants } from "../../src/item/variants/work-variants.ts";
import { binderIndexLeaf } from "../../src/leaves/binder-index.ts";
import { careCardLeaf } from "../../src/leaves/care-card.ts";
import { type ListingCopy, listingCopy } from "../../src/leaves/listing-copy.ts";
import { listingSheetLeaf } from "../../src/leaves/listing-sheet.ts";
import { productPageLeaf } from "../../src/leaves/product-page.ts";
import { storeItem, storeShop } from "../../src/leaves/store-item.ts";
import { unfinishedNotice } from "../../src/leaves/unfinished.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { exact } from "../../src/units/length.ts";
import { type ListingLimits, readLimits, usualLimits } from "../../src/yard/listing-limits.ts";
import { findUnprovable } from "../../src/yard/unprovable.ts";
import { demoYard } from "../cases/demo-yard.ts";
import { textsIn } from "./printed.ts";
import { corral, privateWords, shop } from "./worked-goods.ts";

const copyOf = (variants: readonly [Item, ...Item[]], limits: Partial<ListingLimits> = {}): ListingCopy =>
  listingCopy(storeItem(variants, shop.division), storeShop(shop), { ...usualLimits, ...limits });
const copy = copyOf(corral);

describe("the corral's copy", () => {
  it("title, measurements and alt text say 30 x 18 x 26 in, 762 x 457 x 660 mm", () => {
    expect(copy.title.text).toMatch(/^Hose-and-pot corral, .*, 30 x 18 x 26 in$/);
    expect(copy.measures.slice(0, 3)).toEqual([
      "Width: 30 in (762 mm)",
      "Depth: 18 in (457 mm)",
      "Height: 26 in (660 mm)",
    ]);
    expect(copy.altTexts[0]?.alt.text).toContain("30 in (762 mm) wide, 18 in (457 mm) deep, 26 in (660 mm) high");
  });
  it("counts letters as they are: the title's own length of 80", () => {
    expect(copy.title.count).toBe(`${copy.title.text.length} of 80 letters`);
    expect(copy.title.over).toBeUndefined();
  });
  it("bare wood says so in short and at length; a coated one doesn't", () => {
    expect(copy.short.text).toContain("Unfinished wood.");
    expect(copy.long.text).toContain(`Unfinished (plain): ${unfinishedNotice.says}`);
    const [, white, oil] = corral;
    const coated = copyOf([white, oil]);
    expect(coated.short.text + coated.long.text).not.toContain("Unfinished");
  });
  it("cautions stand in full, and what it is not made for", () => {
    expect(copy.long.text).toContain("WARNING: It is made to hold things, not people.");
    expect(copy.long.text).toMatch(/Not made .*sit/);
  });
  it("the camera stands at half of 26 in: 13 in (330 mm); both scripts have steps", () => {
    expect(copy.scripts[1].steps[0]).toContain("13 in (330 mm)");
    for (const { steps } of copy.scripts) expect(steps.length).toBeGreaterThan(3);
  });
  it("each choice is told with the name of every figure", () => {
    const goods = storeItem(corral, shop.division);
    const form = (name: string, width: number) => ({
      name,
      overall: { ...goods.overall, width: exact(width) },
      weight: 20,
      woods: goods.woods,
    });
    const two = listingCopy({ ...goods, forms: [form("small", 30), form("large", 40)] }, storeShop(shop), usualLimits);
    expect(two.measures.at(-1)).toBe("Large: width 40 in (1016 mm)");
    expect(two.long.text).toContain("You can choose: small: width 30 in (762 mm); large: width 40 in (1016 mm).");
    expect(two.measures.join()).not.toContain("These are of");
  });
  it("prices are those of the store, with what is ready", () => {
    const priced = storeItem(corral, shop.division, undefined, () => ({ amount: exact(84) }));
    const { prices } = listingCopy(priced, storeShop(shop), usualLimits);
    expect(prices).toEqual([
      "Plain: $84.00, made to order",
      "White: $84.00, made to order",
      "Oil: $84.00, made to order",
    ]);
  });
  it("every picture that is made has its text, a photograph too", () => {
    const photo = {
      number: 1,
      words: "by the door",
      sizes: [{ width: 480, height: 360, webp: "p.webp", jpeg: "p.jpg" }],
    };
    const goods = { ...storeItem(corral, shop.division), photos: [photo] };
    const { altTexts } = listingCopy(goods, storeShop(shop), usualLimits);
    expect(altTexts.map(({ picture }) => picture)).toEqual([
      "measured drawing",
      ...["plain", "white", "oil"].map((name) => `drawing in ${name}`),
      "choices",
      "what is included",
      "photograph: By the door",
    ]);
    expect(altTexts.at(-1)?.alt.text).toBe("Hose-and-pot corral: by the door");
    for (const { alt } of altTexts) expect(alt.over).toBeUndefined();
  });
  it("is in plain signs: no fraction slash, no hard blank, no times sign", () => {
    for (const text of textsIn(copy)) expect(text).not.toMatch(/[\u2044\u00a0×]/);
  });
  it("holds no private word and no price", () => {
    const all = textsIn(copy).join("\n");
    for (const word of privateWords) expect(all).not.toContain(word);
    expect(all).not.toMatch(/\$\d/);
  });
});

describe("limits", () => {
  it("a title of at most 40 leaves out the wood and keeps the size", () => {
    expect(copyOf(corral, { title: 40 }).title.text).toBe("Hose-and-pot corral, 30 x 18 x 26 in");
  });
  it("a title that is too long by itself is told by how much: 19 letters of 15, 4 too many", () => {
    expect(copyOf(corral, { title: 15 }).title).toEqual({
      text: "Hose-and-pot corral",
      count: "19 of 15 letters",
      over: "4 too many. Shorten the recipe's title.",
    });
  });
  it("the long one drops first what is seen over time, then care, then the intro; never a notice, a caution or how to order", () => {
    const full = [...copy.long.text].length;
    const texts = [full, full - 1, full - 300, 500].map((long) => copyOf(corral, { long }).long.text);
    expect(texts[0]).toContain("Wood swells");
    expect(texts[1]).not.toContain("Wood swells");
    for (const text of texts)
      for (const kept of [unfinishedNotice.says, "WARNING", "Write to us", "is invented"]) expect(text).toContain(kept);
    expect(copyOf(corral, { long: 500 }).long.over).toMatch(/^\d+ too many\./);
  });
  it("keywords: at most so many, none longer than so many letters", () => {
    const { keywords } = copyOf(corral, { keywords: 3, keyword: 12 });
    expect(keywords.length).toBe(3);
    for (const word of keywords) expect(word.length).toBeLessThanOrEqual(12);
  });
  it("those of the shop are read: whole numbers within reason", () => {
    const w = (text: string) => ({ text, at: { file: "shop.yaml", line: 3, column: 9 } });
    const problems: Parameters<typeof readLimits>[1] = [];
    expect(readLimits({ title: w("60"), keyword: w("2"), long: w("many") }, problems)).toEqual({
      ...usualLimits,
      title: 60,
    });
    expect(problems.map(({ code }) => code)).toEqual(["yard-number", "yard-number"]);
  });
});

describe("what may not be sold has no copy", () => {
  it("but the reason, and the binder's index says it too", () => {
    const barred = corral.map((item) => ({ ...item, classes: ["C"] as const })) as unknown as typeof corral;
    const leaf = listingSheetLeaf(barred[0], storeItem(barred, shop.division), shop);
    expect(leaf.copy).toBeUndefined();
    expect(leaf.barred).toContain(
      "no evidence of finish, edges, small parts, gaps, tip, tracking label and certificate",
    );
    expect(binderIndexLeaf([barred[0]], shop).tabs[0]?.sheets[0]?.barred).toContain("Not in the store");
  });
});

/** Whole numbers, fractions and decimals, with plain signs. */
const numbersIn = (texts: readonly string[]): string[] =>
  texts
    .map((text) =>
      text
        .replace(/<[^>]*>/g, "")
        .replaceAll("\u2044", "/")
        .replaceAll("\u00a0", " "),
    )
    .flatMap((text) => text.match(/\d+(?: \d+\/\d+|\/\d+|\.\d+)?/g) ?? []);

describe("every item of the demo", () => {
  const folder = join(import.meta.dirname, "../../content/recipes");
  const yard = demoYard();
  const names = readdirSync(folder).filter((name) => name.endsWith(".md"));
  it.each(names)("%s: no unprovable word, nothing over its limit, each number also on the product page", (name) => {
    const { recipe } = readRecipe(name, readFileSync(join(folder, name), "utf8"));
    const items = recipe ? workVariants(recipe, yard).items : [];
    const [first, ...others] = items;
    if (!first) throw new Error(`${name} can't be worked out`);
    const words = copyOf([first, ...others]);
    const goods = storeItem([first, ...others], shop.division);
    const cards = goods.variants.map((variant) => careCardLeaf(goods, variant, storeShop(shop)));
    const known = numbersIn(textsIn([productPageLeaf(goods, storeShop(shop)), cards]));
    const said = numbersIn([words.title.text, words.short.text, words.long.text, ...words.measures, ...words.care]);
    expect(said.length).toBeGreaterThan(5);
    expect(said.filter((number) => !known.includes(number))).toEqual([]);
    for (const text of textsIn(words)) expect(findUnprovable(text, { child: false, food: false })).toEqual([]);
    for (const one of [words.title, words.short, words.long, ...words.altTexts.map(({ alt }) => alt)])
      expect(one.over, one.text).toBeUndefined();
    expect(words.keywords.length).toBeGreaterThan(4);
  });
});
