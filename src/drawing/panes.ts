// A picture -> its panes over everything else: a tint, their outline, and three strokes that say glass where a tint doesn't show.
import { lineChains } from "../geometry/line-chains.ts";
import type { Vec2 } from "../geometry/shape.ts";
import { inInches } from "../geometry/tolerance.ts";
import { isInside } from "./dot-spots.ts";
import type { LineKind, Mark, Paper } from "./drawing.ts";
import { onPaper, type Picture, type Placement } from "./picture.ts";

/** On the largest part that is seen; from its middle, mm. */
const glints: readonly (readonly Paper[])[] = [
  [
    [-4.5, 1.5],
    [-1.5, -1.5],
  ],
  [
    [-4, 4],
    [4, -4],
  ],
  [
    [1.5, 1.5],
    [4.5, -1.5],
  ],
];

/** None where they would run over the pane's edge. */
function drawGlints(loops: readonly (readonly Paper[])[]): readonly (readonly Paper[])[] {
  const outer = loops[0] ?? [];
  const [us, vs] = [outer.map((p) => p[0]), outer.map((p) => p[1])];
  const part = (values: readonly number[], share: number): number =>
    Math.min(...values) + (Math.max(...values) - Math.min(...values)) * share;
  for (const [right, down] of [
    [0.5, 0.3],
    [0.5, 0.5],
    [0.35, 0.5],
    [0.65, 0.5],
  ] as const) {
    const [u, v] = [part(us, right), part(vs, down)];
    const strokes = glints.map((stroke) => stroke.map(([x, y]): Paper => [u + x, v + y]));
    if (strokes.flat().every((p) => isInside(p, loops))) return strokes;
  }
  return [];
}

/** Panes over everything else: a light tint that lets it through, and their outline. */
export function drawPanes(picture: Picture, placement: Placement, line: LineKind): Mark[] {
  const paper = (p: Vec2): Paper => onPaper(picture, placement, p);
  const { regions, lines } = picture.panes;
  const outlines = lineChains(lines, inInches.lineUnion).map((chain) => chain.map(paper));
  const tints = regions.map(({ outer, holes, area }) => ({
    area,
    loops: [outer, ...holes].map((loop) => loop.map(paper)),
  }));
  const [largest] = [...tints].sort((a, b) => b.area - a.area);
  const strokes = largest === undefined ? [] : drawGlints(largest.loops);
  return [
    ...tints.map(({ loops }): Mark => ({ kind: "region", tone: { kind: "pane" }, shade: 0, loops })),
    ...(outlines.length === 0 ? [] : [{ kind: "lines" as const, line, chains: outlines }]),
    ...(strokes.length === 0 ? [] : [{ kind: "lines" as const, line: "light" as const, chains: strokes }]),
  ];
}
