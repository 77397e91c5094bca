// Front views side by side: one scale for all, one ground, nothing over the edge, no name into the next.
import { describe, expect, it } from "vitest";
import { drawFrontView } from "../../src/drawing/front-view.ts";
import { drawFrontsSideBySide } from "../../src/drawing/fronts.ts";
import { lighten } from "../../src/drawing/lighten.ts";
import { drawSpareView } from "../../src/drawing/spare-view.ts";
import { textWidth } from "../../src/drawing/text-width.ts";
import { demoVariants } from "../leaves/demo-goods.ts";
import { corral, rack } from "../leaves/worked-goods.ts";

const standing = [corral[0], rack[0]].map((item) => ({
  front: drawFrontView(item),
  name: item.title,
  sizes: ["30 × 26 in", "(762 × 660 mm)"],
}));

describe("corral and rack side by side", () => {
  const drawing = drawFrontsSideBySide("line", "Line", standing, { width: 200, height: 85, type: 3.6 });
  const [one] = standing;
  it("the corral is 30 x 26 at 1 mm to the inch before it is put there", () => {
    expect([one?.front.width, one?.front.height].map((size) => Math.round(size ?? 0))).toEqual([30, 26]);
  });
  it("both are drawn to one scale: the rack's 60 in are 60/26 of the corral's height", () => {
    const heights = standing.map(({ front }) => front.height * (drawing.scale ?? 0));
    expect((heights[1] ?? 0) / (heights[0] ?? 1)).toBeCloseTo(60 / 26, 6);
    expect(Math.max(...heights)).toBeLessThanOrEqual(85 + 1e-9);
  });
  it("all stand on one ground, and nothing lies outside the drawing", () => {
    const points = drawing.marks.flatMap((mark) =>
      mark.kind === "region" ? mark.loops.flat() : mark.kind === "lines" ? mark.chains.flat() : [],
    );
    for (const [u, v] of points) {
      expect(u).toBeGreaterThanOrEqual(-1e-9);
      expect(u).toBeLessThanOrEqual(drawing.width + 1e-9);
      expect(v).toBeLessThanOrEqual(drawing.height);
    }
    const grounds = drawing.marks.flatMap((mark) =>
      mark.kind === "lines" && mark.line === "light" ? mark.chains : [],
    );
    expect(grounds).toHaveLength(1);
  });
  it("on a phone's sheet no text is wider than it, and none runs into its neighbour", () => {
    const { marks, width } = drawFrontsSideBySide("line", "Line", standing, { width: 80, height: 180, type: 3.2 });
    const texts = marks.flatMap((mark) => (mark.kind === "text" ? [mark] : []));
    const boxes = texts.map(({ at, text, size, strong }) => {
      const half = textWidth(text, size, strong ?? false) / 2;
      return { left: at[0] - half, right: at[0] + half, v: at[1] };
    });
    for (const box of boxes) expect(box.left >= -0.5 && box.right <= width + 0.5).toBe(true);
    for (const [i, a] of boxes.entries())
      for (const b of boxes.slice(i + 1))
        if (Math.abs(a.v - b.v) < 1) expect(a.right < b.left || b.right < a.left).toBe(true);
  });
});

describe("a lightened drawing", () => {
  it("of the ladder, whose ropes and holes are round, has under two thirds of the points, none further off than 0.1 mm", () => {
    const [, ladder] = demoVariants().find(([title]) => title === "Stall price ladder") ?? [];
    if (!ladder) throw new Error("no ladder");
    const whole = drawFrontView(ladder[0]);
    const light = lighten(whole);
    const count = (drawing: typeof whole) =>
      drawing.marks.reduce((sum, mark) => sum + (mark.kind === "region" ? mark.loops.flat().length : 0), 0);
    expect(count(light)).toBeLessThan(count(whole) * 0.67);
    const kept = new Set(
      whole.marks
        .flatMap((mark) => (mark.kind === "region" ? mark.loops.flat() : []))
        .map(([u, v]) => `${u.toFixed(0)} ${v.toFixed(0)}`),
    );
    expect(kept.size).toBeGreaterThan(20);
    const box = (drawing: typeof whole) => {
      const us = drawing.marks.flatMap((mark) => (mark.kind === "region" ? mark.loops.flat() : [])).map(([u]) => u);
      return [Math.min(...us), Math.max(...us)];
    };
    box(light).forEach((edge, i) => {
      expect(Math.abs(edge - (box(whole)[i] ?? 0))).toBeLessThan(0.1);
    });
  });
});

it("the spare view of the corral's twelve face rails colours as many members as it says, and tells no cut", () => {
  const [item] = corral;
  const piece = item.pieces.find(({ mark }) => mark === "A");
  if (!piece) throw new Error("no piece A");
  const drawing = drawSpareView(item, piece);
  expect(drawing.description).toContain(`the ${piece.members.length} pieces A in yellow`);
  const tones = drawing.marks.flatMap((mark) => (mark.kind === "region" ? [mark.tone.kind] : []));
  expect(new Set(tones)).toEqual(new Set(["added", "there"]));
  expect(drawing.marks.some(({ kind }) => kind === "text")).toBe(false);
});
