// A stored reference case -> parts as solids and what another geometry kernel says of its views (source: tests/reference/geometry).
import { readFileSync } from "node:fs";
import type { Part } from "../../src/geometry/front-faces.ts";
import { readModel } from "../../src/geometry/model-file.ts";
import { solidOf } from "../../src/geometry/solid.ts";
import { inMillimetres } from "../../src/geometry/tolerance.ts";
import type { View } from "../../src/geometry/view.ts";
import type { Segment } from "./coverage.ts";

type ReferenceView = {
  readonly frame: View;
  readonly visibleLength: number;
  readonly visibleSegments: readonly Segment[];
  readonly visibleCurves: readonly { readonly pts: readonly (readonly [number, number])[] }[];
  readonly disputed?: {
    readonly inReferenceNotInPrototype: readonly Segment[];
    readonly inPrototypeNotInReference: readonly Segment[];
  };
  readonly check: {
    readonly outlineArea: number;
    readonly visibleAreaByPart: Readonly<Record<string, number>>;
  };
};

export const drawnCases = [
  "slatted-bin",
  "splayed-bench",
  "scroll-bracket",
  "drilled-board",
  "touching-stack",
  "mitred-frame",
] as const;

export const referenceViews = ["front", "top", "right", "iso", "general"] as const;

export type ReferenceCase = {
  readonly parts: readonly Part[];
  readonly views: Readonly<Record<(typeof referenceViews)[number], ReferenceView>>;
};

export function referenceCase(name: (typeof drawnCases)[number]): ReferenceCase {
  const file = new URL(`../reference/geometry/${name}.json`, import.meta.url);
  const json = JSON.parse(readFileSync(file, "utf8"));
  const { model, faults } = readModel(json);
  if (faults.length > 0) throw new Error(`${name}: ${faults.join("; ")}`);
  return {
    parts: model.parts.map(({ id, shape }) => ({ id, solid: solidOf(shape, inMillimetres) })),
    views: json.views,
  };
}

/** The reference's own lines, curves as chains of short ones. */
export function referenceSegments(view: ReferenceView): Segment[] {
  const curves = view.visibleCurves.flatMap(({ pts }) =>
    pts.slice(1).map((p, i): Segment => {
      const from = pts[i] as readonly [number, number];
      return [from[0], from[1], p[0], p[1]];
    }),
  );
  return [...view.visibleSegments, ...curves];
}
