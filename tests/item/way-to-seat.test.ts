// Boards in and out of boxes: what blocks every way, and what doesn't (the sense of a bench, no source).
import fc from "fast-check";
import { expect, test } from "vitest";
import type { Vec3 } from "../../src/geometry/shape.ts";
import { solidOf } from "../../src/geometry/solid.ts";
import { blockersOf } from "../../src/item/way-to-seat.ts";
import { board } from "../geometry/shapes.ts";

const box = (id: string, origin: Vec3, size: Vec3) => ({ id, solid: solidOf(board(origin, size)) });
/** A tray 10 x 10 inside, walls 5 high all round. */
const tray = [
  box("floor", [-1, -1, -1], [12, 12, 1]),
  box("left", [-1, -1, 0], [1, 12, 5]),
  box("right", [10, -1, 0], [1, 12, 5]),
  box("front", [0, -1, 0], [10, 1, 5]),
  box("back", [0, 10, 0], [10, 1, 5]),
];
const lid = box("lid", [-1, -1, 5], [12, 12, 1]);
const blockers = (block: ReturnType<typeof box>, there: readonly ReturnType<typeof box>[]) => {
  const { all, last } = blockersOf([block], there, []);
  return { blocked: all.length > 0, last: last?.id };
};

test("a block goes into a tray from above, and under the lid only before the lid is on", () => {
  const block = box("block", [0, 0, 0], [10, 10, 2]);
  expect(blockers(block, tray)).toEqual({ blocked: false, last: undefined });
  expect(blockers(block, [...tray, lid])).toEqual({ blocked: true, last: "lid" });
});

test("under a lip 3 broad a block 6 x 6 is let down through the 7 that are left and slipped aside", () => {
  const lip = box("lip", [0, -1, 3], [3, 12, 2]);
  expect(blockers(box("block", [0, 2, 0], [6, 6, 2]), [...tray, lip]).blocked).toBe(false);
  expect(blockers(box("block", [0, 2, 0], [8, 6, 2]), [...tray, lip])).toEqual({ blocked: true, last: "lip" });
});

test("a board with a notch blocks nothing, for its hull is more than it", () => {
  const { shape } = lid.solid;
  const notch = { ...board([2, 2, -1], [4, 4, 3]) };
  const notched = { id: "lid", solid: solidOf({ ...shape, removals: [notch] }) };
  expect(blockers(box("block", [0, 0, 0], [10, 10, 2]), [...tray, notched]).blocked).toBe(false);
});

test("turning the whole room about changes nothing: told in another order of the axes", () => {
  const turn = ([x, y, z]: Vec3): Vec3 => [y, z, x];
  const turned = ({ id, solid }: ReturnType<typeof box>) => {
    const { min, max } = solid.box;
    const size: Vec3 = [max[0] - min[0], max[1] - min[1], max[2] - min[2]];
    return box(id, turn(min), turn(size));
  };
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 10 }), fc.integer({ min: 1, max: 7 }), (wide, high) => {
      const block = box("block", [0, 0, 0], [wide, 10, high]);
      const there = high <= 5 ? [...tray, lid] : tray;
      expect(blockers(turned(block), there.map(turned)).blocked).toBe(blockers(block, there).blocked);
    }),
    { numRuns: 30 },
  );
});
