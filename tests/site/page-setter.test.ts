// Pages as they come from the typesetter, read back with other programs than it.
import { PDFiumLibrary } from "@hyzyla/pdfium";
import { PDFDict, PDFDocument, PDFName } from "pdf-lib";
import { beforeAll, describe, expect, it } from "vitest";
import type { Drawing } from "../../src/drawing/drawing.ts";
import { pictureOf } from "../../src/leaves/picture.ts";
import type { SheetSet } from "../../src/leaves/sheet-set.ts";
import { printJob } from "../../src/paper/print-job.ts";
import { PageSetter } from "../../src/site/pdf/page-setter.ts";
import { a4, type Looked, letter, lookAtPdf } from "../paper/pdf-faults.ts";
import { everyBlock } from "../paper/sets.ts";

const setter = new PageSetter();
const setOn = (set: SheetSet, size: "letter" | "a4", type: "normal" | "large" = "normal") =>
  setter.set(printJob(set, { size, type }));

let looked: Looked;
beforeAll(async () => {
  looked = await lookAtPdf(await setOn(everyBlock(), "letter"), letter);
});

describe("a set of every block", () => {
  it("is whole on Letter: nothing clipped, nothing under 9 pt, tagged, with outline, own fonts, no pixels, no clock", () => {
    expect(looked.faults).toEqual([]);
  });
  it("is whole on A4, and in large type", async () => {
    expect((await lookAtPdf(await setOn(everyBlock(), "a4"), a4)).faults).toEqual([]);
    const large = await lookAtPdf(await setOn(everyBlock(), "letter", "large"), letter);
    expect(large.faults).toEqual([]);
    const sizes = (pages: Looked["pages"]) =>
      pages.flatMap(({ letters }) => letters.filter(({ text }) => text === "P").map(({ size }) => size));
    expect(Math.max(...sizes(large.pages))).toBeGreaterThan(Math.max(...sizes(looked.pages)));
  });
  it("has tags for headings, a table with a head, lists, figures and the contents", () => {
    for (const tag of ["H1", "H2", "Table", "THead", "TH", "TD", "L", "LI", "Figure", "TOC"])
      expect([tag, looked.tags.has(tag)]).toEqual([tag, true]);
  });
  it("says on every page what it is, of which revision and day, and where to ask", () => {
    for (const { text } of looked.pages) {
      for (const word of [
        "Every block, tall",
        "Revision 3",
        "2026-10-05",
        "Questions: ask@shop.example",
        "Quillow Yard",
      ])
        expect(text).toContain(word);
    }
  });
  it("sets fractions as the letters of one: 17 9⁄16 in", () => {
    expect(
      looked.pages
        .map(({ text }) => text)
        .join(" ")
        .replaceAll("\u00a0", " "),
    ).toContain("17 9⁄16 in");
  });
  it("is the same bytes each time, from another setter too", async () => {
    const one = await setOn(everyBlock(), "letter");
    const other = await new PageSetter().set(printJob(everyBlock(), { size: "letter", type: "normal" }));
    expect(Buffer.compare(Buffer.from(one), Buffer.from(other))).toBe(0);
  });
});

/** A square of 100 mm, drawn with one line of 100 and one of 4 in. */
const square: Drawing = {
  id: "square",
  title: "Square",
  description: "A square of 100 mm, to be measured.",
  width: 120,
  height: 120,
  marks: [
    {
      kind: "lines",
      line: "visible",
      chains: [
        [
          [5, 5],
          [105, 5],
        ],
        [
          [5, 5],
          [5, 105],
        ],
      ],
    },
  ],
};

/** Millimetres of the longest unbroken dark line that runs across the middle of a page's upper half. */
async function longestLine(bytes: Uint8Array, pageIndex: number): Promise<number> {
  const library = await PDFiumLibrary.init();
  const document = await library.loadDocument(bytes);
  const { data, width, height } = await document.getPage(pageIndex).render({ scale: 300 / 72, render: "bitmap" });
  let longest = 0;
  // Below the head's own rule, which runs across the page.
  for (let row = Math.round((18 / 25.4) * 300); row < height / 2; row += 1) {
    let run = 0;
    for (let column = 0; column < width; column += 1) {
      run = (data[4 * (row * width + column)] ?? 255) < 128 ? run + 1 : 0;
      longest = Math.max(longest, run);
    }
  }
  document.destroy();
  library.destroy();
  return (longest / 300) * 25.4;
}

describe("pages at full size", () => {
  const page = { title: "Square", width: 120, height: 120, picture: pictureOf(square) };
  const set: SheetSet = { ...everyBlock(), fullSize: { letter: [page], a4: [page] } };
  it("tell the printer to leave their size alone, and keep tags, outline and settled bytes", async () => {
    const one = await setOn(set, "letter");
    const { catalog } = await PDFDocument.load(one, { updateMetadata: false });
    const wishes = catalog.lookup(PDFName.of("ViewerPreferences"), PDFDict);
    expect(wishes.lookup(PDFName.of("PrintScaling"))).toBe(PDFName.of("None"));
    expect((await lookAtPdf(one, letter)).faults).toEqual([]);
    expect(Buffer.compare(Buffer.from(one), Buffer.from(await setOn(set, "letter")))).toBe(0);
  });
  it("a line of 100 mm is 100 mm long on paper: measured at 300 dpi, its ends rounded by a quarter of a millimetre each", async () => {
    const bytes = await setOn({ ...set, sheets: [{ id: "a", title: "A", tab: "A", blocks: [] }] }, "letter");
    expect(Math.abs((await longestLine(bytes, 1)) - 100.5)).toBeLessThan(0.12);
  });
  it("a set without them leaves the printer its choice", async () => {
    const { catalog } = await PDFDocument.load(await setOn(everyBlock(), "letter"), { updateMetadata: false });
    expect(catalog.lookupMaybe(PDFName.of("ViewerPreferences"), PDFDict)?.has(PDFName.of("PrintScaling"))).toBe(false);
  });
});

describe("letters", () => {
  it("one that the font lacks is a fault, and no empty box is printed", async () => {
    const set = everyBlock();
    const odd: SheetSet = {
      ...set,
      sheets: [{ id: "a", title: "A", tab: "A", blocks: [{ kind: "text", markup: { html: "<p>⌀ 3</p>" } }] }],
    };
    await expect(setOn(odd, "letter")).rejects.toThrow("⌀");
  });
});
