// What moved between two worked items: a changed lean, a changed size, a changed screw.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Item } from "../../../src/item/item.ts";
import { workJson } from "../../../src/item/work-json.ts";
import { type Change, changesBetween, changeWords } from "../../../src/leaves/revised/changes.ts";
import { type Summary, summaryOf } from "../../../src/leaves/revised/summary.ts";
import { parseSummary } from "../../../src/leaves/revised/summary-schema.ts";
import { sheetSetOf } from "../../../src/leaves/sheets/sheet-set-of.ts";
import { itemFrom, sixteenths } from "../../drawing/demo.ts";
import { shop } from "../worked-goods.ts";

const text = readFileSync(join(import.meta.dirname, "../../../content/recipes/trestle-pair-with-plank-top.md"), "utf8");
const trestle = (from: string, to: string): Item => {
  expect(text).toContain(from);
  return itemFrom("trestle", text.replace(from, to));
};
const summary = (item: Item): Summary => summaryOf(item, sheetSetOf([item], shop), []);

const asIs = itemFrom("trestle", text);
const steeper = trestle("splay: 14 deg", "splay: 10 deg");
const changes = changesBetween(summary(asIs), summary(steeper));
const names = (what: Change["what"]): string[] => changes.filter((one) => one.what === what).map(({ name }) => name);

describe("the trestle's splay from 14° to 10°", () => {
  it("names exactly the sizes that differ in the worked items, and no other", () => {
    const sizes = ({ pieces }: ReturnType<typeof workJson>) =>
      new Map(
        pieces.map(({ mark, count, length, width, thickness, ends }) => [
          mark,
          JSON.stringify([count, length, width, thickness, ends]),
        ]),
      );
    const [before, after] = [sizes(workJson(asIs)), sizes(workJson(steeper))];
    const moved = [...after.keys()].filter((mark) => before.get(mark) !== after.get(mark));
    const told = names("size").filter((name) => !/^overall|^weight/.test(name));
    expect([
      ...new Set(told.map((name) => name.replace(/ (?:number|length|width|thickness|mitre.*|bevel.*)$/, ""))),
    ]).toEqual(moved);
    expect(moved.length).toBeGreaterThan(0);
    expect(moved.length).toBeLessThan(asIs.pieces.length);
  });

  it("tells the legs' mitre, 14 to 10, and the depth over the feet; neither width nor height of the table", () => {
    const mitres = changes.filter(({ name }) => /mitre/.test(name));
    expect(mitres.length).toBeGreaterThan(0);
    for (const { before, after } of mitres)
      expect([Math.abs(Number(before)), Math.abs(Number(after))]).toEqual([
        expect.closeTo(14, 3),
        expect.closeTo(10, 3),
      ]);
    expect(names("size")).toContain("overall depth");
    expect(names("size")).not.toContain("overall width");
    expect(names("size")).not.toContain("overall height");
  });

  it("names exactly the members that stand elsewhere", () => {
    const places = (item: Item) =>
      new Map(workJson(item).members.map(({ id, min, max }) => [id, JSON.stringify([min, max])]));
    const [before, after] = [places(asIs), places(steeper)];
    expect(names("place")).toEqual([...after.keys()].filter((id) => before.get(id) !== after.get(id)));
  });

  it("names the drawing of the panel and none of a plank alone", () => {
    expect(names("drawing").some((name) => /panel/i.test(name))).toBe(true);
    const planks = asIs.pieces.filter(({ name }) => name === "planks").map(({ mark }) => mark);
    for (const mark of planks)
      expect(names("drawing").filter((name) => new RegExp(`piece ${mark}\\b`, "i").test(name))).toEqual([]);
  });

  it("says it in words of the trade: 14° → 10°", () => {
    expect(changeWords(changes, sixteenths).join("\n")).toMatch(/mitre, (?:low|high) end: -?14° → -?10°/);
  });
});

it("a word in a step moves that step's text and nothing else", () => {
  const told = changesBetween(
    summary(asIs),
    summary(trestle("good side down, feet on a straight line", "good side down, feet on one line")),
  );
  expect(told.map(({ what, name }) => [what, name])).toEqual([["step", "1"]]);
});

it("the same recipe moves nothing, and a summary read back from its file is the same", () => {
  const one = summary(asIs);
  expect(changesBetween(one, summary(itemFrom("trestle", text)))).toEqual([]);
  expect(parseSummary(JSON.stringify(one))).toEqual(one);
  expect(parseSummary("{}")).toBeUndefined();
  expect(parseSummary("not JSON")).toBeUndefined();
});

it("a price that moved is told with both: $48.00 → $52.00", () => {
  const [before, after] = ["48.00", "52.00"].map((price) => ({ ...summary(asIs), prices: { "oil, local": price } }));
  if (!before || !after) throw new Error("no summaries");
  expect(changeWords(changesBetween(before, after), sixteenths)).toEqual(["oil, local: $48.00 → $52.00"]);
});
