// Where the grain of a shaped piece runs out across a narrow part. Hankinson's formula and the range of its figures for bending:
// Wood Handbook (FPL-GTR-282), chapter 5, from memory; when a place is told is common practice, no source.
import { describe, expect, test } from "vitest";
import { shortGrainSections } from "../../src/geometry/grain-sections.ts";
import type { Vec2 } from "../../src/geometry/shape.ts";
import { shareKept } from "../../src/item/outlines/short-grain.ts";
import { workOut } from "../../src/item/work-out.ts";
import { demoYard } from "../cases/demo-yard.ts";
import { recipeOf } from "../recipe/parse.ts";
import { demoItem } from "./bench-yard.ts";

const rectangle = (x: number, y: number, w: number, h: number): Vec2[] => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
];

function shortGrain(working: string) {
  const recipe = recipeOf(`---
title: Frame
overall: fit x fit x fit
pieces:
  arm: ${working}
outlines:
  arm:
    edge: rectangle 9 x 9 at 0, 0
    window: rectangle 5 x 5 at 3, 2
stand:
  arm: arm, upright, facing left, at left, at front, at bottom
---
A frame.

## Saw it

1. Saw the **arm**.
`);
  const { item, problems } = workOut(recipe, demoYard());
  expect(problems.map((p) => p.says)).toEqual([]);
  return item?.pieces[0]?.shortGrain ?? [];
}

describe("a frame 9 x 9 with a window 5 x 5, 3 from one side, 9 - 3 - 5 = 1 from the other, 2 below and 2 above it", () => {
  test("grain across the drawing: the upright side 1 wide is warned of (under 2 x 3/4), the one 3 wide is not (4 x 3/4)", () => {
    expect(shortGrain("1x10, outline arm")).toMatchObject([{ width: 1, degrees: 90, level: "warn" }]);
  });

  test("grain up the drawing: the level parts, 2 wide, are noted", () => {
    expect(shortGrain("1x10, outline arm, grain up").map(({ width, level }) => [width, level])).toEqual([
      [2, "note"],
      [2, "note"],
    ]);
  });

  test("glued up thicker, 2 x 3/4, the limits are twice as wide: 2 is warned of, and the part 3 wide is noted across", () => {
    expect(shortGrain("1x10, outline arm, grain up, 2 plies").map(({ level }) => level)).toEqual(["warn", "warn"]);
    expect(shortGrain("1x10, outline arm, 2 plies").map(({ width, level }) => [width, level])).toEqual([
      [1, "warn"],
      [3, "note"],
    ]);
  });

  test("with the plies crossed some grain runs through every part", () => {
    expect(shortGrain("1x10, outline arm, 2 plies, grain crossed")).toEqual([]);
  });
});

describe("lines along the grain", () => {
  test("a strand at 45 degrees, 2 wide along the grain and so 2 x sin 45 = 1.414 across", () => {
    const [only, ...more] = shortGrainSections(
      [
        [
          [0, 0],
          [2, 0],
          [10, 8],
          [8, 8],
        ],
      ],
      4,
    );
    expect(more).toEqual([]);
    expect(only?.width).toBeCloseTo(2, 9);
    expect(only?.degrees).toBeCloseTo(45, 6);
    expect(only?.from[1]).toBeCloseTo(4, 1);
  });

  test("a knob lower than it is wide is no strand: 2 wide, 1 high on a board", () => {
    const knob: Vec2[] = [
      [0, 0],
      [10, 0],
      [10, 5],
      [6, 5],
      [6, 6],
      [4, 6],
      [4, 5],
      [0, 5],
    ];
    expect(shortGrainSections([knob], 6)).toEqual([]);
  });

  test("a post 2 wide, 6 high on a board is told once, halfway up the whole 2 + 6", () => {
    const post: Vec2[] = [
      [0, 0],
      [10, 0],
      [10, 2],
      [6, 2],
      [6, 8],
      [4, 8],
      [4, 2],
      [0, 2],
    ];
    expect(shortGrainSections([post], 6)).toMatchObject([{ width: 2, degrees: 90 }]);
    expect(shortGrainSections([post], 6)[0]?.from[1]).toBeCloseTo(4, 1);
  });

  test("two strands beside a window are two", () => {
    const found = shortGrainSections([rectangle(0, 0, 9, 9), rectangle(3, 2, 5, 5)], 4);
    expect(found.map(({ width }) => width)).toEqual([3, 1]);
  });
});

describe("what is left of the strength by Hankinson's formula, 0.07 across the grain", () => {
  test("all along it; 0.07 across it; 0.07 / (0.5 + 0.07 x 0.5) = 0.131 at 45 degrees", () => {
    expect(shareKept(0)).toBeCloseTo(1, 12);
    expect(shareKept(90)).toBeCloseTo(0.07, 12);
    expect(shareKept(45)).toBeCloseTo(0.07 / 0.535, 12);
  });
});

describe("the hanging-basket arms", () => {
  test("of two crossed plies have none; the same arm of one 2x10 is weak where its scroll runs level", () => {
    expect(demoItem("hanging-basket-arms").item?.pieces[0]?.shortGrain).toEqual([]);
    const { item, problems } = demoItem("hanging-basket-arms", "one-board");
    expect(problems).toEqual([]);
    const [piece] = item?.pieces ?? [];
    expect(piece?.board.name).toBe("2x10");
    expect(piece?.shortGrain?.length).toBeGreaterThan(0);
    for (const { width, degrees, level } of piece?.shortGrain ?? []) {
      // At least 1 1/4 of wood is asked for, and less than 2 x 1 1/2 along the grain is warned of.
      expect(width).toBeGreaterThan(1.25);
      expect(width).toBeLessThan(3);
      expect(degrees).toBeGreaterThan(60);
      expect(level).toBe("warn");
    }
  });
});
