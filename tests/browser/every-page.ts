// Pages of the built demo in a browser, opened from disk as a reader opens them: access, phones, paper, no scripts.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { filesIn } from "../whole/demo.ts";
import { demoSite } from "../whole/demo-site.ts";
import { openBrowser, openPage } from "./browser.ts";
import { papers, printedPages } from "./paper.ts";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
/** Elements that stick out of the window, by tag, class and how far; what scrolls in a box of its own does not. */
const stickingOut = `(() => {
  const wide = document.documentElement.clientWidth;
  const scrolls = (e) => { for (let p = e.parentElement; p; p = p.parentElement) if (/auto|scroll|hidden/.test(getComputedStyle(p).overflowX)) return true; return false; };
  const out = [...document.body.querySelectorAll("*")].filter((e) => e.getBoundingClientRect().right > wide + 1 && !e.closest("svg svg, svg *") && !scrolls(e));
  return { over: document.documentElement.scrollWidth - wide, who: out.slice(0, 5).map((e) => e.tagName + "." + e.getAttribute("class") + " " + Math.round(e.getBoundingClientRect().right - wide)) };
})()`;

/** All that is asked of the pages that stand on these parts of the site. Each is opened once, and once more without scripts. */
export function provePages(isMeant: (name: string) => boolean): void {
  const site = demoSite();
  const pages = filesIn(site).filter((name) => name.endsWith(".html") && isMeant(name));
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser.close();
  });

  describe.each(pages)("%s", (name) => {
    const file = join(site, name);
    let page: Page;
    let complaints: readonly string[];
    const lookAt = async (width: number): Promise<void> => {
      await page.emulateMedia({ media: "screen" });
      await page.setViewportSize({ width, height: 900 });
    };
    beforeAll(async () => {
      ({ page, complaints } = await openPage(browser, file, 1280, true));
    });
    afterAll(async () => {
      await page.context().close();
    });

    it("loads from disk without a complaint of the browser and without the network", async () => {
      expect(
        await page.evaluate(
          "document.fonts.ready.then(() => [...document.fonts].filter((f) => f.status === 'error').length)",
        ),
      ).toBe(0);
      expect(await page.evaluate("document.styleSheets.length")).toBeGreaterThan(0);
      expect(complaints).toEqual([]);
    });

    it("says the same with scripts switched off", async () => {
      const off = await openPage(browser, file, 1280, false);
      const words = (await off.page.evaluate("document.body.innerText")) as string;
      expect(words).toBe(await page.evaluate("document.body.innerText"));
      expect(words.trim().length).toBeGreaterThan(20);
      await off.page.context().close();
    });

    it("needs no sideways scrolling at 320, 768 and 1280 px", async () => {
      for (const width of [320, 768, 1280]) {
        await lookAt(width);
        expect(await page.evaluate(stickingOut)).toEqual({ over: 0, who: [] });
      }
    });

    it("shows axe (WCAG 2.2 A and AA, best practices) nothing, on a phone and on a desk", async () => {
      await page.evaluate(axe);
      for (const width of [320, 1280]) {
        await lookAt(width);
        const found =
          (await page.evaluate(`axe.run({ runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] })
          .then(({ violations }) => violations.map(({ id, nodes }) => id + ": " + nodes.slice(0, 3).map((n) => n.html.slice(0, 160)).join(" | ")))`)) as string[];
        expect(found).toEqual([]);
      }
    });

    it.each(Object.keys(papers))("prints on %s with nothing past the edge of the paper", async (paper) => {
      const { count, over } = await printedPages(page, papers[paper as keyof typeof papers]);
      expect(count).toBeGreaterThan(0);
      expect(over).toEqual([]);
    });
  });

  it("a drawing has a name and a description, each once in its page", () => {
    for (const name of pages) {
      const html = readFileSync(join(site, name), "utf8");
      const ids = [...html.matchAll(/\sid="([^"]*)"/g)].map(([, id]) => id);
      expect(ids.filter((id, n) => ids.indexOf(id) !== n)).toEqual([]);
      for (const [svg] of html.matchAll(/<svg[^>]*class="drawing"[\s\S]*?<\/svg>/g)) {
        expect(svg).toMatch(/<title[^>]*>[^<]+<\/title>/);
        expect(svg).toMatch(/<desc[^>]*>[^<]+<\/desc>/);
      }
    }
  });
}
