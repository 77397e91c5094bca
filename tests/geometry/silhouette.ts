// Front faces -> the area of the whole picture, as it would be seen against the light.
import { areaPaths, FillRule, union } from "clipper2-ts";
import type { FrontFaces } from "../../src/geometry/front-faces.ts";

const step = 1e-4;

export function silhouetteArea(fronts: FrontFaces): number {
  const outlines = fronts.faces.flatMap(({ loops }) =>
    loops.map((loop) => {
      const path = [];
      for (let i = 0; i < loop.length; i += 2) {
        path.push({ x: Math.round((loop[i] as number) / step), y: Math.round((loop[i + 1] as number) / step) });
      }
      return path;
    }),
  );
  return areaPaths(union(outlines, FillRule.NonZero)) * step ** 2;
}
