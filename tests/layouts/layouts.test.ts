import { describe, expect, it } from "vitest";
import type { Item } from "../../src/item/item.ts";
import { type Goods, printBinder, printGuide, printStore } from "../leaves/printed.ts";
import { corral, prose, rack, shop } from "../leaves/worked-goods.ts";

const hostile = `"><script>alert(1)</script><img src=x onerror=alert(1)>'&`;

/** Every text a maker can write, made hostile. */
const poisoned = (item: Item): Item => ({
  ...item,
  title: hostile,
  line: hostile,
  purpose: hostile,
  notes: hostile,
  intro: [prose(hostile)],
  variant: { ...item.variant, name: hostile },
  variants: item.variants.map((one) => ({ ...one, name: hostile })),
  pieces: item.pieces.map((piece) => ({
    ...piece,
    name: hostile,
    board: { ...piece.board, name: hostile, words: hostile },
  })),
  panels: item.panels.map((panel) => ({ ...panel, kind: hostile })),
  gaps: item.gaps.map((gap) => ({ ...gap, group: hostile })),
  fittings: item.fittings.map((one) => ({ ...one, fitting: { ...one.fitting, name: hostile, words: hostile } })),
  sections: item.sections.map((section) => ({
    ...section,
    heading: prose(hostile),
    notes: [prose(hostile)],
    steps: section.steps.map((step) => ({
      ...step,
      text: prose(hostile),
      checks: [prose(hostile)],
      cautions: [prose(hostile)],
    })),
  })),
});

const poisonedShop = {
  ...shop,
  name: hostile,
  tagline: hostile,
  notice: hostile,
  place: hostile,
  contact: hostile,
  ordering: hostile,
  careNote: hostile,
};
const bad = (goods: Goods): Goods => goods.map(poisoned) as unknown as Goods;

const all = [
  ...printBinder([corral, rack], shop),
  ...printStore([corral, rack], shop),
  ...printGuide("# Lengths\n\n## A\n\ntext\n\n## B\n\n| a | b |\n|---|---|\n| 1 | 2 |\n", shop),
];

describe("layouts", () => {
  it("text that looks like markup stays text on every page", () => {
    const pages = [
      ...printBinder([bad(corral), bad(rack)], poisonedShop),
      ...printStore([bad(corral), bad(rack)], poisonedShop),
      ...printGuide(`# ${hostile}\n\n## ${hostile}\n\n${hostile}`, poisonedShop),
    ];
    for (const { path, html } of pages) {
      expect(html, path).toContain("&lt;script");
      expect(html, path).not.toMatch(
        /<script(?! type="application\/ld\+json">)|<img(?! src="[./]*drawings\/[a-z0-9-]+\.svg" width="\d+" height="\d+" alt=)/i,
      );
      expect(html.match(/<script/g)?.length ?? 0, path).toBe(path.startsWith("store/goods/") ? 1 : 0);
    }
  });

  it("every page has one h1, a language, a title, a main part that the skip link leads to, and no script", () => {
    for (const { path, html } of all) {
      expect(html.match(/<h1/g), path).toHaveLength(1);
      expect(html, path).toMatch(/^<html lang="en">/);
      expect(html, path).toMatch(/<title>[^<]+<\/title>/);
      expect(html, path).toContain('<a class="skip" href="#main">');
      expect(html.match(/<main id="main"/g), path).toHaveLength(1);
      // Data for machines is in an element that no browser runs.
      expect(html, path).not.toMatch(/<script(?! type="application\/ld\+json">)/);
    }
  });

  it("headings go down one level at a time", () => {
    for (const { path, html } of all) {
      const levels = [...html.matchAll(/<h([1-6])/g)].map(([, level]) => Number(level));
      levels.forEach((level, i) => {
        expect(level - (levels[i - 1] ?? 0), `${path}: ${levels.join(" ")}`).toBeLessThanOrEqual(1);
      });
    }
  });

  it("no address on a page is given twice", () => {
    for (const { path, html } of all) {
      const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
      expect(
        ids.filter((id, i) => ids.indexOf(id) !== i),
        path,
      ).toEqual([]);
    }
  });

  it("every drawing says what it shows", () => {
    for (const { path, html } of all) {
      for (const [svg] of html.matchAll(/<svg.*?<\/svg>/gs)) {
        expect(svg, path).toMatch(/role="img"/);
        expect(svg, path).toMatch(/<title[^>]*>[^<]+<\/title>/);
        expect(svg, path).toMatch(/<desc[^>]*>[^<]+<\/desc>/);
      }
    }
  });

  it("tables name their columns and rows", () => {
    for (const { path, html } of all.filter((one) => one.path.startsWith("binder"))) {
      for (const [table] of html.matchAll(/<table.*?<\/table>/gs)) {
        expect(table, path).toMatch(/<caption>[^<]+<\/caption>/);
        expect(table, path).toContain('scope="col"');
        expect(table, path).toContain('scope="row"');
      }
    }
  });

  it("a step's cautions stand before its work (IEC/IEEE 82079-1, statement 8)", () => {
    const html = all.find(({ path }) => path.startsWith("binder/items/hose"))?.html ?? "";
    const steps = [...html.matchAll(/<li class="step".*?class="do"/gs)].map(([text]) => text);
    expect(steps.length).toBe(corral[0].sections.flatMap((section) => section.steps).length);
    expect(steps.some((text) => text.includes("CAUTION"))).toBe(true);
    expect(steps.some((text) => text.includes("Drill every hole first"))).toBe(true);
  });
});
