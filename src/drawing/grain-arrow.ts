// A board on paper -> the arrow that says which way its grain runs, where it is clear of every line.
import { collide } from "./collision.ts";
import { arrowSize } from "./dimensions.ts";
import { isInside } from "./dot-spots.ts";
import type { Mark, Paper } from "./drawing.ts";
import { onPaper, type Picture, type Placement } from "./picture.ts";

/** Where the grain arrow is tried, as parts of the board's length and width. */
const grainSpots: readonly Paper[] = [0.5, 0.3, 0.7, 0.2, 0.8].flatMap((v) =>
  [0.25, 0.32, 0.7, 0.18, 0.4, 0.6, 0.8].map((u): Paper => [u, v]),
);

/** A double arrow along the fibres, on wood and clear of every line; a board without room for it goes without. */
export function grainArrow(
  picture: Picture,
  placement: Placement,
  length: number,
  keepOff: readonly (readonly Paper[])[],
): { readonly marks: Mark[]; readonly outlines: readonly Paper[][] } {
  const { bounds, lines, regions } = picture.scene;
  const borders = [
    ...lines.map(({ a, b }): readonly Paper[] => [onPaper(picture, placement, a), onPaper(picture, placement, b)]),
    ...keepOff,
  ];
  const wood = regions.flatMap((region) =>
    [region.outer, ...region.holes].map((loop) => loop.map((p) => onPaper(picture, placement, p))),
  );
  const ends = grainSpots.map(([u, v]): Paper[] => {
    const [x, y] = onPaper(picture, placement, [
      bounds.min[0] + u * (bounds.max[0] - bounds.min[0]),
      bounds.max[1] - v * (bounds.max[1] - bounds.min[1]),
    ]);
    return [
      [x - length / 2, y],
      [x + length / 2, y],
    ];
  });
  const free = ends.find((arrow) => {
    const [from, to] = arrow as [Paper, Paper];
    const middle: Paper = [(from[0] + to[0]) / 2, from[1]];
    return isInside(middle, wood) && !borders.some((border) => collide(arrow, border, 0.8));
  });
  if (free === undefined) return { marks: [], outlines: [] };
  const [from, to] = free as [Paper, Paper];
  return {
    marks: [
      { kind: "lines", line: "dimension", chains: [[from, to]] },
      { kind: "arrowhead", tip: from, way: [-1, 0], size: arrowSize * 0.8 },
      { kind: "arrowhead", tip: to, way: [1, 0], size: arrowSize * 0.8 },
    ],
    outlines: [[from, to]],
  };
}
