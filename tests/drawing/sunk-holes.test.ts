// Holes with room for a screw's head: their rims on the good face are continuous, on the far face dashed, and the words say which.
import { expect, test } from "vitest";
import { drawPiece } from "../../src/drawing/piece-drawing.ts";
import { itemFrom, sixteenths } from "./demo.ts";

const cleat = (facing: string, into: string) =>
  itemFrom(
    "cleat",
    `---
title: Cleat
class: G
overall: 14 x 3/4 x 3 1/2
pieces:
  cleat: 1x4
stand:
  cleat: 1 cleat, on edge, from left to right, at front, bottom at bottom, facing ${facing}
cuts:
  cleat: hole 1/4, 2 from left, centred, in ${into}, countersink 1/2; hole 1/4, 9 from left, centred, in ${into}, counterbore 1/2 x 1/4; hole 3/8, 5 from left, centred, in ${into}, 1/2 deep
finish:
  plain: none
---

A cleat.

## Cut

1. Cut the **cleat**.
`,
  );

test.each([
  ["front", "front", "good", 0],
  ["front", "back", "far", 3],
  ["back", "back", "good", 0],
  ["back", "front", "far", 3],
])("a cleat facing %s, bored from the %s: at the %s face, %d rims dashed", (facing, into, face, dashed) => {
  const item = cleat(facing, into);
  const [piece] = item.pieces;
  if (piece === undefined) throw new Error("no piece");
  const drawing = drawPiece(item, piece, sixteenths);
  const said = drawing.marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
  expect(said).toContain(`Holes: 1 of Ø 1⁄4, through, countersunk to Ø 1⁄2 at the ${face} face`);
  expect(said).toContain(`Holes: 1 of Ø 1⁄4, through, counterbored to Ø 1⁄2, 1⁄4 deep at the ${face} face`);
  expect(said).toContain(`Holes: 1 of Ø 3⁄8, 1⁄2 deep at the ${face} face`);
  const rims = drawing.marks.flatMap((mark) => (mark.kind === "lines" && mark.line === "hidden" ? mark.chains : []));
  expect(rims).toHaveLength(dashed);
});
