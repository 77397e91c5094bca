// What drawings of slanted work say, worked by hand from the recipes' own sizes.
import { describe, expect, test } from "vitest";
import type { Drawing } from "../../src/drawing/drawing.ts";
import { moveApart } from "../../src/drawing/exploded-view.ts";
import { drawPanel } from "../../src/drawing/panel-drawing.ts";
import { drawPiece } from "../../src/drawing/piece-drawing.ts";
import { findScene } from "../../src/drawing/step-picture.ts";
import { comesPast } from "../../src/drawing/way-in.ts";
import { hullOf, isClear } from "../../src/geometry/clear-way.ts";
import type { Item, Panel, Piece } from "../../src/item/item.ts";
import { sixteenths } from "./demo.ts";
import { coldFrame, cutRack, hopper, slantedItems, trestle } from "./slanted.ts";

const texts = (drawing: Drawing): readonly string[] =>
  drawing.marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
const said = (drawing: Drawing): string => texts(drawing).join(" ");
const piece = (item: Item, mark: string): Drawing =>
  drawPiece(item, item.pieces.find((one) => one.mark === mark) as Piece, sixteenths);
const fraction = (text: string): string => text.replaceAll(/(\d)\/(\d)/g, "$1\u2044$2");

describe("a trestle 30 high with legs 12 degrees out of plumb", () => {
  const drawing = drawPanel(trestle, trestle.panels[0] as Panel, sixteenths);

  test("is 2 (30 tan 12 + 3 1/2 / cos 12) = 19.91 from foot to foot, and each foot 3.58 wide", () => {
    expect(texts(drawing)).toContain(fraction("19 15/16"));
    expect(texts(drawing)).toContain(fraction("3 9/16"));
  });

  test("shows 12 degrees once, at a foot, and says whose they are", () => {
    expect(texts(drawing).filter((text) => text === "12°")).toHaveLength(1);
    expect(said(drawing)).toContain("Out of plumb: legs 12°.");
  });

  test("has the brace's edges at 8 and 11 1/2, the bearer's at 26 1/2", () => {
    for (const size of ["8", "11 1/2", "26 1/2"]) expect(texts(drawing)).toContain(fraction(size));
  });

  test("has its legs cut parallel: 30 / cos 12 = 30.67 along the edge, stop there, blank 3 1/2 tan 12 longer", () => {
    const leg = said(piece(trestle, "A"));
    expect(leg).toContain("slide the board along to the stop");
    expect(leg).toContain(fraction("Stop 30 11/16"));
    expect(leg).toContain(fraction("It takes 31 7/16 of its board"));
    expect(leg).toContain("mitre scale 12°, blade square");
  });

  test("has its brace turned over for the second end: long edge 2 x 22 tan 12 = 9.35, short edge 2 x 18 1/2 tan 12 = 7.86", () => {
    const brace = piece(trestle, "C");
    expect(said(brace)).toContain("turn the board over");
    expect(texts(brace)).toEqual(expect.arrayContaining([fraction("9 3/8"), fraction("7 7/8")]));
  });
});

describe("a hopper with walls 20 degrees out of plumb", () => {
  // tan M = cos 70 tan 45, sin B = sin 70 sin 45: 18.88 and 41.64.
  test("has both ends at 18.9 on the scale and 41.6 of tilt, the edges ripped at 20", () => {
    const wall = piece(hopper, "A");
    expect(said(wall)).toContain("mitre scale 18.9°, blade tilted 41.6°");
    expect(said(wall)).toContain("ripped with the blade tilted 20°");
    expect(texts(wall).filter((text) => text === "41.6°")).toHaveLength(2);
  });
});

describe("a lid on a slope", () => {
  const lid = coldFrame.panels.find((panel) => panel.name === "lid") as Panel;
  test("is drawn square on, in its own frame: its boards start at 0 and are 5 1/2 wide", () => {
    expect(lid.tipped).toBeDefined();
    expect(texts(drawPanel(coldFrame, lid, sixteenths))).toEqual(expect.arrayContaining(["36", fraction("5 1/2")]));
  });
});

test("a shelf's holes are told by diameter and count and measured from two edges", () => {
  const shelf = piece(cutRack, "A");
  expect(said(shelf)).toContain(fraction("3 of Ø 1 1/4, through"));
  expect(texts(shelf)).toEqual(
    expect.arrayContaining(["4", fraction("11 1/2"), "19", fraction("2 3/4"), fraction("4 1/2")]),
  );
});

test("left and right cheeks are told apart as a pair", () => {
  expect(said(piece(cutRack, "B left"))).toContain("This is the left one of a pair");
  expect(said(piece(cutRack, "B right"))).toContain("This is the right one of a pair");
});

describe.each(slantedItems.map((item) => [item.title, item] as const))("%s", (_, item) => {
  test("moved apart, no two boards run into each other", () => {
    const { bodies } = moveApart(item).picture;
    bodies.forEach((a, i) => {
      for (const b of bodies.slice(i + 1)) {
        if (a.by.every((step, k) => step === b.by[k])) continue;
        const by = a.by.map((step, k) => step - (b.by[k] as number)) as unknown as typeof a.by;
        expect([a.member.id, b.member.id, isClear(hullOf(a.member.solid), by, by, hullOf(b.member.solid))]).toEqual([
          a.member.id,
          b.member.id,
          true,
        ]);
      }
    });
  });

  test("whatever goes into its place has a clear way there", () => {
    for (const section of item.sections) {
      for (const step of section.steps) {
        const there = item.members.filter((member) => step.there.includes(member.id));
        for (const { members, by, goesIn } of findScene(item, section, step).entries) {
          if (!goesIn) continue;
          for (const member of members) {
            const from = by.get(member.id) ?? [0, 0, 0];
            for (const other of there)
              expect([member.id, other.id, comesPast(member.solid, from, other.solid)]).toEqual([
                member.id,
                other.id,
                true,
              ]);
          }
        }
      }
    }
  });
});

describe("a clear way", () => {
  const [wall, , left] = hopper.members;
  if (wall === undefined || left === undefined) throw new Error("the hopper has no walls");
  test("past a mitre is the way off it; into it, the walls meet", () => {
    expect(isClear(hullOf(wall.solid), [0, -5, 0], [0, 0, 0], hullOf(left.solid))).toBe(true);
    expect(isClear(hullOf(wall.solid), [0, 1, 0], [0, 0, 0], hullOf(left.solid))).toBe(false);
    expect(isClear(hullOf(wall.solid), [0, 0, 0], [0, 0, 0], hullOf(left.solid))).toBe(true);
  });
});
