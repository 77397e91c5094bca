// Rules that hold for every drawing of the demo.
import { describe, expect, test } from "vitest";
import { cross } from "../../src/drawing/collision.ts";
import { isInside } from "../../src/drawing/dot-spots.ts";
import type { Drawing, Paper } from "../../src/drawing/drawing.ts";
import { formatSvg } from "../../src/drawing/svg.ts";
import { findBalloonsInside, findCollisions, findOffSheet } from "./clear-of.ts";
import { demoItems, drawingsOf, metricDrawingsOf } from "./demo.ts";
import { slantedItems } from "./slanted.ts";

const drawings = [
  ...demoItems.flatMap((item) => drawingsOf(item)),
  ...slantedItems.flatMap((item) => drawingsOf(item, () => item)),
];
const metric = [...demoItems, ...slantedItems].flatMap(metricDrawingsOf);

const only = <K extends Drawing["marks"][number]["kind"]>(drawing: Drawing, kind: K) =>
  drawing.marks.filter((mark): mark is Extract<Drawing["marks"][number], { kind: K }> => mark.kind === kind);

test("whatever has letters and is too wide for a phone is made for a phone too; the looks have none", () => {
  const ids = new Set(drawings.map(({ id }) => id));
  for (const drawing of drawings) {
    if (drawing.width <= 80 || only(drawing, "text").length + only(drawing, "balloon").length === 0) continue;
    const narrow = drawing.id.replace(/-(binder|store)$/, "-phone");
    expect([drawing.id, narrow !== drawing.id && ids.has(narrow)]).toEqual([drawing.id, true]);
  }
});

test("each drawing has an id of its own", () => {
  expect(new Set(drawings.map((drawing) => drawing.id)).size).toBe(drawings.length);
});

describe.each(
  [...drawings, ...metric].map(
    (drawing, i) => [`${drawing.id}${i < drawings.length ? "" : " in mm"}`, drawing] as const,
  ),
)("%s", (_, drawing) => {
  test("no label lies on another label or on a line", () => {
    expect(findCollisions(drawing)).toEqual([]);
  });

  test("everything lies on the sheet", () => {
    expect(findOffSheet(drawing)).toEqual([]);
  });

  test("balloons stand outside the wood", () => {
    expect(findBalloonsInside(drawing)).toEqual([]);
  });

  test("type is at least 2.5 mm high on paper (ISO 3098 series, from memory)", () => {
    expect(Math.min(9, ...only(drawing, "text").map((mark) => mark.size))).toBeGreaterThanOrEqual(2.5);
  });

  test("on a phone 320 px wide, 275 px of it drawing, the narrow sheets keep type of 11 px", () => {
    if (drawing.width > 80) return;
    const sizes = only(drawing, "text").map((mark) => (mark.size * 275) / drawing.width);
    expect(Math.min(99, ...sizes)).toBeGreaterThanOrEqual(11);
  });

  test("it says in words what it shows, with the title apart from the description", () => {
    expect(drawing.title.length).toBeGreaterThan(8);
    expect(drawing.description.length).toBeGreaterThan(40);
    expect(drawing.description).not.toContain("undefined");
  });

  test("what stands on it in figures and words stands in its description too", () => {
    const said = drawing.description.replaceAll(/\s+/g, " ");
    const plain = (text: string) => text.replaceAll(/^block |\.$/g, "");
    const shown = only(drawing, "text").map((mark) => plain(mark.text));
    // Notes of a flat drawing begin with what its description says in other words.
    const first = shown.findIndex((text) => /^\d+ of |^Good side up\. Sizes/.test(text));
    const figures = shown.filter((text) => /^[\d ⁄]+(in|mm|°)?$/.test(text));
    for (const text of figures) expect([text, said.includes(text)]).toEqual([text, true]);
    if (first >= 0) return;
    const marks = drawing.marks.flatMap((mark) => (mark.kind === "balloon" ? [mark.text] : []));
    for (const mark of marks) expect([mark, new RegExp(`\\b${mark}\\b`).test(said)]).toEqual([mark, true]);
  });

  test("as SVG it is under 60 kB and written twice it is the same", () => {
    const svg = formatSvg(drawing);
    expect(svg.length).toBeLessThan(60_000);
    expect(formatSvg(drawing)).toBe(svg);
    expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe("item references (ISO 6433)", () => {
  const withBalloons = drawings.filter((drawing) => only(drawing, "balloon").length > 0);

  test.each(withBalloons.map((drawing) => [drawing.id, drawing] as const))(
    "%s: no leader crosses another, and each ends in a dot on wood",
    (_, drawing) => {
      const dots = only(drawing, "dot");
      const balloons = only(drawing, "balloon");
      expect(dots.length).toBe(balloons.length);
      const leaders = dots.map((dot, i) => [dot.at, (balloons[i] as (typeof balloons)[number]).at] as const);
      leaders.forEach(([a, b], i) => {
        for (const [c, d] of leaders.slice(i + 1)) expect(cross(a, b, c, d)).toBe(false);
      });
      const regions = only(drawing, "region");
      for (const { at } of dots) expect(regions.some((region) => isInside(at, region.loops))).toBe(true);
    },
  );

  test.each([...demoItems, ...slantedItems])(
    "$title: every different piece stands in the exploded view exactly once",
    (item) => {
      for (const drawing of drawings.filter((one) => one.id.startsWith(`${item.slug}-exploded`))) {
        const marks = only(drawing, "balloon").map((mark) => mark.text);
        expect(marks.sort()).toEqual(item.pieces.map((piece) => piece.mark).sort());
      }
    },
  );
});

describe("dimensions", () => {
  /** Lines with an arrow at each end and the value between them, in the order they are drawn. */
  const dimensioned = (drawing: Drawing): readonly { readonly value: string; readonly length: number }[] => {
    const found: { value: string; length: number }[] = [];
    drawing.marks.forEach((_mark, i) => {
      const [first, second, text] = drawing.marks.slice(i, i + 3);
      if (first?.kind !== "arrowhead" || second?.kind !== "arrowhead" || text?.kind !== "text") return;
      const [a, b]: [Paper, Paper] = [first.tip, second.tip];
      found.push({ value: text.text, length: Math.hypot(b[0] - a[0], b[1] - a[1]) });
    });
    return found;
  };
  const inchesOf = (value: string): number =>
    value.split(" ").reduce((sum, part) => {
      const [over, under] = part.split("\u2044").map(Number) as [number, number | undefined];
      return sum + over / (under ?? 1);
    }, 0);

  test.each(
    drawings.filter((drawing) => /-panel-|-piece-/.test(drawing.id)).map((drawing) => [drawing.id, drawing] as const),
  )("%s: drawn length over the scale is the stated value to 1/32 in", (_, drawing) => {
    const all = dimensioned(drawing).filter(({ value }) => /^\d/.test(value));
    expect(all.length).toBeGreaterThan(0);
    for (const { value, length } of all)
      expect(Math.abs(length / (drawing.scale ?? 0) - inchesOf(value))).toBeLessThanOrEqual(1 / 32);
  });
});
