// Pages at full size as they leave the typesetter, measured on their pixels at 300 dpi (one pixel is 0.085 mm).
import { PDFiumLibrary } from "@hyzyla/pdfium";
import { beforeAll, describe, expect, it } from "vitest";
import { fullSizeOf } from "../../src/leaves/full-size.ts";
import type { SheetSet } from "../../src/leaves/sheet-set.ts";
import { fullSizeAreas, fullSizeMargins } from "../../src/paper/paper.ts";
import { printJob } from "../../src/paper/print-job.ts";
import { signFont } from "../../src/site/letter-font.ts";
import { PageSetter } from "../../src/site/pdf/page-setter.ts";
import { demoItem, sixteenths } from "../drawing/demo.ts";
import { everyBlock } from "../paper/sets.ts";

const dpi = 300;
const mmOf = (pixels: number): number => (pixels / dpi) * 25.4;
/** Narrow lines are 0.175 mm wide with round ends: what is inked is that much longer than what is drawn. */
const narrow = 0.175;
/** A pixel at each end may be counted or not. */
const pixel = 25.4 / dpi;

type Page = {
  readonly isDark: (column: number, row: number) => boolean;
  readonly width: number;
  readonly height: number;
};

async function pagesOf(bytes: Uint8Array): Promise<Page[]> {
  const library = await PDFiumLibrary.init();
  const document = await library.loadDocument(bytes);
  const pages: Page[] = [];
  for (const page of [...document.pages()].slice(1)) {
    const { data, width, height } = await page.render({ scale: dpi / 72, render: "bitmap" });
    const copy = Uint8Array.from(data);
    pages.push({ width, height, isDark: (column, row) => (copy[4 * (row * width + column)] ?? 255) < 170 });
  }
  document.destroy();
  library.destroy();
  return pages;
}

/** Lengths in mm of the unbroken level lines between two heights of a page (mm from its top), the longest of each row. */
function levelLines(page: Page, from: number, to: number): number[] {
  const found: number[] = [];
  for (let row = Math.round((from / 25.4) * dpi); row < Math.round((to / 25.4) * dpi); row++) {
    let [run, longest] = [0, 0];
    for (let column = 0; column < page.width; column++) {
      run = page.isDark(column, row) ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
    found.push(mmOf(longest));
  }
  return found;
}

const isNear = (found: readonly number[], length: number): boolean =>
  found.some((one) => Math.abs(one - length) < 1.5 * pixel);

describe.each(["letter", "a4"] as const)("the arms' pattern on %s", (size) => {
  let pages: Page[] = [];
  const fullSize = fullSizeOf(demoItem("hanging-basket-arms"), sixteenths, signFont(), fullSizeAreas);
  const set: SheetSet = { ...everyBlock(), sheets: [{ id: "a", title: "A", tab: "A", blocks: [] }], fullSize };
  beforeAll(async () => {
    pages = await pagesOf(await new PageSetter().set(printJob(set, { size, type: "normal" })));
  });

  it("each page has a bar of 4 in = 101.6 mm and one of 100 mm at its foot", () => {
    expect(pages.length).toBe(fullSize[size].length);
    for (const page of pages) {
      const foot = fullSizeMargins.top + fullSizeAreas[size].height;
      const lines = levelLines(page, foot - 24, foot - 6);
      expect(isNear(lines, 101.6 + narrow)).toBe(true);
      expect(isNear(lines, 100 + narrow)).toBe(true);
    }
  });
});
