// The ways in and the fasteners of a step -> arrows on its picture: large ones for boards, short ones for screws.
import type { Vec3 } from "../geometry/shape.ts";
import { add, length, subtract, times } from "../geometry/vector.ts";
import type { Driven, Member } from "../item/item.ts";
import type { Mark, Paper } from "./drawing.ts";
import { type Picture, type Placement, spotOnPaper } from "./picture.ts";
import { isSeen, seenStretches } from "./visibility.ts";
import type { Entry } from "./way-in.ts";

const boardArrow = 3.2;
const screwArrow = 1.5;
/** Length of a screw's arrow on paper, mm, before its view makes it shorter. */
const screwLength = 6;

const unit = (a: Paper, b: Paper): Paper => {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return length < 1e-6 ? [0, 0] : [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
};

/** From the middle of the side that goes in first, to its seat; at most the first and the last of a set carry one. */
export function drawWaysIn(entries: readonly Entry[], picture: Picture, placement: Placement): Mark[] {
  return entries.flatMap(({ members, by, goesIn }) => {
    if (!goesIn) return [];
    const carriers = members.length < 3 ? members : [members[0] as Member, members.at(-1) as Member];
    return carriers.flatMap((member) => {
      const way = by.get(member.id);
      if (way === undefined) return [];
      return wayArrow(bestStart(member, way, picture), way, picture, placement);
    });
  });
}

/** The middle of the side that goes in first, and places nearer to its edges, as parts of its half size. */
const starts: readonly (readonly [number, number])[] = [
  [0, 0],
  [0.9, 0],
  [-0.9, 0],
  [0, 1.02],
  [0, -1.02],
  [1.02, 0],
  [-1.02, 0],
];

/** Of those the one whose way is seen longest. */
function bestStart({ solid: { box } }: Member, way: Vec3, picture: Picture): Vec3 {
  const leading = way.findIndex((step) => Math.abs(step) > 1e-9);
  const [p, q] = [0, 1, 2].filter((k) => k !== leading) as [number, number];
  const spots = starts.map(
    ([a, b]) =>
      [0, 1, 2].map((k) => {
        const [low, high, step] = [box.min[k] as number, box.max[k] as number, way[k] as number];
        if (k === leading) return (step > 0 ? low : high) + step;
        return (low + high) / 2 + ((high - low) / 2) * (k === p ? a : k === q ? b : 0);
      }) as unknown as Vec3,
  );
  const seenLength = (spot: Vec3): number =>
    seenStretches(picture, spot, add(spot, times(way, -1))).reduce((sum, [a, b]) => sum + length(subtract(b, a)), 0);
  const longest = Math.max(...spots.map(seenLength));
  return spots.find((spot) => seenLength(spot) > longest * 0.95) as Vec3;
}

function wayArrow(from: Vec3, way: Vec3, picture: Picture, placement: Placement): Mark[] {
  const seat = add(from, times(way, -1));
  const seen = seenStretches(picture, from, seat).map((pair) =>
    pair.map((spot) => spotOnPaper(picture, placement, spot)),
  ) as [Paper, Paper][];
  const last = seen.at(-1);
  if (last === undefined) return [];
  const direction = unit(last[0], last[1]);
  return [
    { kind: "lines", line: "strong", chains: seen },
    { kind: "arrowhead", tip: last[1], way: direction, size: boardArrow },
  ];
}

/** Short arrows that end at the heads; a head nobody sees from here has its arrow dashed. */
export function drawScrews(
  driven: readonly Driven[],
  by: ReadonlyMap<string, Vec3>,
  picture: Picture,
  placement: Placement,
): Mark[] {
  return driven.flatMap((one): Mark[] => {
    const head = add(one.head, by.get(one.a) ?? [0, 0, 0]);
    const start = add(head, times(one.way, -screwLength / placement.scale));
    const [from, tip] = [spotOnPaper(picture, placement, start), spotOnPaper(picture, placement, head)];
    const way = unit(from, tip);
    if (way[0] === 0 && way[1] === 0) return [];
    const seen = isSeen(picture, add(head, times(one.way, -0.05)));
    return [
      { kind: "lines", line: seen ? "dimension" : "hidden", chains: [[from, tip]] },
      { kind: "arrowhead", tip, way, size: screwArrow },
    ];
  });
}
