// Sheets of cards in a browser, laid out for print: each card as large as it says, nothing cut off, every sheet within Letter and A4.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { cardSizes } from "../../src/leaves/cards.ts";
import { filesIn } from "../whole/demo.ts";
import { demoSite } from "../whole/demo-site.ts";
import { openBrowser, openPage } from "./browser.ts";
import { papers, pdfOf } from "./paper.ts";

const site = demoSite();
const cards = filesIn(site).filter((name) => /^binder\/cards\/.*\.html$/.test(name));
const care = filesIn(site).filter((name) => /^store\/care\/.*\.html$/.test(name));

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});

/** CSS px in a millimetre. */
const px = 96 / 25.4;

type Box = { kind: string; width: number; height: number; over: number; colours: string[] };

/** Every card: its printed size, how much of it is cut off, and the colours of its letters. */
const boxes = (selector: string) => `[...document.querySelectorAll(${JSON.stringify(selector)})].map((card) => {
  const { width, height } = card.getBoundingClientRect();
  const colours = [...new Set([card, ...card.querySelectorAll("*")].map((e) => getComputedStyle(e).color))];
  const over = Math.max(card.scrollHeight - card.clientHeight, card.scrollWidth - card.clientWidth);
  return { kind: card.className.replace(/^cut cut-/, ""), width, height, over, colours };
})`;

async function printed(name: string, selector: string): Promise<{ boxes: Box[]; close: () => Promise<void> }> {
  const { page } = await openPage(browser, join(site, name), 816, true);
  await page.emulateMedia({ media: "print" });
  return { boxes: (await page.evaluate(boxes(selector))) as Box[], close: () => page.context().close() };
}

/** Letters print black or grey. */
const isGrey = (colour: string): boolean => {
  const [r, g, b] = colour.match(/\d+/g)?.map(Number) ?? [];
  return r !== undefined && Math.max(r, g ?? 0, b ?? 0) - Math.min(r, g ?? 0, b ?? 0) < 16;
};

describe.each(cards)("%s", (name) => {
  it("prints every card in its size to half a millimetre, with all of its words, in black", async () => {
    const { boxes: all, close } = await printed(name, ".cut");
    expect(new Set(all.map(({ kind }) => kind)).size).toBeGreaterThanOrEqual(3);
    for (const { kind, width, height, over, colours } of all) {
      const size = cardSizes[kind as keyof typeof cardSizes];
      expect(Math.abs(width / px - size.width)).toBeLessThan(0.5);
      expect(Math.abs(height / px - size.height)).toBeLessThan(0.5);
      expect({ kind, over: Math.max(0, over - 1) }).toEqual({ kind, over: 0 });
      expect(colours.filter((colour) => !isGrey(colour))).toEqual([]);
    }
    await close();
  });

  it.each(Object.keys(papers))("takes one page of %s for each sheet, and no more", async (paper) => {
    const { page } = await openPage(browser, join(site, name), 816, true);
    const sheets = (await page.evaluate(`document.querySelectorAll(".up").length`)) as number;
    const pdf = await pdfOf(page, papers[paper as keyof typeof papers]);
    expect((pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length).toBe(sheets);
    await page.context().close();
  });
});

it("a care card alone fits A6 (105 × 148 mm) and 4 × 6 in (101.6 × 152.4 mm), one side, and holds lot and date lines", async () => {
  expect(care.length).toBeGreaterThan(5);
  for (const name of care) {
    const { boxes: all, close } = await printed(name, ".card");
    for (const { width, height, over } of all) {
      expect(width / px).toBeLessThanOrEqual(101.6);
      expect(height / px).toBeLessThanOrEqual(148);
      expect(over).toBeLessThanOrEqual(1);
    }
    const html = readFileSync(join(site, name), "utf8");
    for (const line of ["Lot", "Made on"]) expect(html).toContain(`<dt>${line}</dt>`);
    await close();
  }
});
