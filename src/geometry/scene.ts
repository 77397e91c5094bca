// Parts and a view -> one scene: the lines and the regions a viewer sees, from the same projected faces.
import { type FrontFaces, frontFacesOf, type Part } from "./front-faces.ts";
import { seenEdges } from "./hidden-lines.ts";
import { lineChains } from "./line-chains.ts";
import { lineUnion, type SceneLine } from "./line-union.ts";
import type { Vec2 } from "./shape.ts";
import type { Tolerances } from "./tolerance.ts";
import type { View } from "./view.ts";
import { type Region, visibleRegions } from "./visible-regions.ts";

export type Bounds = { readonly min: Vec2; readonly max: Vec2 };

/** All in the view's own frame: x to its right, y up, in the unit of the solids. Owners are indices into the parts. */
export type Scene = {
  readonly lines: readonly SceneLine[];
  readonly regions: readonly Region[];
  readonly bounds: Bounds;
};

/** The whole scene. The parts must not overlap by more than edgeShift; parts may touch. */
export function sceneOf(parts: readonly Part[], view: View, tolerances: Tolerances): Scene {
  const fronts = frontFacesOf(parts, view, tolerances);
  return {
    lines: lineUnion(seenEdges(parts, fronts, view, tolerances), tolerances),
    regions: visibleRegions(parts, fronts, tolerances),
    bounds: boundsOf(fronts),
  };
}

/** The visible lines alone, as [x1, y1, x2, y2]; a curve is a chain of short ones. */
export function visibleLines(
  parts: readonly Part[],
  view: View,
  tolerances: Tolerances,
): readonly (readonly [number, number, number, number])[] {
  const fronts = frontFacesOf(parts, view, tolerances);
  const lines = lineUnion(seenEdges(parts, fronts, view, tolerances), tolerances);
  return lineChains(lines, tolerances.lineUnion).flatMap((chain) =>
    chain.slice(1).map((p, i): [number, number, number, number] => {
      const from = chain[i] as Vec2;
      return [from[0], from[1], p[0], p[1]];
    }),
  );
}

/** The box around everything seen; of nothing, the origin. */
function boundsOf(fronts: FrontFaces): Bounds {
  if (fronts.faces.length === 0) return { min: [0, 0], max: [0, 0] };
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const face of fronts.faces) {
    minX = Math.min(minX, face.minX);
    minY = Math.min(minY, face.minY);
    maxX = Math.max(maxX, face.maxX);
    maxY = Math.max(maxY, face.maxY);
  }
  return { min: [minX, minY], max: [maxX, maxY] };
}
