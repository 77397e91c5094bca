// A page in the browser -> how it comes out on paper: how many sheets, and what would run off them.
import type { Page } from "playwright-core";

export type Paper = { readonly format: "Letter" | "A4"; readonly width: number };

/** Widths in CSS px, 96 to the inch: 8.5 in and 210 mm. */
export const papers = {
  Letter: { format: "Letter", width: 816 },
  A4: { format: "A4", width: 794 },
} as const satisfies Record<string, Paper>;

/** Where a page's own style says nothing: 0.5 in at each side. */
const margin = "0.5in";

/** The widest margins a sheet asks for, 25 mm at the binding side and 13 mm at the other, in CSS px. */
const widestMargins = Math.ceil((38 / 25.4) * 96);

export const pdfOf = (page: Page, { format }: Paper): Promise<Buffer> =>
  page.pdf({
    format,
    printBackground: true,
    preferCSSPageSize: false,
    margin: { top: margin, bottom: margin, left: margin, right: margin },
  });

/** What is wider than the paper between its margins (sheets of cards have margins of their own and a test of their own), laid out for print; scrolling boxes can't be scrolled there. */
const pastTheEdge = `(() => {
  const wide = document.documentElement.clientWidth;
  return [...document.body.querySelectorAll("*")]
    .filter((e) => !e.closest("svg *, .up") && e.getClientRects().length > 0 && (e.getBoundingClientRect().right > wide + 1 || (e.scrollWidth > e.clientWidth + 1 && e.clientWidth > 0 && getComputedStyle(e).overflowX !== "visible")))
    .slice(0, 5)
    .map((e) => e.tagName + "." + e.getAttribute("class") + " " + Math.round(e.getBoundingClientRect().right - wide));
})()`;

export async function printedPages(
  page: Page,
  paper: Paper,
): Promise<{ readonly count: number; readonly over: readonly string[] }> {
  await page.emulateMedia({ media: "print" });
  await page.setViewportSize({ width: paper.width - widestMargins, height: 900 });
  const over = (await page.evaluate(pastTheEdge)) as string[];
  const pdf = await pdfOf(page, paper);
  return { count: (pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length, over };
}
