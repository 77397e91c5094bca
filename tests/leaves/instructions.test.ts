// The 15 statements on instructions of IEC/IEEE 82079-1 (edition 2, 2019; in our words, from notes on it) over every sheet of the
// demo, the shop's and those a stranger builds from. 13, on type and ink, is asked in tests/browser/sheets.test.ts too.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { renderToString } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import { BuildSheetPage } from "../../layouts/build-sheet.tsx";
import { stepFaults } from "../../src/findings/step-words.ts";
import type { Item } from "../../src/item/item.ts";
import { buildSheetLeaf } from "../../src/leaves/build-sheet.ts";
import { pageStyle } from "../../src/leaves/page-style.ts";
import type { SheetSet } from "../../src/leaves/sheet-set.ts";
import { plainSheetSetOf, sheetSetOf } from "../../src/leaves/sheets/sheet-set-of.ts";
import { readShop } from "../../src/yard/read-shop.ts";
import { demoItems } from "../drawing/demo.ts";
import { textsIn } from "./printed.ts";
import { blocksOf, factOn, listsOn, ofKind, stepsOn, tableOn, tablesOn } from "./sheet-blocks.ts";

const { shop } = readShop("shop.yaml", readFileSync(join(import.meta.dirname, "../../content/shop/shop.yaml"), "utf8"));
if (!shop) throw new Error("the demo's shop can't be read");

const cases = demoItems.flatMap((item): (readonly [string, Item, SheetSet])[] => [
  [`${item.slug}, for the shop`, item, sheetSetOf([item], shop)],
  [`${item.slug}, for a stranger`, item, plainSheetSetOf([item], shop)],
]);

const placeOf = (set: SheetSet, id: string): number => set.sheets.findIndex((sheet) => sheet.id === id);
const marksIn = (lines: readonly string[]): string[] => lines.map((line) => line.replace(/^\d+ × /, ""));
const plain = (html: string): string => html.replace(/<[^>]*>/g, "");

describe.each(cases)("%s", (_, item, set) => {
  const steps = stepsOn(set);
  const pieces = tableOn(set, "pieces", "Pieces").rows;

  it("1: name, revision and day stand on the cover and in the margin of every page", () => {
    expect(set.sheets[0].id).toBe("cover");
    expect(set.sheets[0].title).toBe(item.title);
    expect(set.revision).toMatch(/^Revision \d+$/);
    expect(set.date).toMatch(/^\d{4}-\d\d-\d\d$/);
    const number = set.revision.replace("Revision ", "");
    expect(pageStyle(set).html).toContain(`Revision ${number} `);
  });

  it("2 and 3: whom it is written for, what it is made for and what not", () => {
    expect(factOn(set, "cover", "To build it")).toMatch(/^A grown-up .*\.$/);
    expect(factOn(set, "cover", "Made")).toMatch(/^(?:to|for) /);
    expect(factOn(set, "cover", "Not made")).toMatch(/^to /);
  });

  it("4: tools, pieces and fasteners with their numbers come before step 1, and each of them is used", () => {
    expect(listsOn(set, "cover").some((tool) => tool.includes("safety glasses"))).toBe(true);
    for (const id of ["cover", "yard", "pieces", "kit"]) expect(placeOf(set, id)).toBeLessThan(placeOf(set, "steps"));
    expect(pieces.reduce((sum, row) => sum + Number(row[1]), 0)).toBe(item.members.length);
    const added = new Set(item.sections.flatMap((section) => section.steps.flatMap(({ adds }) => adds)));
    expect(item.members.filter(({ id }) => !added.has(id)).map(({ id }) => id)).toEqual([]);
    const kit = tablesOn(set, "kit").flatMap(({ rows }) => rows);
    for (const [mark, count] of pieces)
      expect(kit.filter((row) => row[1] === mark).reduce((sum, [number]) => sum + Number(number), 0)).toBe(
        Number(count),
      );
    const driven = steps.flatMap(({ fasteners }) => marksIn(fasteners));
    const bought = tablesOn(set, "yard").filter(({ caption }) => caption.startsWith("Fasteners"));
    for (const [name] of bought.flatMap(({ rows }) => rows)) expect(driven).toContain(name);
  });

  it("5: steps are numbered 1, 2, 3 … through all sections", () => {
    expect(steps.map(({ number }) => number)).toEqual(steps.map((_, i) => String(i + 1)));
  });

  it("6 and 7: one thing a step, a verb first, under 25 words", () => {
    expect(item.sections.flatMap((section) => section.steps.flatMap(stepFaults))).toEqual([]);
    for (const { text } of steps) expect(plain(text.html)).toMatch(/^[A-Z]/);
  });

  it("8: what is dangerous in a step is said in that step, before its words", () => {
    for (const { fasteners, cautions } of steps) if (fasteners.length > 0) expect(cautions.length).toBeGreaterThan(0);
    const leaf = { ...buildSheetLeaf([item], shop), set };
    const html = renderToString(BuildSheetPage({ leaf, root: "../" }));
    const said = html.split('<li class="step"').slice(1);
    expect(said).toHaveLength(steps.length);
    steps.forEach(({ cautions, words }, i) => {
      const [before = ""] = (said[i] ?? "").split('class="do"');
      expect(before.match(/class="signal"/g)?.length ?? 0).toBe(cautions.length + words.length);
    });
  });

  it("9: each caution has its signal word, its hazard, what it does and how to keep clear; said again it points back", () => {
    const first = new Map<string, string>();
    for (const step of steps) {
      for (const { signal, hazard, consequence, avoidance } of step.cautions) {
        expect(["WARNING", "CAUTION", "NOTICE"]).toContain(signal);
        expect(avoidance.length).toBeGreaterThan(10);
        const back = /^As in step (\d+):$/.exec(hazard)?.[1];
        if (back === undefined) {
          expect(hazard.length * consequence.length).toBeGreaterThan(100);
          first.set(`${step.number} ${avoidance}`, hazard);
        } else expect(first.has(`${back} ${avoidance}`)).toBe(true);
      }
    }
    for (const { cautions } of ofKind(blocksOf(set), "cautions"))
      for (const one of cautions) expect(Object.values(one).every((text) => text !== "")).toBe(true);
  });

  it("10: one piece has one mark, in table, kit, cut sheet, steps and on its stickers", () => {
    const marks = pieces.map(([mark]) => mark ?? "");
    expect(new Set(marks).size).toBe(marks.length);
    const stickers = ofKind(blocksOf(set, "stickers"), "figure").map(({ picture }) => picture.caption);
    expect(stickers).toHaveLength(item.members.length);
    for (const mark of marks)
      expect(stickers.some((caption) => caption.startsWith(`Sticker: ${mark}, 1 of`))).toBe(true);
    const panels = new Set([
      ...item.panels.map(({ kind }) => kind),
      ...item.members.flatMap((one) => one.assemblyKind ?? []),
    ]);
    for (const name of steps.flatMap((step) => marksIn(step.pieces))) expect([...marks, ...panels]).toContain(name);
    const drawn = ofKind(blocksOf(set, "piece-drawings"), "figure").map(({ picture }) => picture.caption);
    expect(drawn).toHaveLength(marks.length);
  });

  it("11: every panel that is drawn is called by the steps that make it, and every sheet that is called is there", () => {
    const texts = textsIn(set.sheets.map(({ blocks }) => blocks)).map(plain);
    const titles = new Set(set.sheets.map(({ title }) => title));
    const called = texts.flatMap((text) => [...text.matchAll(/sheet “([^”]+)”/g)].map(([, title]) => title ?? ""));
    for (const title of called) expect(titles).toContain(title);
    const made = new Set(item.sections.flatMap(({ makes }) => (makes ? [makes.kind] : [])));
    const panels = ofKind(blocksOf(set, "panels"), "heading").map(({ text }) => text);
    for (const text of panels) {
      const kind = text.toLowerCase().replace(/, mirrored$/, "");
      expect(made).toContain(kind);
      expect(texts.some((one) => one.toLowerCase().includes(`drawn as “${kind}” on the sheet “panels”`))).toBe(true);
    }
    for (const step of steps) if (step.pieces.length > 0) expect(step.picture).toBeDefined();
  });

  it("12: every length in a step has its unit, or is a block's size to the mark", () => {
    const html = steps
      .flatMap(({ text, checks, words }) => [text, ...checks, ...words].map((one) => one.html))
      .join(" ");
    const lengths = item.sections.flatMap((section) =>
      section.steps.flatMap(({ text, checks, cautions }) =>
        [text, ...checks, ...cautions].flatMap(({ figures }) => figures),
      ),
    );
    const printed = [...html.matchAll(/class="figure">([^<]*)</g)].map(([, text]) => text ?? "");
    expect(printed).toHaveLength(lengths.length);
    for (const text of printed) expect(text).toMatch(/(?: |\u00a0)(?:in|mm|lb|sq ft|full|scant)$|°$|^\d+$/);
    for (const { caption, heads } of tablesOn(set))
      if (heads.some((head) => /^(?:Length|Width|Thickness)$/.test(head)) && caption !== "")
        expect(caption, caption).toMatch(/inches|Board prices|Material|Prices/);
  });

  it("14: maker, contact and version are on every page; care, storage and disposal are told", () => {
    expect(set.shopName).toBe(shop.name);
    expect(set.foot).toContain(shop.contact);
    expect(listsOn(set, "place").join(" ")).toMatch(/Store|dry/);
    expect(listsOn(set, "place").join(" ")).toMatch(/waste|burn|compost/);
  });

  it("15: no abbreviation but those of the trade that are read as words", () => {
    const texts = set.sheets
      .filter(({ id }) => !["prices", "record", "sale"].includes(id))
      .flatMap(({ blocks }) =>
        textsIn(
          JSON.parse(JSON.stringify(blocks, (key, value) => (["source", "svg", "narrow"].includes(key) ? "" : value))),
        ),
      );
    const known = new Set(["WARNING", "CAUTION", "NOTICE", "PDF", "SVG", "US"]);
    const found = texts.flatMap((text) => plain(text).match(/\b[A-Z]{2,}\b/g) ?? []).filter((word) => !known.has(word));
    expect([...new Set(found)]).toEqual([]);
  });
});
