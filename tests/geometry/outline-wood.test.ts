// Tips, thin places and convex cuts of flat figures. Sums: plane geometry. Along a corner of angle A the wood is w wide w / (2 tan A/2) from its tip.
import { describe, expect, test } from "vitest";
import { keptBelow, runOut, withinRectangle } from "../../src/geometry/convex.ts";
import { findCrossings, thinWood } from "../../src/geometry/outline-faults.ts";
import { thinTips } from "../../src/geometry/outline-tips.ts";
import { signedArea } from "../../src/geometry/profile.ts";
import type { Vec2 } from "../../src/geometry/shape.ts";

const wedge = (half: number, long: number): Vec2[] => [
  [0, -half],
  [long, 0],
  [0, half],
];
const degrees = (half: number, long: number) => (2 * Math.atan(half / long) * 180) / Math.PI;

describe("tips", () => {
  test("a wedge 2 wide, 8 long is narrower than 1/2 over its last 1/2 x 8 / 2 = 2", () => {
    const [tip, ...more] = thinTips([wedge(1, 8)], 0.5, 60);
    expect(more).toEqual([]);
    expect(tip?.at).toEqual([8, 0]);
    expect(tip?.long).toBeCloseTo(2, 3);
  });

  test("a corner is told where it is sharper than asked for, and not where it is blunter", () => {
    expect(degrees(2, 4)).toBeCloseTo(53.13, 2);
    expect(thinTips([wedge(2, 4)], 0.5, 54).map(({ at }) => at)).toEqual([[4, 0]]);
    expect(thinTips([wedge(2, 4)], 0.5, 52)).toEqual([]);
  });

  test("two corners of a triangle of 45 degrees are two tips; its square corner is none", () => {
    const tips = thinTips(
      [
        [
          [0, 0],
          [9, 0],
          [0, 9],
        ],
      ],
      1,
      60,
    );
    expect(tips.map(({ at }) => at.join()).sort()).toEqual(["0,9", "9,0"]);
  });

  test("the square corners of a frame with a square window are no tips", () => {
    expect(
      thinTips(
        [
          [
            [0, 0],
            [9, 0],
            [9, 9],
            [0, 9],
          ],
          [
            [2, 2],
            [4, 2],
            [4, 4],
            [2, 4],
          ],
        ],
        1,
        60,
      ),
    ).toEqual([]);
  });
});

describe("all thin places at once", () => {
  const square: Vec2[] = [
    [0, 0],
    [9, 0],
    [9, 9],
    [0, 9],
  ];
  const hole = (x: number, y: number, w: number): Vec2[] => [
    [x, y],
    [x + w, y],
    [x + w, y + w],
    [x, y + w],
  ];

  test("a window 1/2 from the left and another 1/4 from the right are two, the thinner first", () => {
    const webs = thinWood([square, hole(0.5, 3, 3), hole(5.75, 3, 3)], 1);
    expect(webs.map(({ width }) => width)).toEqual([0.25, 0.5]);
  });

  test("two windows over the edge are told once each, though each crosses it twice", () => {
    const found = findCrossings([square, hole(8, 3, 3), hole(8.5, 7, 1)]);
    expect(found.map(({ loops }) => loops.join()).sort()).toEqual(["0,1", "0,2"]);
  });
});

describe("convex figures", () => {
  const slab: Vec2[] = [
    [-2, -1],
    [6, -1],
    [6, 1],
    [-2, 1],
  ];

  test("what a rectangle 4 x 3 keeps of a slab 8 x 2 over its corner is 4 x 1", () => {
    expect(signedArea(withinRectangle(slab, [4, 3]))).toBeCloseTo(4, 12);
  });

  test("below x + y = 1 the square 1 x 1 keeps half of itself", () => {
    expect(
      signedArea(
        keptBelow(
          [
            [0, 0],
            [1, 0],
            [1, 1],
            [0, 1],
          ],
          [1, 1],
          1,
        ),
      ),
    ).toBeCloseTo(0.5, 12);
  });

  test("a slanted strip across a board 3 wide keeps its lines when it is run out by 1: x moves by 1 / 2 of it", () => {
    // From the low border to the high one it goes 1.5 to the right, so 1 up is 1/2 to the right.
    const strip: Vec2[] = [
      [4, 0],
      [6, 0],
      [7.5, 3],
      [5.5, 3],
    ];
    expect(runOut(strip, [20, 3], 1)).toEqual([
      [3.5, -1],
      [5.5, -1],
      [8, 4],
      [6, 4],
    ]);
  });

  test("a corner of the board is run out both ways, and what lies inside stays", () => {
    expect(
      runOut(
        [
          [0, 0],
          [2, 0],
          [2, 1],
          [0, 1],
        ],
        [20, 3],
        1,
      ),
    ).toEqual([
      [-1, -1],
      [2, -1],
      [2, 1],
      [-1, 1],
    ]);
  });
});
