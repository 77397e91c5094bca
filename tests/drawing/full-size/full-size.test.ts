// Patterns at true size: what is drawn is as large as the wood, in one piece or put together from its tiles.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Drawing, Mark, Paper } from "../../../src/drawing/drawing.ts";
import { fourInches, hundredMillimetres } from "../../../src/drawing/full-size/check-bars.ts";
import { chainIn } from "../../../src/drawing/full-size/clip-marks.ts";
import { fullSizePages } from "../../../src/drawing/full-size/full-size-pages.ts";
import { packPages } from "../../../src/drawing/full-size/pack-pages.ts";
import { turnedMarks } from "../../../src/drawing/full-size/placed-marks.ts";
import type { Template } from "../../../src/drawing/full-size/template.ts";
import { templatesOf } from "../../../src/drawing/full-size/templates-of.ts";
import { type Tile, tilesOf } from "../../../src/drawing/full-size/tiles.ts";
import { textBox } from "../../../src/drawing/text-width.ts";
import { signFont } from "../../../src/site/letter-font.ts";
import { demoItem, demoItems, sixteenths } from "../demo.ts";

/** What the margins of DIN/ISO A4 and of Letter leave, as the paper stage has them. */
const papers = [
  ["letter", { width: 195.9, height: 248.4 }],
  ["a4", { width: 190, height: 266 }],
] as const;

const patternsOf = (slug: string): readonly Template[] => templatesOf(demoItem(slug), sixteenths, signFont());
const found = (slug: string, words: string): Template => {
  const template = patternsOf(slug).find(({ title }) => title.includes(words));
  if (!template) throw new Error(`no pattern ${words}`);
  return template;
};

const chainsOf = (marks: readonly Mark[], line: string): (readonly Paper[])[] =>
  marks.flatMap((mark) => (mark.kind === "lines" && mark.line === line ? mark.chains : []));
const extent = (points: readonly Paper[], k: 0 | 1): number => {
  const all = points.map((p) => p[k]);
  return Math.max(...all) - Math.min(...all);
};

/** Total length of lines: a measure that lost or doubled lines change. */
const lengthOf = (chains: readonly (readonly Paper[])[]): number =>
  chains
    .flatMap((chain) => chain.slice(1).map((b, i) => [chain[i] as Paper, b] as const))
    .reduce((sum, [a, b]) => sum + Math.hypot(b[0] - a[0], b[1] - a[1]), 0);

function distanceTo(p: Paper, chains: readonly (readonly Paper[])[]): number {
  let least = Infinity;
  for (const chain of chains) {
    for (let i = 1; i < chain.length; i++) {
      const [a, b] = [chain[i - 1] as Paper, chain[i] as Paper];
      const [du, dv] = [b[0] - a[0], b[1] - a[1]];
      const long = du * du + dv * dv;
      const t = long === 0 ? 0 : Math.max(0, Math.min(1, ((p[0] - a[0]) * du + (p[1] - a[1]) * dv) / long));
      least = Math.min(least, Math.hypot(p[0] - a[0] - t * du, p[1] - a[1] - t * dv));
    }
  }
  return least;
}

describe("a pattern is as large as the wood", () => {
  test("the arm 9 x 9: its outline is 228.6 x 228.6 mm", () => {
    const outline = chainsOf(found("hanging-basket-arms", "arm").marks, "visible").flat();
    expect(extent(outline, 0)).toBeCloseTo(228.6, 2);
    expect(extent(outline, 1)).toBeCloseTo(228.6, 2);
  });

  test("a spacer block for 2 in is 50.8 mm high", () => {
    const [block] = chainsOf(found("stall-price-ladder", "Spacer block 2").marks, "visible");
    expect(extent(block as readonly Paper[], 1)).toBeCloseTo(50.8, 9);
  });

  test("the trestle's bevel guide runs 14 degrees off plumb: tan 14 = 0.249328", () => {
    const lines = chainsOf(found("trestle-pair-with-plank-top", "Bevel guide 14°").marks, "visible");
    const slanted = lines.find((chain) => extent(chain, 0) > 0 && extent(chain, 1) > 0) as readonly Paper[];
    expect(extent(slanted, 0) / extent(slanted, 1)).toBeCloseTo(0.249328, 6);
  });

  test("the corral's story stick: the lowest rail from 3 to 4 11/16 is ruled 76.2 and 119.0625 mm from its end", () => {
    const stick = found("hose-and-pot-corral", "face, up its side");
    const us = chainsOf(stick.marks, "visible").flatMap((chain) => chain.map(([u]) => u));
    const zero = Math.min(...us);
    for (const place of [76.2, 119.0625]) expect(us.some((u) => Math.abs(u - zero - place) < 1e-6)).toBe(true);
  });

  test("the ladder's planks share one pattern of two holes 3 1/2 - 2 x 15/16 = 1 5/8 apart, for both ends of all five", () => {
    const holes = patternsOf("stall-price-ladder").filter(({ title }) => title.includes("plank"));
    expect(holes.map(({ title }) => title)).toEqual([
      "A, B, C, D and E: planks, left end, right end turned half round",
    ]);
    const crosses = chainsOf((holes[0] as Template).marks, "dimension").filter(
      (chain) => chain.length === 2 && extent(chain, 0) === 8,
    );
    const middles = crosses.map(([a]) => a?.[1] ?? 0).sort((a, b) => a - b);
    expect((middles[1] as number) - (middles[0] as number)).toBeCloseTo(1.625 * 25.4, 6);
  });
});

describe("pages", () => {
  for (const [paper, area] of papers) {
    for (const item of demoItems) {
      const templates = templatesOf(item, sixteenths, signFont());
      const pages = fullSizePages(item, templates, area, paper);

      test(`${item.slug} on ${paper}: its tiles put together are each pattern's lines, none lost or moved`, () => {
        for (const template of templates) {
          const tiles = pages.flatMap((page) => page.tiles).filter((tile) => tile.template === template);
          const turned = tiles[0]?.turned ?? false;
          const whole = chainsOf(turned ? turnedMarks(template.marks, template.width) : template.marks, "visible");
          const put = tiles.map((tile) => placedBack(tile));
          for (const p of put.flat(2)) expect(distanceTo(p, whole)).toBeLessThan(0.1);
          for (const p of whole.flat()) expect(distanceTo(p, put.flat())).toBeLessThan(0.1);
          // Lines in the bands that two tiles share are drawn twice, so together they are at least as long.
          expect(lengthOf(put.flat())).toBeGreaterThan(lengthOf(whole) - 0.01);
        }
      });

      test(`${item.slug} on ${paper}: nothing reaches over the page, and every word of a pattern stands on one`, () => {
        for (const { drawing } of pages) {
          for (const [u, v] of pointsOf(drawing)) {
            expect(u).toBeGreaterThan(-1e-6);
            expect(u).toBeLessThan(area.width + 1e-6);
            expect(v).toBeGreaterThan(-1e-6);
            expect(v).toBeLessThan(area.height + 1e-6);
          }
        }
        const words = pages.flatMap(({ drawing }) => drawing.marks.flatMap((m) => (m.kind === "text" ? [m.text] : [])));
        const asked = templates.flatMap(({ marks }) => marks.flatMap((m) => (m.kind === "text" ? [m.text] : [])));
        expect(asked.filter((text) => !words.includes(text))).toEqual([]);
      });

      test(`${item.slug} on ${paper}: type is at least 9 pt (3.175 mm), and each page has both bars`, () => {
        for (const { drawing } of pages) {
          for (const mark of drawing.marks) if (mark.kind === "text") expect(mark.size).toBeGreaterThanOrEqual(3.175);
          const long = chainsOf(drawing.marks, "dimension").map((chain) => extent(chain, 0));
          for (const bar of [fourInches, hundredMillimetres])
            expect(long.some((one) => Math.abs(one - bar) < 1e-9)).toBe(true);
        }
      });
    }
  }

  test("4 in is 4 x 25.4 = 101.6 mm", () => expect(fourInches).toBeCloseTo(101.6, 12));

  test("both neighbours of a seam carry the same diamonds, at one place of the pattern", () => {
    const tiles = tilesOf(found("hanging-basket-arms", "arm"), { width: 190, height: 235 }, "either");
    expect(tiles.length).toBe(2);
    const diamonds = tiles.map((tile) => {
      const { left, top } = tile.window;
      return chainsOf(tile.marks, "dimension")
        .filter((chain) => chain.length === 5 && Math.abs(extent(chain, 0) - 5) < 1e-6)
        .map((chain) => `${((chain[0]?.[0] ?? 0) + left).toFixed(4)} ${((chain[0]?.[1] ?? 0) + top).toFixed(4)}`)
        .sort();
    });
    expect(diamonds[0]).toHaveLength(2);
    expect(diamonds[0]).toEqual(diamonds[1]);
  });
});

/** A tile's visible lines at their place in the pattern as it lies. */
function placedBack({ marks, window }: Tile): (readonly Paper[])[] {
  return chainsOf(marks, "visible").map((chain) => chain.map(([u, v]): Paper => [u + window.left, v + window.top]));
}

const pointsOf = (drawing: Drawing): readonly Paper[] =>
  drawing.marks.flatMap((mark): readonly Paper[] => {
    if (mark.kind === "lines") return mark.chains.flat();
    if (mark.kind === "text") return textBox(mark);
    return mark.kind === "arrowhead" ? [mark.tip] : [];
  });

describe("cutting and packing", () => {
  const coordinate = fc.double({ min: -50, max: 250, noNaN: true });
  const chain = fc.array(fc.tuple(coordinate, coordinate), { minLength: 2, maxLength: 12 });

  test("what four windows that share their borders hold of a chain is as long as what the whole holds", () => {
    fc.assert(
      fc.property(chain, fc.double({ min: 10, max: 90, noNaN: true }), (points, at) => {
        const whole = { left: 0, top: 0, width: 100, height: 100 };
        const quarters = [
          { left: 0, top: 0, width: at, height: at },
          { left: at, top: 0, width: 100 - at, height: at },
          { left: 0, top: at, width: at, height: 100 - at },
          { left: at, top: at, width: 100 - at, height: 100 - at },
        ];
        const parts = quarters.flatMap((window) => chainIn(points, window));
        expect(lengthOf(parts)).toBeCloseTo(lengthOf(chainIn(points, whole)), 6);
      }),
    );
  });

  test("no two things on a page overlap, none is lost, and no page is empty", () => {
    const size = fc.record({
      width: fc.double({ min: 1, max: 100, noNaN: true }),
      height: fc.double({ min: 1, max: 200, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(size, { maxLength: 25 }), (all) => {
        const packed = packPages(all, { width: 100, height: 200 }, 2);
        expect(packed.map(({ of }) => of)).toEqual(all);
        const pages = new Set(packed.map(({ page }) => page));
        expect([...pages].sort((a, b) => a - b)).toEqual([...pages.keys()].map((_, i) => i).slice(0, pages.size));
        for (const [i, one] of packed.entries()) {
          expect(one.left + one.of.width).toBeLessThan(100 + 1e-6);
          expect(one.top + one.of.height).toBeLessThan(200 + 1e-6);
          for (const other of packed.slice(i + 1)) {
            const apart =
              one.page !== other.page ||
              one.left + one.of.width < other.left ||
              other.left + other.of.width < one.left ||
              one.top + one.of.height < other.top ||
              other.top + other.of.height < one.top;
            expect(apart).toBe(true);
          }
        }
      }),
    );
  });
});
