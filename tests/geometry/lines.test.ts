// Visible lines against another geometry kernel's hidden-line removal: OpenCascade, numbers stored in tests/reference/geometry.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Part } from "../../src/geometry/front-faces.ts";
import type { SceneLine } from "../../src/geometry/line-union.ts";
import { sceneOf, visibleLines } from "../../src/geometry/scene.ts";
import type { Frame, Vec3 } from "../../src/geometry/shape.ts";
import { solidOf } from "../../src/geometry/solid.ts";
import { inInches, inMillimetres } from "../../src/geometry/tolerance.ts";
import { add, placed, times } from "../../src/geometry/vector.ts";
import { namedViews } from "../../src/geometry/view.ts";
import { boxSolid } from "./box-solid.ts";
import { type Segment, uncovered } from "./coverage.ts";
import { anyTurn, evenly, turnedView } from "./cut-block.ts";
import { drawnCases, type ReferenceCase, referenceCase, referenceSegments, referenceViews } from "./reference-case.ts";

const cases = new Map(drawnCases.map((name) => [name, referenceCase(name)]));
const caseOf = (name: (typeof drawnCases)[number]) => cases.get(name) as ReferenceCase;
const everyView = drawnCases.flatMap((name) => referenceViews.map((view) => [name, view] as const));

/** Missing and extra length, and how much of either the reference allows: 0.5 mm, or a share of all that is seen. */
function against(view: ReferenceCase["views"]["front"], drawn: readonly Segment[]) {
  const reference = referenceSegments(view);
  const curved = view.visibleCurves.length > 0;
  const slack = curved ? 0.1 : 0.05;
  return {
    missing: uncovered(reference, [...drawn, ...(view.disputed?.inReferenceNotInPrototype ?? [])], slack),
    extra: uncovered(drawn, [...reference, ...(view.disputed?.inPrototypeNotInReference ?? [])], slack),
    allowed: Math.max(0.5, (curved ? 1e-3 : 1e-4) * view.visibleLength),
  };
}

describe("the visible lines are those of the reference kernel", () => {
  test.each(everyView)("%s from %s", (name, viewName) => {
    const { parts, views } = caseOf(name);
    const { missing, extra, allowed } = against(
      views[viewName],
      visibleLines(parts, namedViews[viewName], inMillimetres),
    );
    expect(missing).toBeLessThanOrEqual(allowed);
    expect(extra).toBeLessThanOrEqual(allowed);
  });

  test.each(everyView)("%s from %s: the board with most lines, 2 mm out of place, is noticed", (name, viewName) => {
    const { parts, views } = caseOf(name);
    const view = views[viewName];
    const { lines } = sceneOf(parts, namedViews[viewName], inMillimetres);
    const drawn = parts.map((_, owner) =>
      lines.filter((line) => line.owner === owner).reduce((sum, l) => sum + length(l), 0),
    );
    const most = parts[drawn.indexOf(Math.max(...drawn))]?.id;
    const way = add(times(view.frame.right, 1.6), times(view.frame.up, 1.2));
    const moved = parts.map(({ id, solid }) => {
      const { shape } = solid;
      const frame = { ...shape.frame, origin: add(shape.frame.origin, way) };
      return { id, solid: id === most ? solidOf({ ...shape, frame }, inMillimetres) : solid };
    });
    const { missing, extra, allowed } = against(view, visibleLines(moved, namedViews[viewName], inMillimetres));
    expect(missing + extra).toBeGreaterThan(allowed);
  });
});

describe("the whole length drawn is the reference's within 0.4 % (near-parallel lines count once)", () => {
  test.each(everyView)("%s from %s", (name, viewName) => {
    const { parts, views } = caseOf(name);
    const { visibleLength } = views[viewName];
    const drawn = visibleLines(parts, namedViews[viewName], inMillimetres);
    const length = drawn.reduce((sum, [x1, y1, x2, y2]) => sum + Math.hypot(x2 - x1, y2 - y1), 0);
    expect(Math.abs(length / visibleLength - 1)).toBeLessThan(0.004);
  });
});

function length({ a, b }: SceneLine): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

const moved = ({ id, solid }: Part, frame: Frame): Part => ({
  id,
  solid: solidOf({ ...solid.shape, frame }, inMillimetres),
});

test.each(drawnCases)("%s turned in space together with its viewer gives the same drawing", (name) => {
  const { parts } = caseOf(name);
  const [turn] = fc.sample(anyTurn, { numRuns: 1, seed: 6 }) as [Frame];
  const turnedParts = parts.map((part) => {
    const { origin, x, y } = part.solid.shape.frame;
    return moved(part, { origin: placed(turn, origin), x: placed(turn, x), y: placed(turn, y) });
  });
  for (const view of [namedViews.front, namedViews.iso, namedViews.general]) {
    const before = visibleLines(parts, view, inMillimetres);
    const after = visibleLines(turnedParts, turnedView(turn, view), inMillimetres);
    expect(uncovered(before, after, 0.05)).toBeLessThan(1e-9);
    expect(uncovered(after, before, 0.05)).toBeLessThan(1e-9);
  }
});

test.each(drawnCases)("%s with boards up to 0.001 mm out of place changes less than 0.05 mm of line", (name) => {
  const { parts } = caseOf(name);
  const by = fc.sample(evenly(-1e-3, 1e-3), { numRuns: 3 * parts.length, seed: 8 });
  const nudged = parts.map((part, i) => {
    const { frame } = part.solid.shape;
    return moved(part, { ...frame, origin: add(frame.origin, by.slice(3 * i, 3 * i + 3) as unknown as Vec3) });
  });
  for (const view of Object.values(namedViews)) {
    const before = visibleLines(parts, view, inMillimetres);
    const after = visibleLines(nudged, view, inMillimetres);
    expect(uncovered(before, after, 0.05)).toBeLessThan(0.05);
    expect(uncovered(after, before, 0.05)).toBeLessThan(0.05);
  }
});

const box = (origin: Vec3, size: Vec3) => ({
  id: `box at ${origin.join(" ")}`,
  solid: boxSolid({ frame: { origin, x: [1, 0, 0], y: [0, 1, 0] }, size }),
});

test("a single board from the front is its four edges, each once", () => {
  const lines = visibleLines([box([0, 0, 0], [300, 20, 90])], namedViews.front, inMillimetres);
  const ends = lines.map(([x1, y1, x2, y2]) => [`${x1} ${y1}`, `${x2} ${y2}`].sort().join(" to "));
  expect(ends.sort()).toEqual(["0 0 to 0 90", "0 0 to 300 0", "0 90 to 300 90", "300 0 to 300 90"]);
});

test("a board right behind another of the same size adds no line", () => {
  const front = box([0, 0, 0], [300, 20, 90]);
  const behind = box([0, 20, 0], [300, 20, 90]);
  expect(visibleLines([front, behind], namedViews.front, inMillimetres)).toEqual(
    visibleLines([front], namedViews.front, inMillimetres),
  );
});

test("two boards side by side show their seam once, and both own it", () => {
  const { lines } = sceneOf(
    [box([0, 0, 0], [100, 20, 90]), box([100, 0, 0], [100, 20, 90])],
    namedViews.front,
    inMillimetres,
  );
  const seam = lines.filter(({ a, b }) => a[0] === 100 && b[0] === 100);
  expect(seam.map(({ owner, shared }) => ({ owner, shared }))).toEqual([{ owner: 0, shared: [1] }]);
});

test("of three boards that hide each other in a ring as much is seen of each, and all of none", () => {
  const lean = (along: Vec3, up: Vec3, origin: Vec3) => ({
    id: origin.join(" "),
    solid: boxSolid({ frame: { origin, x: along, y: up }, size: [200, 20, 10] }),
  });
  const tilt = Math.hypot(1, 0.15);
  const ring = [0, 120, 240].map((degrees) => {
    const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    const along: Vec3 = [c / tilt, s / tilt, 0.15 / tilt];
    const origin: Vec3 = [-90 * c + 40 * s, -90 * s - 40 * c, -15];
    return lean(along, [-s, c, 0], origin);
  });
  const { lines } = sceneOf(ring, namedViews.top, inMillimetres);
  const byOwner = [0, 1, 2].map((owner) =>
    lines.filter((line) => line.owner === owner).reduce((sum, line) => sum + length(line), 0),
  );
  // Each is the others turned by a third: the same length shows of each, and of none all of it.
  const alone = visibleLines([ring[0] as (typeof ring)[0]], namedViews.top, inMillimetres);
  const whole = alone.reduce((sum, [x1, y1, x2, y2]) => sum + Math.hypot(x2 - x1, y2 - y1), 0);
  expect(byOwner[1]).toBeCloseTo(byOwner[0] as number, 1);
  expect(byOwner[2]).toBeCloseTo(byOwner[0] as number, 1);
  expect(byOwner[0]).toBeLessThan(whole - 30);
});

test("the same boards in inches give the same drawing, 25.4 times smaller", () => {
  const { parts } = caseOf("touching-stack");
  const small = parts.map(({ solid }, i) => {
    const { min, max } = solid.box;
    const inch = (v: Vec3): Vec3 => [v[0] / 25.4, v[1] / 25.4, v[2] / 25.4];
    return { ...box(inch(min), inch([max[0] - min[0], max[1] - min[1], max[2] - min[2]])), id: `${i}` };
  });
  const inInch = visibleLines(small, namedViews.general, inInches);
  const enlarged = inInch.map((line) => line.map((n) => n * 25.4) as unknown as Segment);
  const inMm = visibleLines(parts, namedViews.general, inMillimetres);
  expect(enlarged.length).toBe(inMm.length);
  expect(uncovered(enlarged, inMm, 0.01)).toBeLessThan(1e-9);
  expect(uncovered(inMm, enlarged, 0.01)).toBeLessThan(1e-9);
});

test("the order in which lines come doesn't change from one run to the next", () => {
  const { parts, views } = caseOf("scroll-bracket");
  const once = sceneOf(parts, views.iso.frame, inMillimetres);
  const again = sceneOf(parts, views.iso.frame, inMillimetres);
  expect(JSON.stringify(again)).toBe(JSON.stringify(once));
});
