// Every sheet of the demo's binder as the browser prints it: type, large type, ink, page numbers, heads that don't stand alone.
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { filesIn } from "../whole/demo.ts";
import { demoSite } from "../whole/demo-site.ts";
import { openBrowser, openPage } from "./browser.ts";
import { papers, pdfOf } from "./paper.ts";

const site = demoSite();
const sheets = filesIn(site).filter((name) => /^binder\/items\/.*\.html$/.test(name));

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});

/** Text that is set smaller than this many CSS px for print, by element; drawings are measured elsewhere. 9 pt are 12 px. */
const smallerThan = (px: number): string => `(() => {
  const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const found = [];
  for (let text = texts.nextNode(); text; text = texts.nextNode()) {
    const of = text.parentElement;
    if (!text.data.trim() || of.closest("svg") || of.getClientRects().length === 0) continue;
    const size = parseFloat(getComputedStyle(of).fontSize);
    if (size < ${px} - 0.01) found.push(of.tagName + "." + of.className + " " + size);
  }
  return [...new Set(found)];
})()`;

/** Colours of type on paper that aren't grey. */
const colours = `(() => [...new Set([...document.body.querySelectorAll("*")]
  .filter((e) => !e.closest("svg") && e.getClientRects().length > 0)
  .map((e) => getComputedStyle(e).color))].filter((c) => { const [r, g, b] = c.match(/[0-9.]+/g); return r !== g || g !== b || Number(r) > 0x55; }))()`;

/** What is asked to stay with what comes after it, or in one: heads, steps, rows of figures. */
const parted = `(() => [...document.querySelectorAll(".together, .step, .figure-row, .rules")]
  .filter((e) => getComputedStyle(e).breakInside !== "avoid").map((e) => e.className))()`;
const loose = `(() => [...document.querySelectorAll("h1, h2, h3, h4, caption")]
  .filter((e) => getComputedStyle(e).breakAfter !== "avoid").map((e) => e.textContent))()`;

async function printed(name: string): Promise<Page> {
  const { page } = await openPage(browser, join(site, name), 1280, true);
  await page.emulateMedia({ media: "print" });
  return page;
}

const pagesOf = (pdf: Buffer): number => (pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;

describe.each(sheets)("%s", (name) => {
  it("no type under 9 pt and none in colour: it holds in black and white (IEC/IEEE 82079-1, statement 13)", async () => {
    const page = await printed(name);
    expect(await page.evaluate(smallerThan(12))).toEqual([]);
    expect(await page.evaluate(colours)).toEqual([]);
    await page.context().close();
  });

  it("heads stay with what they head; steps, rows of drawings and what belongs together aren't parted", async () => {
    const page = await printed(name);
    expect(await page.evaluate(loose)).toEqual([]);
    expect(await page.evaluate(parted)).toEqual([]);
    await page.context().close();
  });

  it("large type is chosen without a script: nothing under 12 pt, and nothing past the paper's edge", async () => {
    const { page } = await openPage(browser, join(site, name), 1280, false);
    await page.check("#large-type");
    await page.emulateMedia({ media: "print" });
    await page.setViewportSize({ width: papers.A4.width - 144, height: 900 });
    const words = smallerThan(16).replace('of.closest("svg")', 'of.closest("svg, .sheet-head")');
    expect(await page.evaluate(words)).toEqual([]);
    const wide = await page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth");
    expect(wide).toBeLessThanOrEqual(0);
    expect(pagesOf(await pdfOf(page, papers.A4))).toBeGreaterThan(0);
    await page.context().close();
  });

  it("each sheet begins a page: at least as many pages as sheets, at most three for each", async () => {
    const page = await printed(name);
    const count = Number(await page.evaluate("document.querySelectorAll('.sheet').length"));
    for (const paper of Object.values(papers)) {
      const pages = pagesOf(await pdfOf(page, paper));
      expect(pages).toBeGreaterThanOrEqual(count);
      expect(pages).toBeLessThanOrEqual(3 * count);
    }
    await page.context().close();
  });
});
