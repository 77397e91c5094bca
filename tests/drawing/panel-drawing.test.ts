// What a panel's drawing says, worked by hand from the item's published sizes.
import { expect, test } from "vitest";
import type { Drawing } from "../../src/drawing/drawing.ts";
import { drawPanel } from "../../src/drawing/panel-drawing.ts";
import { differentPanels } from "../../src/drawing/panel-space.ts";
import { binderSheet } from "../../src/drawing/sheet.ts";
import type { Item } from "../../src/item/item.ts";
import { corral, itemFrom, millimetres, rack, sixteenths } from "./demo.ts";

const panelOf = (item: Item, kind: string) => {
  const panel = differentPanels(item).find((one) => one.kind === kind);
  if (panel === undefined) throw new Error(`no panel ${kind}`);
  return panel;
};

/** Numbers along the left tape from the bottom up, and along the lower tape from the left. */
function tapes(drawing: Drawing): { readonly up: readonly string[]; readonly across: readonly string[] } {
  const texts = drawing.marks.filter((mark) => mark.kind === "text" && mark.anchor === "end");
  const values = (turned: boolean) =>
    texts.filter((mark) => mark.kind === "text" && (mark.turn === 90) === turned) as Extract<
      (typeof texts)[number],
      { kind: "text" }
    >[];
  return {
    up: values(false)
      .sort((a, b) => b.at[1] - a.at[1])
      .map((mark) => mark.text.replaceAll("\u2044", "/")),
    across: values(true)
      .sort((a, b) => a.at[0] - b.at[0])
      .map((mark) => mark.text.replaceAll("\u2044", "/")),
  };
}

const wordsOn = (drawing: Drawing): string =>
  drawing.marks.flatMap((mark) => (mark.kind === "text" ? [mark.text.replaceAll("\u2044", "/")] : [])).join(" | ");

test("corral face: six rails of 1 11/16 from 3 to 26, gap (23 - 10 1/8) / 5 = 2.575, each place rounded by itself from the bottom", () => {
  const { up, across } = tapes(drawPanel(corral, panelOf(corral, "face"), sixteenths));
  // 3; 4.6875; 7.2625; 8.95; 11.525; 13.2125; 15.7875; 17.475; 20.05; 21.7375; 24.3125; the last top is the panel's own height.
  expect(up).toEqual([
    "3",
    "4 11/16",
    "7 1/4",
    "8 15/16",
    "11 1/2",
    "13 3/16",
    "15 13/16",
    "17 1/2",
    "20 1/16",
    "21 3/4",
    "24 5/16",
  ]);
  expect(across).toEqual(["1 11/16", "28 5/16"]);
});

test("corral face: the diagonal is the root of 30 x 30 + 26 x 26 = 39.699, printed 39 11/16; the block 2.575 is printed 2 9/16 and said to be rounded", () => {
  const words = wordsOn(drawPanel(corral, panelOf(corral, "face"), sixteenths));
  expect(words).toContain("Corner to corner, both ways: 39 11/16");
  expect(words).toContain("block 2 9/16 full");
  expect(words).toContain("2 9/16 full (rounded");
});

test("corral face in whole millimetres: 3 in is 76, 30 in is 762, 2.575 in is 65", () => {
  const drawing = drawPanel(corral, panelOf(corral, "face"), millimetres);
  expect(tapes(drawing).up[0]).toBe("76");
  expect(wordsOn(drawing)).toContain("762");
  expect(wordsOn(drawing)).toContain("block 65");
});

test("rack face: strips 2 1/2 wide under decks at 60, 42, 24, 6: tops 5/8 lower, at 59 3/8, 41 3/8, 23 3/8, 5 3/8", () => {
  const { up, across } = tapes(drawPanel(rack, panelOf(rack, "face"), sixteenths));
  expect(up).toEqual(["2 7/8", "5 3/8", "20 7/8", "23 3/8", "38 7/8", "41 3/8", "56 7/8", "59 3/8"]);
  // Legs 2 1/2 wide; the strips end on their middles, 1 1/4 in.
  expect(across).toEqual(["1 1/4", "2 1/2", "25 1/2", "26 3/4"]);
});

test("corral face: 12 meetings of rail and leg with 2 pocket screws each are 24 signs, told in the legend", () => {
  const words = wordsOn(drawPanel(corral, panelOf(corral, "face"), sixteenths));
  expect(words).toContain("24 × pocket screw No. 6 x 1, from the back");
  expect(words).toContain("6 × screw No. 6 x 1 5/8, from the good side, when it is stood up");
});

test.each([corral, rack])("$title: every ticked place lies on paper where its exact size says", (item) => {
  for (const panel of differentPanels(item)) {
    const drawing = drawPanel(item, panel, sixteenths);
    const scale = drawing.scale ?? 0;
    const region = drawing.marks.filter((mark) => mark.kind === "region" && mark.tone.kind === "wood");
    const points = region.flatMap((mark) => (mark.kind === "region" ? mark.loops.flat() : []));
    const [us, vs] = [points.map((p) => p[0]), points.map((p) => p[1])];
    expect((Math.max(...us) - Math.min(...us)) / scale).toBeCloseTo(panel.width.valueOf(), 4);
    expect((Math.max(...vs) - Math.min(...vs)) / scale).toBeCloseTo(panel.height.valueOf(), 4);
    expect(drawing.width).toBe(binderSheet.width);
  }
});

test("a panel like a T has no boards at its lower corners, so no diagonal is given; with two posts it has 20 x 30: 36 1/16", () => {
  const frame = (posts: string): Item =>
    itemFrom(
      "sign",
      `---
title: Sign
overall: 20 x fit x 30
pieces:
  strip: fence board, ripped to 2 1/2
panels:
  face:
    size: width x height
    posts: ${posts}
    rail: 1 strip, level, from left to right, on back of posts, top at top
stand:
  board: face, at front
joins:
  rail to posts: 2 screw No. 6 x 1, back
finish:
  plain: none
---

A sign.

## Make it

makes face

1. Lay the **posts** down and screw the **rail** across.

## Stand it

1. Stand up the **board**.
`,
    );
  const said = (item: Item) => wordsOn(drawPanel(item, panelOf(item, "face"), sixteenths));
  expect(said(frame("1 strip, upright, from bottom to top, centred"))).not.toContain("Corner to corner");
  expect(said(frame("2 strip, upright, from bottom to top, spread left to right"))).toContain(
    "Corner to corner, both ways: 36 1/16",
  );
});
