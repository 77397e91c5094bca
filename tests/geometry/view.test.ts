// Views: where the axes of a standing item fall on the picture.
import { expect, test } from "vitest";
import { cross, dot } from "../../src/geometry/vector.ts";
import { namedViews, nearness, pictorialView, project, type ViewName, viewFrom } from "../../src/geometry/view.ts";
import { referenceCase, referenceViews } from "./reference-case.ts";

const named = Object.keys(namedViews) as ViewName[];

test.each(referenceViews)("%s has the frame the reference drawings are made in", (name) => {
  const { frame } = referenceCase("touching-stack").views[name];
  for (const axis of ["toViewer", "right", "up"] as const) {
    for (const k of [0, 1, 2] as const) expect(namedViews[name][axis][k]).toBeCloseTo(frame[axis][k], 12);
  }
});

test.each(named)("%s: right, up and the way to the viewer are unit, at right angles and right-handed", (name) => {
  const { toViewer, right, up } = namedViews[name];
  expect(dot(right, right)).toBeCloseTo(1, 12);
  expect(dot(up, up)).toBeCloseTo(1, 12);
  expect(dot(right, up)).toBeCloseTo(0, 12);
  cross(right, up).forEach((n, k) => {
    expect(n).toBeCloseTo(toViewer[k as 0 | 1 | 2], 12);
  });
});

test("from the front x is to the right and z up; from the back x is to the left", () => {
  expect(project(namedViews.front, [3, 4, 5])).toEqual([3, 5]);
  expect(project(namedViews.back, [3, 4, 5])).toEqual([-3, 5]);
  expect(project(namedViews.left, [3, 4, 5])).toEqual([-4, 5]);
  expect(project(namedViews.top, [3, 4, 5])).toEqual([3, 4]);
  expect(project(namedViews.underside, [3, 4, 5])).toEqual([3, -4]);
});

test("a pictorial view foreshortens all three axes alike, by the root of 2/3", () => {
  for (const corner of ["front-right", "front-left", "back-right", "back-left"] as const) {
    for (const from of ["above", "below"] as const) {
      const view = pictorialView(corner, from);
      for (const axis of [[1, 0, 0] as const, [0, 1, 0] as const, [0, 0, 1] as const]) {
        expect(Math.hypot(...project(view, axis))).toBeCloseTo(Math.sqrt(2 / 3), 12);
      }
      expect(project(view, [0, 0, 1])[0]).toBeCloseTo(0, 12);
      expect(project(view, [0, 0, 1])[1]).toBeGreaterThan(0);
    }
  }
});

test("the corner a pictorial view is named for is the nearest", () => {
  const corners = { "front-right": [1, 0], "front-left": [0, 0], "back-right": [1, 1], "back-left": [0, 1] } as const;
  for (const corner of Object.keys(corners) as (keyof typeof corners)[]) {
    const view = pictorialView(corner, "above");
    const nearest = Object.values(corners).toSorted((p, q) => nearness(view, [...q, 1]) - nearness(view, [...p, 1]))[0];
    expect(nearest).toEqual(corners[corner]);
  }
});

test("a view from a hair off straight down still has z upright on the picture", () => {
  const { up, right } = viewFrom([0, -1e-6, 1]);
  expect(right[2]).toBe(0);
  expect(up[2]).toBeGreaterThan(0);
});
