// Boards as they are cut, on paper and on a phone: rules that hold for every one of the demo's and of slanted work.
import { describe, expect, test } from "vitest";
import { drawBoard } from "../../src/drawing/board-layout.ts";
import type { Drawing } from "../../src/drawing/drawing.ts";
import { binderSheet, phoneSheet } from "../../src/drawing/sheet.ts";
import { formatSvg } from "../../src/drawing/svg.ts";
import { type PlannedBoard, planBoards } from "../../src/findings/board-plan.ts";
import { sawCutsOf } from "../../src/findings/saw-cuts.ts";
import { binderEdition } from "../../src/leaves/edition.ts";
import { exact, inches } from "../../src/units/length.ts";
import { findCollisions, findOffSheet } from "./clear-of.ts";
import { demoItems, sixteenths } from "./demo.ts";
import { slantedItems } from "./slanted.ts";

const kerf = exact(1, 8);
const { bare } = binderEdition(sixteenths);

type Drawn = { readonly planned: PlannedBoard; readonly drawing: Drawing };

const drawn = [...demoItems, ...slantedItems].flatMap((item) =>
  planBoards(item.pieces, kerf).flatMap((planned): Drawn[] =>
    [binderSheet, phoneSheet].map((sheet) => ({
      planned,
      drawing: drawBoard(item.slug, planned, sawCutsOf(planned, kerf), bare, sheet),
    })),
  ),
);

const textsOf = ({ marks }: Drawing) => marks.flatMap((mark) => (mark.kind === "text" ? [mark] : []));

describe.each(drawn.map(({ planned, drawing }) => [drawing.id, planned, drawing] as const))(
  "%s",
  (_, planned, drawing) => {
    test("no letter or number runs into another or into a line, and all lies on the sheet", () => {
      expect(findCollisions(drawing)).toEqual([]);
      expect(findOffSheet(drawing)).toEqual([]);
    });

    test("type is at least 3.2 mm on paper, and 11 px on a phone 320 px wide, 275 px of it drawing", () => {
      const least = Math.min(9, ...textsOf(drawing).map(({ size }) => size));
      expect(drawing.width > 80 ? least : (least * 275) / drawing.width).toBeGreaterThanOrEqual(
        drawing.width > 80 ? 3.2 : 11,
      );
    });

    test("every piece that is at least 8 long bears its mark; three of four cuts bear their number", () => {
      const words = textsOf(drawing).map(({ text }) => text.split("  ")[0]);
      for (const { mark, length } of planned.strips.flatMap(({ pieces }) => pieces)) {
        if (inches(length) >= 8) expect(words).toContain(mark);
      }
      const cuts = sawCutsOf(planned, kerf);
      const numbered = cuts.filter(({ number }) => words.includes(String(number)));
      expect(numbered.length).toBeGreaterThanOrEqual(Math.floor(0.75 * cuts.length));
    });

    test("it is told in words, and small as SVG", () => {
      expect(drawing.description).toMatch(/^(\d.* trimmed off the left end\. )?(Strip|Length) 1, /);
      expect(formatSvg(drawing).length).toBeLessThan(20_000);
    });
  },
);
