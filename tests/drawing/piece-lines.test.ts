// Flat drawings of pieces: broken lines for what the wood hides, the blank's own outline, diameter and radius signs, one unit.
import { describe, expect, test } from "vitest";
import type { Drawing } from "../../src/drawing/drawing.ts";
import { drawPanel } from "../../src/drawing/panel-drawing.ts";
import { differentPanels } from "../../src/drawing/panel-space.ts";
import { paperLength } from "../../src/drawing/paper-text.ts";
import { drawPiece } from "../../src/drawing/piece-drawing.ts";
import { binderSheet, phoneSheet } from "../../src/drawing/sheet.ts";
import { demoItem, demoItems, sixteenths } from "./demo.ts";
import { cutRack, slantedItems } from "./slanted.ts";

const items = [...demoItems, ...slantedItems];
const pieces = items.flatMap((item) =>
  item.pieces.map((piece) => [`${item.slug} ${piece.mark}`, item, piece] as const),
);
const chains = (drawing: Drawing, line: string) =>
  drawing.marks.flatMap((mark) => (mark.kind === "lines" && mark.line === line ? mark.chains : []));
const texts = (drawing: Drawing) => drawing.marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
const drawn = (item: (typeof items)[number], mark: string) => {
  const piece = item.pieces.find((one) => one.mark === mark);
  if (piece === undefined) throw new Error(`no piece ${mark}`);
  return drawPiece(item, piece, sixteenths);
};

describe("hidden edges (ISO 128: dashed narrow)", () => {
  test("a lap on the far face is two dashed lines across the board; on the good face two continuous ones", () => {
    const [left, right] = [drawn(cutRack, "B left"), drawn(cutRack, "B right")];
    const across = (drawing: Drawing, line: string) =>
      chains(drawing, line).filter((chain) => {
        const [us, vs] = [chain.map((p) => p[0]), chain.map((p) => p[1])];
        const [wide, high] = [Math.max(...us) - Math.min(...us), Math.max(...vs) - Math.min(...vs)];
        return wide < 0.01 && high > 10;
      });
    expect(across(left, "hidden")).toHaveLength(2);
    expect(across(right, "hidden")).toHaveLength(0);
  });

  test("a pocket in an edge shows on the face and on the edge view", () => {
    expect(chains(drawn(demoItem("hanging-basket-arms"), "A"), "hidden").length).toBeGreaterThanOrEqual(6);
  });

  test("a board that is square all round has none", () => {
    expect(chains(drawn(demoItem("hose-and-pot-corral"), "A"), "hidden")).toEqual([]);
  });
});

test("a slope and a curve are drawn with what is left of the blank's outline: two lines at a corner sawn off", () => {
  expect(chains(drawn(demoItem("raked-cold-frame"), "D"), "path")).toHaveLength(2);
  expect(chains(drawn(demoItem("hanging-basket-arms"), "A"), "path").length).toBeGreaterThan(1);
});

describe.each(pieces)("25: %s", (_, item, piece) => {
  const say = (length: number) => paperLength(length, sixteenths);
  for (const sheet of [binderSheet, phoneSheet]) {
    const said = texts(drawPiece(item, piece, sixteenths, sheet)).join(" ");

    test(`holes have their number and Ø, corners their R (${sheet.name})`, () => {
      const holes = piece.cuts.filter((cut) => cut.kind === "hole");
      for (const { across } of holes) expect(said).toContain(`Ø ${say(across)}`);
      if (holes.length === 0) expect(said).not.toContain("Ø");
      for (const cut of piece.cuts) {
        if (cut.kind === "pocket" || cut.kind === "corners" || cut.kind === "eased")
          expect(said).toContain(`R ${say(cut.radius)}`);
      }
    });

    test(`angles are in degrees, and the unit stands once (${sheet.name})`, () => {
      const angles = piece.ends.flatMap(({ mitre, bevel }) => [mitre, bevel]).filter((angle) => Math.abs(angle) > 0.05);
      if (angles.length > 0) expect(said).toMatch(/\d°/);
      expect(said.match(/inches/g)).toHaveLength(1);
    });
  }
});

test.each(
  items.flatMap((item) => differentPanels(item).map((panel) => [`${item.slug} ${panel.kind}`, item, panel] as const)),
)("25: panel %s: the unit stands once", (_, item, panel) => {
  for (const sheet of [binderSheet, phoneSheet]) {
    expect(
      texts(drawPanel(item, panel, sixteenths, sheet))
        .join(" ")
        .match(/inches/g),
    ).toHaveLength(1);
  }
});
