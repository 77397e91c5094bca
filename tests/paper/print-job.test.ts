// Sheets as data for the page setter: sizes, levels and words, before any page is set.
import { describe, expect, it } from "vitest";
import type { Drawing } from "../../src/drawing/drawing.ts";
import { pictureOf } from "../../src/leaves/picture.ts";
import type { SheetSet } from "../../src/leaves/sheet-set.ts";
import { fullSizeArea, paperSizes, textWidth } from "../../src/paper/paper.ts";
import { printJob } from "../../src/paper/print-job.ts";
import { svgFacts } from "../../src/paper/svg-facts.ts";
import { everyBlock } from "./sets.ts";

type Block = {
  readonly kind: string;
  readonly level?: number;
  readonly figures?: readonly { readonly width: number }[];
};
const letter = { size: "letter", type: "normal" } as const;
const blocksOf = (set: SheetSet, paper: Parameters<typeof printJob>[1] = letter): Block[][] =>
  (JSON.parse(printJob(set, paper).data) as { sheets: { blocks: Block[] }[] }).sheets.map(({ blocks }) => blocks);

const drawing = (width: number, height: number): Drawing => ({
  id: "d",
  title: "A board.",
  description: "A board & its <ends>.",
  width,
  height,
  marks: [],
});
const withFigure = (width: number, height: number, share: number): SheetSet => ({
  ...everyBlock(),
  sheets: [
    {
      id: "one",
      title: "One",
      tab: "One",
      blocks: [{ kind: "figure", picture: pictureOf(drawing(width, height)), name: "board", share }],
    },
  ],
});
const widthOf = (set: SheetSet, paper: Parameters<typeof printJob>[1] = letter) =>
  blocksOf(set, paper)[0]?.[0]?.figures?.[0]?.width;

describe("papers", () => {
  it("Letter is 8 1/2 x 11 in, A4 is 210 x 297 mm (ISO 216)", () => {
    expect(paperSizes.letter.width / 25.4).toBeCloseTo(8.5, 10);
    expect(paperSizes.letter.height / 25.4).toBeCloseTo(11, 10);
    expect(paperSizes.a4).toEqual({ width: 210, height: 297 });
  });
  it("25 mm at the binding side and 13 at the other leave 177.9 mm of Letter and 172 of A4", () => {
    expect([textWidth("letter"), textWidth("a4")]).toEqual([177.9, 172]);
  });
});

describe("figures", () => {
  it("one of 80 mm asked for at half the width stays at 80, the size its type is drawn for", () => {
    expect(widthOf(withFigure(80, 40, 0.25))).toBe(80);
  });
  it("one of 170 mm fills the 177.9 of Letter, and the 172 of A4", () => {
    expect(widthOf(withFigure(170, 40, 1))).toBe(177.9);
    expect(widthOf(withFigure(170, 40, 1), { size: "a4", type: "normal" })).toBe(172);
  });
  it("in large type one of 100 mm becomes 140, in normal type 106", () => {
    expect(widthOf(withFigure(100, 40, 1), { size: "letter", type: "large" })).toBe(140);
    expect(widthOf(withFigure(100, 40, 1))).toBe(106);
  });
  it("one that is 400 mm high is made lower than its page", () => {
    const width = widthOf(withFigure(100, 400, 1)) ?? 0;
    expect((400 * width) / 100).toBeLessThan(279.4 - 21 - 19);
  });
  it("two that are too wide to stand side by side stand one over the other", () => {
    expect(blocksOf(everyBlock())[2]?.map(({ figures }) => figures?.length)).toEqual([1, 1]);
  });
  it("a picture is named by its title and told by its description, in plain text", () => {
    expect(svgFacts(pictureOf(drawing(80, 40)).svg.html)).toEqual({
      width: 80,
      height: 40,
      alt: "A board. A board & its <ends>.",
    });
  });
  it("the same picture twice is one file", () => {
    expect(printJob(everyBlock(), letter).pictures.size).toBe(2);
  });
});

describe("headings", () => {
  it("a heading is never two deeper than the one before: level 4 right below a sheet's title is set as its first", () => {
    const levels = blocksOf(everyBlock())[1]?.flatMap(({ kind, level }) => (kind === "heading" ? [level] : []));
    expect(levels).toEqual([2]);
  });
});

describe("pages at full size", () => {
  const page = (width: number, height: number): SheetSet => {
    const one = { title: "Pattern", width, height, picture: pictureOf(drawing(width, height)) };
    return { ...everyBlock(), fullSize: { letter: [one], a4: [] } };
  };
  it("one as large as its page's room is set, on its own paper alone", () => {
    const { width, height } = fullSizeArea("letter");
    expect(printJob(page(width, height), letter).isFullSize).toBe(true);
    expect(printJob(page(width, height), { size: "a4", type: "normal" }).isFullSize).toBe(false);
  });
  it("one that is a millimetre wider is our fault: it would have to be shrunk", () => {
    expect(() => printJob(page(fullSizeArea("letter").width + 1, 50), letter)).toThrow(
      "more than a page of letter holds",
    );
  });
});
