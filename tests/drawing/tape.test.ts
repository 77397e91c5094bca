// The tape drawn beside a figure: its ticks are those of a tape rule, and the arrow stands on the figure.
import { expect, test } from "vitest";
import type { Drawing, Paper } from "../../src/drawing/drawing.ts";
import { drawTape, tapeReadings } from "../../src/drawing/tape.ts";
import { exact, type Length } from "../../src/units/length.ts";
import { findCollisions, findOffSheet } from "./clear-of.ts";
import { millimetres, sixteenths } from "./demo.ts";

const tape = (length: Length, division: Parameters<typeof drawTape>[3] = sixteenths): Drawing =>
  drawTape("a-tape", "Step 1", [length], division);

const tip = (drawing: Drawing): Paper =>
  drawing.marks.flatMap((mark) => (mark.kind === "arrowhead" ? [mark.tip] : []))[0] ?? [0, 0];

/** Where the number of the blade stands. */
const numberAt = (drawing: Drawing, text: string): number =>
  drawing.marks.flatMap((mark) => (mark.kind === "text" && mark.text === text ? [mark.at[0]] : []))[0] ?? Number.NaN;

const texts = (drawing: Drawing): string[] =>
  drawing.marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));

test("17 9/16 is read 9/16 x 25.4 = 14.2875 mm past the 17, at full size", () => {
  const drawing = tape(exact(281, 16));
  expect(tip(drawing)[0] - numberAt(drawing, "17")).toBeCloseTo(14.2875, 6);
  expect(numberAt(drawing, "18") - numberAt(drawing, "17")).toBeCloseTo(25.4, 6);
  expect(drawing.description).toContain("Read at 17 9/16 in: 9 of 16 marks past 17.");
});

test("the diagonal of 30 x 26, 39.6989, is read at 39 11/16 full: 11/16 x 25.4 = 17.4625 mm past the 39", () => {
  const drawing = tape(Math.hypot(30, 26));
  expect(texts(drawing)).toContain("39 11\u204416 in full");
  expect(tip(drawing)[0] - numberAt(drawing, "39")).toBeCloseTo(17.4625, 6);
  expect(drawing.description).toContain("and a little more");
});

test("on a metric tape 446 mm stand 6 mm past the 440", () => {
  const drawing = tape(exact(4460, 254), millimetres);
  expect(tip(drawing)[0] - numberAt(drawing, "440")).toBeCloseTo(6, 6);
  expect(texts(drawing)).toContain("446 mm");
});

test("a figure near the hook shows the hook: 1 in lies 25.4 mm from it", () => {
  const drawing = tape(exact(1));
  const hook = drawing.marks.flatMap((mark) =>
    mark.kind === "lines" && mark.line === "visible" ? (mark.chains[0] ?? []) : [],
  )[0];
  expect(tip(drawing)[0] - (hook?.[0] ?? 0)).toBeCloseTo(25.4, 6);
});

test("no label lies on another or on a line, and all is on its paper, from 1 to 120 in", () => {
  for (const division of [sixteenths, millimetres]) {
    for (let n = 16; n < 120 * 16; n += 37) {
      const drawing = tape(exact(n, 16), division);
      expect(findCollisions(drawing), String(n)).toEqual([]);
      expect(findOffSheet(drawing), String(n)).toEqual([]);
    }
  }
});

test("what is under an inch has no tape, and the same figure has one strip", () => {
  expect(tapeReadings([exact(5, 8), exact(30), 30, exact(3)], 2)).toEqual([exact(30), exact(3)]);
});
