// What must hold of the visible lines of any boards that touch: tried on blocks cut up at random.
import fc from "fast-check";
import { expect, test } from "vitest";
import { sceneOf, visibleLines } from "../../src/geometry/scene.ts";
import type { Vec3 } from "../../src/geometry/shape.ts";
import { inMillimetres } from "../../src/geometry/tolerance.ts";
import { add, cross, dot, times } from "../../src/geometry/vector.ts";
import { namedViews, project, type View } from "../../src/geometry/view.ts";
import type { BoxInFrame } from "./box-solid.ts";
import { uncovered } from "./coverage.ts";
import { anyTurn, cutBlock, evenly, partsOf, turnedBox, turnedView, viewOfTurn } from "./cut-block.ts";
import { throughBox } from "./rays.ts";

test("boards and viewer turned together give the same drawing", () => {
  fc.assert(
    fc.property(cutBlock, anyTurn, fc.constantFrom(...Object.values(namedViews)), (boxes, turn, view) => {
      const before = visibleLines(partsOf(boxes), view, inMillimetres);
      const turned = boxes.map((box) => turnedBox(turn, box));
      const after = visibleLines(partsOf(turned), turnedView(turn, view), inMillimetres);
      expect(uncovered(before, after, 0.05)).toBeLessThan(1e-9);
      expect(uncovered(after, before, 0.05)).toBeLessThan(1e-9);
    }),
    { numRuns: 60, seed: 1 },
  );
});

test("boards a thousandth of a millimetre out of place change less than 0.05 mm of line", () => {
  const nudge = evenly(-1e-3, 1e-3);
  const nudges = fc.array(fc.tuple(nudge, nudge, nudge), { minLength: 15, maxLength: 15 });
  fc.assert(
    fc.property(cutBlock, nudges, fc.constantFrom(...Object.values(namedViews)), (boxes, by, view) => {
      const before = visibleLines(partsOf(boxes), view, inMillimetres);
      const moved = boxes.map(({ frame, size }, i) => {
        return { frame: { ...frame, origin: add(frame.origin, by[i] as Vec3) }, size };
      });
      const after = visibleLines(partsOf(moved), view, inMillimetres);
      expect(uncovered(before, after, 0.05)).toBeLessThan(0.05);
      expect(uncovered(after, before, 0.05)).toBeLessThan(0.05);
    }),
    { numRuns: 100, seed: 2 },
  );
});

test("lines agree with rays cast from the edges of the boxes to the viewer", () => {
  let seen = 0;
  let hidden = 0;
  fc.assert(
    fc.property(cutBlock, anyTurn, (boxes, turn) => {
      const view = viewOfTurn(turn);
      const { lines } = sceneOf(partsOf(boxes), view, inMillimetres);
      boxes.forEach((box, owner) => {
        const own = lines.filter((line) => line.owner === owner || line.shared.includes(owner));
        for (const { at, way, beside } of edgeSamples(box, view)) {
          const answers = new Set(beside.map((points) => points.some((p) => !covered(p, boxes, view))));
          if (answers.size !== 1) continue;
          const [x, y] = project(view, at);
          const [wayX, wayY] = project(view, way);
          const drawnWithin = (reach: number) =>
            own.some(({ a, b }) => {
              const [ex, ey] = [b[0] - a[0], b[1] - a[1]];
              const crossing = Math.abs(ex * wayY - ey * wayX) > 0.01 * Math.hypot(ex, ey) * Math.hypot(wayX, wayY);
              return !crossing && offSegment(x, y, a, b) < reach;
            });
          if (answers.has(true)) {
            seen++;
            expect(drawnWithin(0.03)).toBe(true);
          } else {
            hidden++;
            expect(drawnWithin(0.001)).toBe(false);
          }
        }
      });
    }),
    { numRuns: 60, seed: 3 },
  );

  expect(seen).toBeGreaterThan(5000);
  expect(hidden).toBeGreaterThan(5000);
});

/** Points on the edges of a box; for each, points just inside the front faces there, once at it and once to each side. */
function edgeSamples({ frame, size }: BoxInFrame, view: View) {
  const axes: readonly Vec3[] = [frame.x, frame.y, cross(frame.x, frame.y)];
  const samples: { at: Vec3; way: Vec3; beside: Vec3[][] }[] = [];
  for (const [i, j, k] of [[0, 1, 2] as const, [1, 2, 0] as const, [2, 0, 1] as const]) {
    for (const [sj, sk] of [[0, 0] as const, [0, 1] as const, [1, 0] as const, [1, 1] as const]) {
      for (const share of [0.07, 0.21, 0.39, 0.55, 0.68, 0.93]) {
        const point = (along: number, inJ: number, inK: number): Vec3 => {
          const toJ = sj === 0 ? inJ : (size[j] as number) - inJ;
          const toK = sk === 0 ? inK : (size[k] as number) - inK;
          const p = add(times(axes[i] as Vec3, along), times(axes[j] as Vec3, toJ));
          return add(frame.origin, add(p, times(axes[k] as Vec3, toK)));
        };
        const towards = (axis: number, end: number) => dot(axes[axis] as Vec3, view.toViewer) * (end === 0 ? -1 : 1);
        if (Math.abs(towards(j, sj)) < 0.05 || Math.abs(towards(k, sk)) < 0.05) continue;
        // The face across j holds the edge; inside it the way on is along k, and the other way about.
        const inside = [
          ...(towards(j, sj) > 0 ? [[0, 1] as const] : []),
          ...(towards(k, sk) > 0 ? [[1, 0] as const] : []),
        ];
        const length = size[i] as number;
        const beside = [0, -0.3, 0.3].map((aside) =>
          inside.flatMap(([inJ, inK]) =>
            [0.01, 0.1].map((deep) => point(length * share + aside, inJ * deep, inK * deep)),
          ),
        );
        samples.push({ at: point(length * share, 0, 0), way: axes[i] as Vec3, beside });
      }
    }
  }
  return samples;
}

/** Whether a ray from p to the viewer passes through a box for more than a hair. */
function covered(p: Vec3, boxes: readonly BoxInFrame[], view: View): boolean {
  return boxes.some((box) => {
    const { enter, leave } = throughBox(p, view.toViewer, box);
    return leave - Math.max(0, enter) > 1e-6;
  });
}

function offSegment(x: number, y: number, a: readonly [number, number], b: readonly [number, number]): number {
  const [ex, ey] = [b[0] - a[0], b[1] - a[1]];
  const t = Math.max(0, Math.min(1, ((x - a[0]) * ex + (y - a[1]) * ey) / (ex * ex + ey * ey)));
  return Math.hypot(a[0] + ex * t - x, a[1] + ey * t - y);
}
