// What touches, what overlaps and what stands apart, with the sums done by hand.
import { expect, test } from "vitest";
import { contactOf } from "../../src/geometry/contact.ts";
import { distanceOf } from "../../src/geometry/distance.ts";
import { nearPairs } from "../../src/geometry/near-pairs.ts";
import { clashesAmong, isClash, overlapOf } from "../../src/geometry/overlap.ts";
import type { Shape, Vec3 } from "../../src/geometry/shape.ts";
import { solidOf } from "../../src/geometry/solid.ts";
import { inMillimetres as mm } from "../../src/geometry/tolerance.ts";
import { board, circle, path, prism, rectangle, turnedFrame, upright, whole } from "./shapes.ts";

const box = (origin: Vec3, size: Vec3) => solidOf(board(origin, size), mm);

test("two boards butted end to end touch on 20 x 10 = 200 and have nothing in common", () => {
  const [a, b] = [box([0, 0, 0], [100, 20, 10]), box([100, 0, 0], [100, 20, 10])];
  expect(overlapOf(a, b, mm)).toEqual({ volume: 0, depth: 0 });
  const contact = contactOf(a, b, mm);
  expect(contact.area).toBe(200);
  expect(contact.patches.map((patch) => patch.normal)).toEqual([[1, 0, 0]]);
  expect(distanceOf(a, b, mm)).toBe(0);
});

test("the patch of a board standing across another is the 30 x 20 they share, its normal from the first into the second", () => {
  const [lower, upper] = [box([0, 0, 0], [100, 20, 10]), box([40, -5, 10], [30, 80, 10])];
  const [patch] = contactOf(lower, upper, mm).patches;
  expect(patch?.area).toBe(600);
  expect(patch?.normal).toEqual([0, 0, 1]);
  expect([...(patch?.loops[0] ?? [])].sort((p, q) => p[0] - q[0] || p[1] - q[1])).toEqual([
    [40, 0, 10],
    [40, 20, 10],
    [70, 0, 10],
    [70, 20, 10],
  ]);
  expect(contactOf(upper, lower, mm).patches[0]?.normal).toEqual([0, 0, -1]);
});

test("boards 0.5 mm apart do not touch, and their gap is 0.5", () => {
  const [a, b] = [box([0, 0, 0], [100, 20, 10]), box([0, 0, 10.5], [100, 20, 10])];
  expect(contactOf(a, b, mm)).toEqual({ area: 0, patches: [] });
  expect(overlapOf(a, b, mm).volume).toBe(0);
  expect(distanceOf(a, b, mm)).toBeCloseTo(0.5, 12);
});

test("boards that meet along an edge or in a corner have no area of contact and no gap", () => {
  const a = box([0, 0, 0], [10, 10, 10]);
  for (const b of [box([10, 10, 0], [10, 10, 10]), box([10, 10, 10], [10, 10, 10])]) {
    expect(contactOf(a, b, mm).area).toBe(0);
    expect(overlapOf(a, b, mm).volume).toBe(0);
    expect(distanceOf(a, b, mm)).toBe(0);
  }
});

test("a corner 3, 4 and 12 away from another is the root of 9 + 16 + 144 = 13 away", () => {
  expect(distanceOf(box([0, 0, 0], [10, 10, 10]), box([13, 14, 22], [5, 5, 5]), mm)).toBeCloseTo(13, 12);
});

test("a board 5 deep in another over 60 x 20 claims 6000 and is 5 deep", () => {
  const overlap = overlapOf(box([0, 0, 0], [300, 20, 20]), box([100, -10, 15], [60, 40, 20]), mm);
  expect(overlap).toEqual({ volume: 6000, depth: 5 });
  expect(isClash(overlap, mm)).toBe(true);
});

test("0.04 mm over 100 x 100 is 400 mm3 but no clash; 0.06 mm over 4 x 4 is 0.96 mm3 and no clash; over 5 x 5 it is one", () => {
  const wide = overlapOf(box([0, 0, 0], [100, 100, 10]), box([0, 0, 9.96], [100, 100, 10]), mm);
  expect(wide.volume).toBeCloseTo(400, 6);
  expect(isClash(wide, mm)).toBe(false);
  expect(isClash(overlapOf(box([0, 0, 0], [4, 4, 10]), box([0, 0, 9.94], [4, 4, 10]), mm), mm)).toBe(false);
  expect(isClash(overlapOf(box([0, 0, 0], [5, 5, 10]), box([0, 0, 9.94], [5, 5, 10]), mm), mm)).toBe(true);
});

test("two boards half lapped into each other, 2 x 5 x 40 x 40, touch and have nothing in common", () => {
  const rail: Shape = {
    ...board([0, 0, 0], [200, 40, 10]),
    removals: [prism(upright([80, 0, 5]), rectangle(40, 40), 5)],
  };
  const stile: Shape = {
    ...board([80, -80, 0], [40, 200, 10]),
    removals: [prism(upright([0, 80, 0]), rectangle(40, 40), 5)],
  };
  const [a, b] = [solidOf(rail, mm), solidOf(stile, mm)];
  expect(overlapOf(a, b, mm)).toEqual({ volume: 0, depth: 0 });
  // the floor 40 x 40 and four walls 40 x 5, two of them the rail's and two the stile's
  expect(contactOf(a, b, mm).area).toBeCloseTo(1600 + 4 * 200, 9);
  const unlapped = solidOf(board([80, -80, 0], [40, 200, 10]), mm);
  const overlap = overlapOf(a, unlapped, mm);
  expect(overlap.volume).toBeCloseTo(40 * 40 * 5, 6);
  expect(overlap.depth).toBeCloseTo(5, 6);
});

test("a mitre butted at 45 degrees touches on 20 x 30 x root 2 and has nothing in common", () => {
  const mitred = (trim: Vec3, origin: Vec3, size: Vec3, point: Vec3): Shape => ({
    ...board(origin, size),
    trims: [{ point, normal: trim }],
  });
  const a = solidOf(mitred([1, -1, 0], [0, 0, 0], [100, 30, 20], [70, 0, 0]), mm);
  const b = solidOf(mitred([-1, 1, 0], [70, 0, 0], [30, 100, 20], [0, 0, 0]), mm);
  expect(overlapOf(a, b, mm).volume).toBe(0);
  expect(contactOf(a, b, mm).area).toBeCloseTo(20 * 30 * Math.SQRT2, 9);
});

test("boards butted in a turned frame have nothing in common and touch on 20 x 10 = 200", () => {
  const frame = turnedFrame([3, 4, 5], [0.3, 0.5, 0.7], [0.9, -0.2, 0.1]);
  const next = { ...frame, origin: frame.origin.map((o, k) => o + 100 * (frame.x[k] ?? 0)) as unknown as Vec3 };
  const [a, b] = [frame, next].map((f) => solidOf(whole(prism(f, rectangle(100, 20), 10)), mm));
  if (a === undefined || b === undefined) throw new Error("two boards");
  expect(overlapOf(a, b, mm)).toEqual({ volume: 0, depth: 0 });
  expect(contactOf(a, b, mm).area).toBeCloseTo(200, 9);
});

test("a dowel in its own hole has nothing in common with the board; one 0.2 mm thicker is 0.1 mm deep all round", () => {
  const drilled = solidOf({ ...board([0, 0, 0], [40, 40, 20]), holes: [circle([20, 20], 6)] }, mm);
  const dowel = (radius: number) => solidOf(whole(prism(upright([0, 0, 0]), circle([20, 20], radius), 20)), mm);
  expect(overlapOf(drilled, dowel(6), mm)).toEqual({ volume: 0, depth: 0 });
  const tight = overlapOf(drilled, dowel(6.1), mm);
  expect(Math.abs(tight.volume - Math.PI * (6.1 ** 2 - 6 ** 2) * 20)).toBeLessThan(1);
  expect(tight.depth).toBeGreaterThan(0.08);
  expect(tight.depth).toBeLessThan(0.13);
});

test("a board that clips an L in two places, 0.2 and 3 deep, is 3 deep", () => {
  const ell = solidOf(
    whole(prism(upright([0, 0, 0]), path([0, 0], [50, 0], [50, 10], [10, 10], [10, 50], [0, 50]), 20)),
    mm,
  );
  const overlap = overlapOf(ell, box([9.8, 7, 0], [30, 30, 20]), mm);
  // 30 x 3 below, 0.2 x 27 beside it
  expect(overlap.volume).toBeCloseTo((30 * 3 + 0.2 * 27) * 20, 6);
  expect(overlap.depth).toBeCloseTo(3, 4);
});

test("of five boards in a row the neighbours are near at a reach of 0, and no further ones; one clash is told by its places", () => {
  const row = [0, 1, 2, 3, 4].map((i) => box([i * 10 - (i === 3 ? 1 : 0), 0, 0], [10, 5, 5]));
  expect(nearPairs(row, 0)).toEqual([
    [0, 1],
    [1, 2],
    [2, 3],
  ]);
  expect(nearPairs(row, 1)).toEqual([
    [0, 1],
    [1, 2],
    [2, 3],
    [3, 4],
  ]);
  expect(clashesAmong(row, mm)).toEqual([{ a: 2, b: 3, volume: 25, depth: 1 }]);
});
