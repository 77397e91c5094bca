// Visible regions against the reference numbers, against the silhouette, and against the lines of the same scene.
import { describe, expect, test } from "vitest";
import { frontFacesOf } from "../../src/geometry/front-faces.ts";
import { lineChains } from "../../src/geometry/line-chains.ts";
import { type Scene, sceneOf } from "../../src/geometry/scene.ts";
import type { Vec2 } from "../../src/geometry/shape.ts";
import { inMillimetres } from "../../src/geometry/tolerance.ts";
import { namedViews } from "../../src/geometry/view.ts";
import { type Segment, uncovered } from "./coverage.ts";
import { drawnCases, type ReferenceCase, referenceCase, referenceViews } from "./reference-case.ts";
import { silhouetteArea } from "./silhouette.ts";

const cases = new Map(drawnCases.map((name) => [name, referenceCase(name)]));
const caseOf = (name: (typeof drawnCases)[number]) => cases.get(name) as ReferenceCase;
const everyView = drawnCases.flatMap((name) => referenceViews.map((view) => [name, view] as const));
const total = (scene: Scene) => scene.regions.reduce((sum, { area }) => sum + area, 0);

describe("of every board as much is seen as in the reference", () => {
  test.each(everyView)("%s from %s", (name, viewName) => {
    const { parts, views } = caseOf(name);
    const { outlineArea, visibleAreaByPart } = views[viewName].check;
    const scene = sceneOf(parts, namedViews[viewName], inMillimetres);
    parts.forEach(({ id }, owner) => {
      const area = scene.regions.filter((r) => r.owner === owner).reduce((sum, r) => sum + r.area, 0);
      expect(Math.abs(area - (visibleAreaByPart[id] ?? 0)), id).toBeLessThan(1e-6 * outlineArea + 0.01);
    });
    expect(Math.abs(total(scene) - outlineArea)).toBeLessThan(2e-6 * outlineArea + 0.01);
  });
});

describe("all regions together are the silhouette", () => {
  test.each(everyView)("%s from %s", (name, viewName) => {
    const { parts } = caseOf(name);
    const fronts = frontFacesOf(parts, namedViews[viewName], inMillimetres);
    const silhouette = silhouetteArea(fronts);
    const scene = sceneOf(parts, namedViews[viewName], inMillimetres);
    expect(Math.abs(total(scene) / silhouette - 1)).toBeLessThan(1e-6);
  });
});

describe("the borders of the regions are the visible lines", () => {
  test.each(everyView)("%s from %s", (name, viewName) => {
    const scene = sceneOf(caseOf(name).parts, namedViews[viewName], inMillimetres);
    const borders = scene.regions.flatMap(({ outer, holes }) => [outer, ...holes].flatMap(sides));
    const lines = lineChains(scene.lines, inMillimetres.lineUnion).flatMap(steps);
    expect(uncovered(borders, lines, 0.05)).toBeLessThan(0.5);
    expect(uncovered(lines, borders, 0.05)).toBeLessThan(0.5);
  });
});

test("the regions' own loops enclose the areas they state", () => {
  const { parts } = caseOf("scroll-bracket");
  for (const { outer, holes, area } of sceneOf(parts, namedViews.iso, inMillimetres).regions) {
    const enclosed = [outer, ...holes].reduce((sum, loop) => sum + loopArea(loop), 0);
    expect(loopArea(outer)).toBeGreaterThan(0);
    for (const hole of holes) expect(loopArea(hole)).toBeLessThan(0);
    expect(enclosed).toBeCloseTo(area, 6);
  }
});

test("a through hole leaves an opening in the top of the board: 240 x 90 less pi 15^2 is 20893 mm2", () => {
  const { parts } = caseOf("drilled-board");
  const { regions } = sceneOf(parts, namedViews.top, inMillimetres);
  const sum = regions.reduce((so, { area }) => so + area, 0);
  expect(Math.abs(sum - (240 * 90 - Math.PI * 15 * 15))).toBeLessThan(0.005 * Math.PI * 15 * 15);
  expect(regions.map(({ holes }) => holes.length)).toEqual([2, 0]);
});

test("the facets of a curved wall make one region where they are seen together", () => {
  const { parts } = caseOf("drilled-board");
  const { regions } = sceneOf(parts, namedViews.iso, inMillimetres);
  const keys = regions.map(({ owner, face }) => `${owner} ${face}`);
  // Top, front and end of the board; the walls of the three holes, and the floor of the blind one isn't seen.
  expect(new Set(keys).size).toBe(keys.length);
});

function sides(loop: readonly Vec2[]): Segment[] {
  return loop.map((p, i) => {
    const q = loop[(i + 1) % loop.length] as Vec2;
    return [p[0], p[1], q[0], q[1]];
  });
}

function steps(chain: readonly Vec2[]): Segment[] {
  return chain.slice(1).map((p, i) => {
    const from = chain[i] as Vec2;
    return [from[0], from[1], p[0], p[1]];
  });
}

function loopArea(loop: readonly Vec2[]): number {
  return sides(loop).reduce((sum, [x1, y1, x2, y2]) => sum + x1 * y2 - x2 * y1, 0) / 2;
}
