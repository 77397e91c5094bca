// Solids of shapes, with the sums done by hand.
import { expect, test } from "vitest";
import type { Shape } from "../../src/geometry/shape.ts";
import { solidOf } from "../../src/geometry/solid.ts";
import { inMillimetres } from "../../src/geometry/tolerance.ts";
import { eulerSum } from "./euler.ts";
import { board, circle, path, prism, rectangle, upright, whole } from "./shapes.ts";

test("a board 3 by 2 by 1 at (10, 20, 30) has volume 6, area 2 (6 + 3 + 2) = 22 and its centre at (11.5, 21, 30.5)", () => {
  const solid = solidOf(board([10, 20, 30], [3, 2, 1]));
  expect(solid.volume).toBeCloseTo(6, 12);
  expect(solid.area).toBe(22);
  expect(solid.centroid).toEqual([11.5, 21, 30.5]);
  expect(solid.box).toEqual({ min: [10, 20, 30], max: [13, 22, 31] });
  expect([solid.faces.length, solid.edges.length, eulerSum(solid)]).toEqual([6, 12, 2]);
});

test("each face's normal points out of the wood and its loop runs counter-clockwise round it", () => {
  for (const face of solidOf(board([0, 0, 0], [3, 2, 1])).faces) {
    expect(face.area).toBeGreaterThan(0);
    expect(face.offset).toBe(
      face.normal.some((n) => n < 0) ? 0 : face.normal[0] * 3 + face.normal[1] * 2 + face.normal[2],
    );
  }
});

test("an outline drawn clockwise, or with a point in the middle of a side, makes the same board", () => {
  const clockwise = solidOf(whole(prism(upright([0, 0, 0]), path([0, 0], [0, 2], [3, 2], [3, 0], [1, 0]), 1)));
  expect([clockwise.volume, clockwise.area, clockwise.faces.length]).toEqual([6, 22, 6]);
});

test("a 12 by 3 board mitred 45 degrees at both ends in the face is a trapezoid of 12 and 6: volume 3 (12 + 6) / 2 = 27", () => {
  const mitred: Shape = {
    ...board([0, 0, 0], [12, 3, 1]),
    trims: [
      { point: [0, 0, 0], normal: [-1, 1, 0] },
      { point: [12, 0, 0], normal: [1, 1, 0] },
    ],
  };
  const solid = solidOf(mitred);
  expect(solid.volume).toBeCloseTo(27, 12);
  expect(solid.area).toBeCloseTo(2 * 27 + 12 + 6 + 2 * 3 * Math.SQRT2, 12);
  expect([solid.faces.length, solid.edges.length, eulerSum(solid)]).toEqual([6, 12, 2]);
});

test("a trim that only touches takes nothing; one that has everything before it leaves nothing", () => {
  const trimmed = (height: number): Shape => ({
    ...board([0, 0, 0], [3, 2, 1]),
    trims: [{ point: [0, 0, height], normal: [0, 0, 1] }],
  });
  expect(solidOf(trimmed(1)).volume).toBeCloseTo(6, 12);
  const nothing = solidOf(trimmed(0));
  expect([nothing.volume, nothing.area, nothing.faces, nothing.edges]).toEqual([0, 0, [], []]);
});

test("a half lap 2 wide in a 10 by 2 by 1 board leaves 20 - 2 = 18, in ten faces", () => {
  const lapped: Shape = {
    ...board([5, 0, 0], [10, 2, 1]),
    removals: [prism(upright([4, 0, 0.5]), rectangle(2, 2), 0.5)],
  };
  const solid = solidOf(lapped);
  expect(solid.volume).toBeCloseTo(18, 12);
  // the floor of the lap takes the place of the top it cost; its two walls are 2 by 1/2, and two pieces of edge are gone
  expect(solid.area).toBeCloseTo(64 + 2 * 2 * 0.5 - 2 * 2 * 0.5, 12);
  expect([solid.faces.length, eulerSum(solid)]).toEqual([10, 2]);
  expect(solid.centroid[0]).toBeCloseTo(10, 12);
});

test("two half laps side by side make one flat floor of 2 + 2 = 4 by 2", () => {
  const lapped: Shape = {
    ...board([0, 0, 0], [10, 2, 1]),
    removals: [prism(upright([3, 0, 0.5]), rectangle(2, 2), 0.5), prism(upright([5, 0, 0.5]), rectangle(2, 2), 0.5)],
  };
  const floor = solidOf(lapped).faces.filter((face) => face.normal[2] === 1 && face.offset === 0.5);
  expect(floor.map((face) => face.area)).toEqual([8]);
});

test("a lap across the middle splits the top into two faces of 4 by 2", () => {
  const lapped: Shape = {
    ...board([0, 0, 0], [10, 2, 1]),
    removals: [prism(upright([4, 0, 0.5]), rectangle(2, 2), 0.5)],
  };
  const tops = solidOf(lapped).faces.filter((face) => face.normal[2] === 1 && face.offset === 1);
  expect(tops.map((face) => face.area)).toEqual([8, 8]);
});

test("a removal through all of a board cuts it in two; a removal of all leaves nothing", () => {
  const cut = (x: number, width: number): Shape => ({
    ...board([0, 0, 0], [10, 2, 1]),
    removals: [prism(upright([x, -1, -1]), rectangle(width, 4), 3)],
  });
  const two = solidOf(cut(4, 2));
  expect(two.volume).toBeCloseTo(16, 12);
  expect([two.faces.length, eulerSum(two)]).toEqual([12, 4]);
  const nothing = solidOf(cut(-1, 12));
  expect([nothing.volume, nothing.faces]).toEqual([0, []]);
});

test("a hole is one curved wall of smooth edges; its rims are sharp", () => {
  const drilled: Shape = { ...board([0, 0, 0], [10, 10, 4]), holes: [circle([5, 5], 2)] };
  const solid = solidOf(drilled, inMillimetres);
  const facets = solid.faces.filter((face) => face.wall !== undefined);
  expect(new Set(facets.map((face) => face.wall)).size).toBe(1);
  const smooth = solid.edges.filter((edge) => edge.smooth);
  expect(smooth.length).toBe(facets.length);
  expect(smooth.every((edge) => edge.a[2] !== edge.b[2])).toBe(true);
  expect(eulerSum(solid)).toBe(0);
});

test("a hole drilled by a removal gives the same wall as the same hole in the outline", () => {
  const drilled: Shape = {
    ...board([0, 0, 0], [10, 10, 4]),
    removals: [prism(upright([5, 5, 0]), circle([0, 0], 2), 4)],
  };
  const inOutline = solidOf({ ...board([0, 0, 0], [10, 10, 4]), holes: [circle([5, 5], 2)] }, inMillimetres);
  const removed = solidOf(drilled, inMillimetres);
  expect(removed.volume).toBeCloseTo(inOutline.volume, 9);
  expect(removed.edges.filter((e) => e.smooth).length).toBe(inOutline.edges.filter((e) => e.smooth).length);
  expect(removed.faces.length).toBe(inOutline.faces.length);
});

test("two holes in line keep two walls, though facets of both lie in one plane", () => {
  const holes = [prism(upright([5, 5, 0]), circle([0, 0], 2), 4), prism(upright([15, 5, 0]), circle([0, 0], 2), 4)];
  const solid = solidOf({ ...board([0, 0, 0], [20, 10, 4]), removals: holes }, inMillimetres);
  const walls = solid.faces.flatMap((face) => face.wall ?? []);
  expect(new Set(walls).size).toBe(2);
  expect(walls.filter((w) => w === walls[0]).length).toBe(walls.length / 2);
});

test("a rounded corner runs into both sides without a sharp line; no chord is more than 0.02 mm off", () => {
  const rounded = path(
    [0, 0],
    [100, 0],
    [100, 70],
    { mid: [100 - 30 + 30 * Math.SQRT1_2, 70 + 30 * Math.SQRT1_2], to: [70, 100] },
    [0, 100],
  );
  const solid = solidOf(whole(prism(upright([0, 0, 0]), rounded, 20)), inMillimetres);
  const facets = solid.faces.filter((face) => face.wall !== undefined).length;
  // upright edges: facets - 1 between facets and 2 where the sides begin
  expect(solid.edges.filter((edge) => edge.smooth).length).toBe(facets + 1);
  const exact = (100 * 100 - 30 * 30 * (1 - Math.PI / 4)) * 20;
  expect(Math.abs(solid.volume - exact)).toBeLessThan(0.02 * ((Math.PI / 2) * 30) * 20);
  expect(facets).toBe(Math.ceil(Math.PI / 2 / (2 * Math.acos(1 - 0.02 / 30))));
});

test("an arc that meets a side at an angle has a sharp line there", () => {
  const scooped = path([0, 0], [100, 0], [100, 50], { mid: [50, 30], to: [0, 50] });
  const solid = solidOf(whole(prism(upright([0, 0, 0]), scooped, 20)), inMillimetres);
  const facets = solid.faces.filter((face) => face.wall !== undefined).length;
  expect(solid.edges.filter((edge) => edge.smooth).length).toBe(facets - 1);
});

test("like shapes in two places make like solids, each in its place", () => {
  const lapped = (z: number): Shape => ({
    ...board([0, 0, z], [10, 2, 1]),
    removals: [prism(upright([4, 0, 0.5]), rectangle(2, 2), 0.5)],
  });
  const [low, high] = [solidOf(lapped(0)), solidOf(lapped(7))];
  expect(high.volume).toBe(low.volume);
  expect(high.centroid[2] - low.centroid[2]).toBeCloseTo(7, 12);
});

test("a prism without depth, a circle without radius and an outline of two points are our own mistakes", () => {
  expect(() => solidOf(board([0, 0, 0], [3, 2, 0]))).toThrow("a prism needs a depth above zero, found 0");
  expect(() => solidOf(whole(prism(upright([0, 0, 0]), circle([0, 0], 0), 1)))).toThrow("radius above zero, found 0");
  expect(() => solidOf(whole(prism(upright([0, 0, 0]), path([0, 0], [1, 0]), 1)))).toThrow("three sides, found 2");
});
