// What must hold of the visible regions of any boards that touch: tried on blocks cut up at random.
import fc from "fast-check";
import { expect, test } from "vitest";
import { frontFacesOf } from "../../src/geometry/front-faces.ts";
import { sceneOf } from "../../src/geometry/scene.ts";
import type { Vec2 } from "../../src/geometry/shape.ts";
import { inMillimetres } from "../../src/geometry/tolerance.ts";
import { add, times } from "../../src/geometry/vector.ts";
import { namedViews } from "../../src/geometry/view.ts";
import type { Region } from "../../src/geometry/visible-regions.ts";
import { anyTurn, cutBlock, evenly, partsOf, viewOfTurn } from "./cut-block.ts";
import { throughBox } from "./rays.ts";
import { silhouetteArea } from "./silhouette.ts";

test("the regions of any boards add up to their silhouette", () => {
  fc.assert(
    fc.property(cutBlock, fc.constantFrom(...Object.values(namedViews)), (boxes, view) => {
      const parts = partsOf(boxes);
      const silhouette = silhouetteArea(frontFacesOf(parts, view, inMillimetres));
      const sum = sceneOf(parts, view, inMillimetres).regions.reduce((so, { area }) => so + area, 0);
      expect(Math.abs(sum / silhouette - 1)).toBeLessThan(1e-6);
    }),
    { numRuns: 60, seed: 4 },
  );
});

test("a ray into the picture first meets the box whose region it falls in", () => {
  let met = 0;
  let missed = 0;
  const spots = fc.array(fc.tuple(evenly(0, 1), evenly(0, 1)), { minLength: 40, maxLength: 40 });
  fc.assert(
    fc.property(cutBlock, anyTurn, spots, (boxes, turn, shares) => {
      const view = viewOfTurn(turn);
      const { regions, bounds } = sceneOf(partsOf(boxes), view, inMillimetres);
      for (const [across, up] of shares) {
        const x = bounds.min[0] + (bounds.max[0] - bounds.min[0]) * across;
        const y = bounds.min[1] + (bounds.max[1] - bounds.min[1]) * up;
        const nearest = [-0.01, 0, 0.01].flatMap((dx) =>
          [-0.01, 0.01].map((dy) => {
            const foot = add(times(view.right, x + dx), times(view.up, y + dy));
            const leaves = boxes.map((box) => {
              const { enter, leave } = throughBox(foot, view.toViewer, box);
              return leave - enter > 1e-6 ? leave : -Infinity;
            });
            const most = Math.max(...leaves);
            return most === -Infinity ? -1 : leaves.indexOf(most);
          }),
        );
        // Beside a border the answer is left open.
        if (new Set(nearest).size > 1) continue;
        const owners = regions.filter((region) => holdsPoint(region, x, y)).map(({ owner }) => owner);
        if (nearest[0] === -1) missed++;
        else met++;
        expect(owners).toEqual(nearest[0] === -1 ? [] : [nearest[0]]);
      }
    }),
    { numRuns: 80, seed: 5 },
  );
  expect(met).toBeGreaterThan(1000);
  expect(missed).toBeGreaterThan(500);
});

function holdsPoint({ outer, holes }: Region, x: number, y: number): boolean {
  return [outer, ...holes].filter((loop) => isInside(loop, x, y)).length === 1;
}

function isInside(loop: readonly Vec2[], x: number, y: number): boolean {
  let inside = false;
  loop.forEach((p, i) => {
    const q = loop[(i + 1) % loop.length] as Vec2;
    if (p[1] > y !== q[1] > y && x < p[0] + ((y - p[1]) / (q[1] - p[1])) * (q[0] - p[0])) inside = !inside;
  });
  return inside;
}
