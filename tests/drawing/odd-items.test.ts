// Items a maker may well write that the demo has none of: they too must be drawn, and drawn clear.
import { describe, expect, test } from "vitest";
import { drawCoatedView } from "../../src/drawing/coated-view.ts";
import type { Drawing } from "../../src/drawing/drawing.ts";
import { drawExploded } from "../../src/drawing/exploded-view.ts";
import { drawMeasuredView } from "../../src/drawing/measured-view.ts";
import { drawPanel } from "../../src/drawing/panel-drawing.ts";
import { drawPiece } from "../../src/drawing/piece-drawing.ts";
import { binderSheet, phoneSheet, storeSheet } from "../../src/drawing/sheet.ts";
import { drawStep } from "../../src/drawing/step-picture.ts";
import type { Item } from "../../src/item/item.ts";
import { exact } from "../../src/units/length.ts";
import { findBalloonsInside, findCollisions, findOffSheet } from "./clear-of.ts";
import { sixteenths } from "./demo.ts";
import { itemOf, type Stick } from "./fixtures/boards-in-place.ts";

type Corner = readonly [number, number, number];

const stick = (id: string, min: Corner, max: Corner, panel?: string): Stick => {
  const at = (corner: Corner) => corner.map((n) => exact(String(n))) as unknown as Stick["min"];
  return { id, min: at(min), max: at(max), ...(panel === undefined ? {} : { panel, panelKind: panel }) };
};

const one = itemOf(
  "One block",
  [stick("block/1", [0, 0, 0], [2, 1, 1])],
  [],
  [],
  [{ heading: "Cut it", steps: [["block"]] }],
);

const long = itemOf(
  "A long strip",
  [stick("strip/1", [0, 0, 0], [120, 1, 0.5]), stick("foot/1", [0, 0, 0.5], [3, 1, 1.5])],
  [],
  [],
  [{ heading: "Join it", steps: [["strip"], ["foot"]] }],
);

/** Twelve boards, each an inch shorter than the one under it. */
const stack = itemOf(
  "A stack",
  Array.from({ length: 12 }, (_, i) => stick(`tier-${i + 1}/1`, [0, 0, i], [24 - i, 12, i + 1])),
  [],
  [],
  [{ heading: "Stack it", steps: Array.from({ length: 12 }, (_, i) => [`tier-${i + 1}/`]) }],
);

/** A panel of 17 slats 3/4 wide with gaps of 1/4 between two rails: numbers along the edge stand close. */
const grille = itemOf(
  "A grille",
  [
    stick("grille/rails/1", [0, 0, 0], [20, 0.75, 1], "grille"),
    stick("grille/rails/2", [0, 0, 19], [20, 0.75, 20], "grille"),
    ...Array.from({ length: 17 }, (_, i) =>
      stick(`grille/slats/${i + 1}`, [1 + i, 0, 1], [1.75 + i, 0.75, 19], "grille"),
    ),
  ],
  [
    {
      name: "grille",
      kind: "grille",
      mirrored: false,
      across: { axis: "x", sign: 1 },
      up: { axis: "z", sign: 1 },
      through: { axis: "y", sign: 1 },
    },
  ],
  [],
  [{ heading: "Make it", makes: "grille", steps: [["rails"], ["slats"]] }],
);

/** A block wholly closed in by six others. */
const closed = itemOf(
  "A closed box",
  [
    stick("core/1", [1, 1, 1], [4, 3, 2]),
    stick("low/1", [0, 0, 0], [5, 4, 1]),
    stick("lid/1", [0, 0, 2], [5, 4, 3]),
    stick("front/1", [0, 0, 1], [5, 1, 2]),
    stick("rear/1", [0, 3, 1], [5, 4, 2]),
    stick("cheek/1", [0, 1, 1], [1, 3, 2]),
    stick("cheek/2", [4, 1, 1], [5, 3, 2]),
  ],
  [],
  [],
  [{ heading: "Close it", steps: [["low"], ["front", "rear", "cheek"], ["core"], ["lid"]] }],
);

const all = (item: Item): readonly Drawing[] => [
  ...[binderSheet, phoneSheet].flatMap((sheet) => [
    drawExploded(item, sheet),
    ...item.panels.map((panel) => drawPanel(item, panel, sixteenths, sheet)),
    ...item.pieces.map((piece) => drawPiece(item, piece, sixteenths, sheet)),
  ]),
  ...item.sections.flatMap((section) => section.steps.map((step) => drawStep(item, step))),
  ...[storeSheet, phoneSheet].flatMap((sheet) => [
    drawMeasuredView(item, sixteenths, sheet),
    drawCoatedView(item, sheet),
  ]),
];

describe.each([one, long, stack, grille, closed].map((item) => [item.title, item] as const))("%s", (_, item) => {
  test.each(all(item).map((drawing) => [drawing.id, drawing] as const))(
    "%s is clear and lies on its sheet",
    (_id, drawing) => {
      expect(findCollisions(drawing)).toEqual([]);
      expect(findOffSheet(drawing)).toEqual([]);
      expect(findBalloonsInside(drawing)).toEqual([]);
    },
  );

  test("every piece is named once in the exploded view, by a balloon or as hidden", () => {
    for (const drawing of [drawExploded(item), drawExploded(item, phoneSheet)]) {
      const words = drawing.marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])).join(" ");
      for (const { mark } of item.pieces) {
        const balloons = drawing.marks.filter((one) => one.kind === "balloon" && one.text === mark).length;
        expect([mark, balloons + (words.match(new RegExp(`\\b${mark}\\b`))?.length ?? 0)]).toEqual([mark, 1]);
      }
    }
  });
});

test("the stack's twelve boards come in from above, each shown apart from those that lie there", () => {
  const step = stack.sections[0]?.steps[5];
  if (step === undefined) throw new Error("no sixth step");
  const drawing = drawStep(stack, step);
  expect(drawing.marks.filter((mark) => mark.kind === "arrowhead").length).toBeGreaterThan(0);
  expect(drawing.description).toContain("Already there: 1 of A");
});
