// What good instructions and technical drawings have in common, asked of every drawing of the demo. Sources: Agrawala et al. 2003
// (step-by-step assembly instructions, abstract read); ISO 128-2, ISO 129-1, ISO 6433 (scopes and excerpts read, figures from memory).
import { describe, expect, test } from "vitest";
import { isInside } from "../../src/drawing/dot-spots.ts";
import type { Drawing, Paper } from "../../src/drawing/drawing.ts";
import { drawExploded, moveApart } from "../../src/drawing/exploded-view.ts";
import { drawPanel } from "../../src/drawing/panel-drawing.ts";
import { differentPanels, membersOf } from "../../src/drawing/panel-space.ts";
import { drawPiece } from "../../src/drawing/piece-drawing.ts";
import { binderSheet } from "../../src/drawing/sheet.ts";
import { drawStep, findScene } from "../../src/drawing/step-picture.ts";
import { formatSvg } from "../../src/drawing/svg.ts";
import type { Item } from "../../src/item/item.ts";
import { inches } from "../../src/units/length.ts";
import { demoItems, drawingsOf, sixteenths } from "./demo.ts";
import { slantedItems } from "./slanted.ts";

const items: readonly Item[] = [...demoItems, ...slantedItems];
const drawings = [
  ...demoItems.flatMap((item) => drawingsOf(item)),
  ...slantedItems.flatMap((item) => drawingsOf(item, () => item)),
];

const only = <K extends Drawing["marks"][number]["kind"]>(drawing: Drawing, kind: K) =>
  drawing.marks.filter((mark): mark is Extract<Drawing["marks"][number], { kind: K }> => mark.kind === kind);

const steps = items.flatMap((item) =>
  item.sections.flatMap((section) =>
    section.steps.filter((step) => step.shown.length > 0).map((step) => ({ item, section, step })),
  ),
);
const named = steps.map((one) => [`${one.item.slug} step ${one.step.number}`, one] as const);

describe("steps", () => {
  test("1, 2: one picture a step, numbered on through the whole item", () => {
    for (const item of items) {
      const numbers = item.sections.flatMap((section) => section.steps.map((step) => step.number));
      expect(numbers).toEqual(numbers.map((_, i) => i + 1));
    }
  });

  test.each(named)("5: %s adds at most five kinds of piece at once", (_, { item, step }) => {
    const kinds = new Set(membersOf(item, step.shown).map((member) => `${member.panel ?? ""}/${member.group}`));
    expect(kinds.size).toBeLessThanOrEqual(step.shown.some((id) => id.split("/").length > 2) ? 12 : 5);
  });

  test.each(named)("9: %s draws what is there in thin line and what is added in wide line", (_, { item, step }) => {
    const lines = new Set(only(drawStep(item, step), "lines").map((mark) => mark.line));
    expect(lines.has("strong")).toBe(true);
    if (step.there.length > 0) expect(lines.has("light")).toBe(true);
  });

  test.each(named)("8: %s is seen as usual, or says how it is turned", (_, { item, section, step }) => {
    const { look } = findScene(item, section, step);
    if (section.makes?.panels.length) return;
    const usual = look.view.toViewer[1] < 0 && look.view.toViewer[0] > 0 && look.view.toViewer[2] > 0;
    expect(usual || /^Turned: seen from/.test(look.words)).toBe(true);
  });
});

describe("exploded views", () => {
  test.each(items.map((item) => [item.slug, item] as const))(
    "14: %s opens one panel of each kind, the others whole",
    (_, item) => {
      const { units } = moveApart(item);
      for (const kind of new Set(item.panels.map((panel) => panel.kind))) {
        const names = new Set(item.panels.filter((panel) => panel.kind === kind).map((panel) => panel.name));
        const opened = units.filter(
          (unit) => names.has(unit.name) && [...unit.inner.values()].some((by) => by.some((step) => step !== 0)),
        );
        expect(opened.length).toBeLessThanOrEqual(1);
      }
    },
  );

  test.each(items.map((item) => [item.slug, item] as const))(
    "29: %s names every piece of the list and none besides",
    (_, item) => {
      const drawing = drawExploded(item);
      const marks = only(drawing, "balloon").map((mark) => mark.text);
      const hidden = only(drawing, "text")
        .map((mark) => mark.text)
        .join(" ");
      for (const { mark, count, members } of item.pieces) {
        expect([mark, marks.filter((text) => text === mark).length + (hidden.includes(mark) ? 1 : 0)]).toEqual([
          mark,
          1,
        ]);
        expect([mark, item.members.filter((member) => member.mark === mark).length]).toEqual([mark, count]);
        expect(members.length).toBe(count);
      }
      expect(marks.filter((text) => !item.pieces.some((piece) => piece.mark === text))).toEqual([]);
    },
  );
});

describe.each(drawings.map((drawing) => [drawing.id, drawing] as const))("%s", (_, drawing) => {
  test("15: lines have two widths, the wide one twice the narrow one to 0.01 mm", () => {
    const svg = formatSvg(drawing);
    const widths = [
      ...svg.matchAll(/<path [^>]*class="d-(light|hidden|path|dimension|visible|strong)"[^>]*stroke-width="([\d.]+)"/g),
    ];
    const of = (kinds: string) =>
      new Set(widths.filter(([, kind]) => kinds.includes(kind as string)).map(([, , width]) => Number(width)));
    const [wide, narrow] = [of("visible strong"), of("light hidden path dimension")];
    expect(wide.size).toBeLessThanOrEqual(1);
    expect(narrow.size).toBeLessThanOrEqual(1);
    for (const w of wide) for (const n of narrow) expect(Math.abs(w - 2 * n)).toBeLessThanOrEqual(0.011);
  });

  test("19: pictorial views have no hidden edges; dashes are only fasteners nobody sees", () => {
    if (/-panel-|-piece-/.test(drawing.id)) return;
    const dashed = only(drawing, "lines").filter((mark) => mark.line === "hidden");
    if (!/-step-\d/.test(drawing.id)) expect(dashed).toEqual([]);
    for (const { chains } of dashed) for (const chain of chains) expect(chain.length).toBe(2);
  });

  test("21: values read from below or from the right, all in one height", () => {
    const texts = only(drawing, "text");
    for (const { turn = 0 } of texts) {
      expect(turn).toBeGreaterThan(-90);
      expect(turn).toBeLessThanOrEqual(90);
    }
    expect(new Set(texts.map((text) => text.size)).size).toBeLessThanOrEqual(1);
  });

  test("28: a leader's dot lies on wood that is seen", () => {
    const regions = only(drawing, "region");
    for (const { at } of only(drawing, "dot")) expect(regions.some((region) => isInside(at, region.loops))).toBe(true);
  });
});

describe("dimensions of pieces", () => {
  const pieces = items.flatMap((item) =>
    item.pieces.map((piece) => [`${item.slug} ${piece.mark}`, item, piece] as const),
  );

  /** Lines with an arrow at each end and the value between them. */
  const sizes = (drawing: Drawing) =>
    drawing.marks.flatMap((_mark, i) => {
      const [first, second, text] = drawing.marks.slice(i, i + 3);
      if (first?.kind !== "arrowhead" || second?.kind !== "arrowhead" || text?.kind !== "text") return [];
      const [a, b]: [Paper, Paper] = [first.tip, second.tip];
      const level = Math.abs(a[1] - b[1]) < Math.abs(a[0] - b[0]);
      return [{ value: text.text, length: Math.hypot(b[0] - a[0], b[1] - a[1]) / (drawing.scale ?? 1), level }];
    });

  test.each(pieces)(
    "20, 26: %s has each size once, and its length and width are those of the solid's own blank",
    (_, item, piece) => {
      const found = sizes(drawPiece(item, piece, sixteenths));
      const level = found.filter((size) => size.level).map((size) => size.length.toFixed(4));
      expect(new Set(level).size).toBe(level.length);
      const member = item.members.find((one) => one.id === piece.members[0]);
      const { frame } = member?.shape ?? {};
      if (member === undefined || frame === undefined) throw new Error("no member");
      const along = (way: readonly number[]) => {
        const places = member.solid.edges.map(({ a }) =>
          way.reduce((sum, part, k) => sum + part * (a[k] as number), 0),
        );
        return Math.max(...places) - Math.min(...places);
      };
      const [longest] = found.filter((size) => size.level).sort((a, b) => b.length - a.length);
      expect(longest?.length).toBeCloseTo(inches(piece.length), 6);
      if (piece.cuts.every((cut) => cut.kind === "hole" || cut.kind === "eased")) {
        expect(along(frame.x)).toBeCloseTo(inches(piece.length), 3);
        expect(along(frame.y)).toBeCloseTo(inches(piece.width), 3);
      }
    },
  );

  test.each(
    items.flatMap((item) => differentPanels(item).map((panel) => [`${item.slug} ${panel.kind}`, item, panel] as const)),
  )("26: %s: panel sizes on paper over the scale are those it states", (_, item, panel) => {
    for (const { value, length } of sizes(drawPanel(item, panel, sixteenths, binderSheet))) {
      const said = value.split(" ").reduce((sum, part) => {
        const [over, under] = part.split("\u2044").map(Number) as [number, number | undefined];
        return sum + over / (under ?? 1);
      }, 0);
      expect(Math.abs(length - said)).toBeLessThanOrEqual(1 / 32 + 1e-9);
    }
  });
});
