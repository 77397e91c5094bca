// The ways in and the fasteners of a step -> arrows on its picture: large ones for boards, short ones for screws.
import type { Vec3 } from "../geometry/shape.ts";
import { stretchIn } from "../geometry/stretch-in.ts";
import { add, dot, length, subtract, times } from "../geometry/vector.ts";
import { project, type View } from "../geometry/view.ts";
import type { Driven, Member } from "../item/item.ts";
import type { Mark, Paper } from "./drawing.ts";
import { type Body, type Picture, type Placement, spotOnPaper } from "./picture.ts";
import { type Segment, sideBySide } from "./side-by-side.ts";
import { isSeen, type Sight, seenStretches } from "./visibility.ts";
import type { Entry, Going } from "./way-in.ts";

/** A board's arrowhead is half as long as what is seen of its way, within these; a shorter way has no arrow. */
const boardArrow = 3.2;
const leastHead = 1.6;
const leastArrow = 2.2;
const screwArrow = 1.5;
/** Length of a screw's arrow on paper, mm, before its view makes it shorter. */
const screwLength = 6;

const unit = (a: Paper, b: Paper): Paper => {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return length < 1e-6 ? [0, 0] : [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
};

/** Arrows from the side that goes in first to the seat: on the first and the last of the members whose way is seen best. */
export function drawWaysIn(entries: readonly Entry[], picture: Picture, placement: Placement): Mark[] {
  return entries.flatMap((entry) => {
    if (!entry.goesIn) return [];
    const ways = waysOf(entry, picture);
    const longest = Math.max(...ways.map((way) => way.seen));
    if (longest * placement.scale < leastArrow) return [];
    const good = ways.filter((way) => way.seen > longest * 0.9);
    const carriers = good.length < 3 ? good : [good[0] as Way, good.at(-1) as Way];
    return carriers.flatMap((way) => wayArrow(way, picture, placement));
  });
}

const waysOf = ({ members, by, onto = [0, 0, 0] }: Entry, picture: Sight): readonly Way[] =>
  members.map((member) => bestStretch(member, by.get(member.id) ?? [0, 0, 0], onto, picture));

/** How much is seen of the way of what goes in, inches across the view; what stays needs no way. */
export function seenWay(entry: Entry, bodies: readonly Body[], view: View): number {
  if (!entry.goesIn) return Number.POSITIVE_INFINITY;
  const [way] = [...entry.by.values()];
  if (way === undefined || length(way) < 1e-9) return Number.POSITIVE_INFINITY;
  const across = Math.hypot(...project(view, way)) / length(way);
  return across * Math.max(...waysOf(entry, { bodies, view }).map(({ seen }) => seen));
}

/** A way in as it is drawn: from its start to the seat, and how much of it is seen, inches. */
type Way = { readonly from: Vec3; readonly seat: Vec3; readonly seen: number };

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

/** Whether a board's length or ends are out of square to the item. */
const isSlanted = ({ shape }: Going): boolean =>
  shape.trims.length > 0 || !shape.frame.x.some((part) => Math.abs(part) > 1 - 1e-9);

/** Starts on a slanted board: places along its middle line, pushed out to the side that goes in first. */
function slantedStarts(member: Going, way: Vec3): readonly Vec3[] {
  const back = times(way, -1 / length(way));
  const { solid, shape } = member;
  const half = Math.max(...solid.edges.map(({ a }) => Math.abs(dot(subtract(a, solid.centroid), shape.frame.x))));
  return [0, 0.35, -0.35, 0.8, -0.8].map((part) => {
    const at = add(solid.centroid, times(shape.frame.x, half * part));
    return add(at, times(back, stretchIn(solid, at, back, 0)?.[1] ?? 0));
  });
}

/** Of those the one whose way is seen longest. */
function bestStretch(member: Going, way: Vec3, onto: Vec3, picture: Sight): Way {
  const ways = startsOn(member, way).map((place): Way => {
    const start = add(place, onto);
    const from = add(start, way);
    const seen = seenStretches(picture, from, start).reduce((sum, [c, d]) => sum + length(subtract(d, c)), 0);
    return { from, seat: start, seen };
  });
  const longest = Math.max(...ways.map((one) => one.seen));
  return ways.find((one) => one.seen >= longest * 0.95) as Way;
}

/** Where on a seated board its way in may be drawn from. */
function startsOn(member: Going, way: Vec3): readonly Vec3[] {
  if (isSlanted(member)) return slantedStarts(member, way);
  const { box } = member.solid;
  const leading = way.findIndex((step) => Math.abs(step) > 1e-9);
  const [p, q] = [0, 1, 2].filter((k) => k !== leading) as [number, number];
  return starts.map(
    ([a, b]) =>
      [0, 1, 2].map((k) => {
        const [low, high, step] = [box.min[k] as number, box.max[k] as number, way[k] as number];
        if (k === leading) return step > 0 ? low : high;
        return (low + high) / 2 + ((high - low) / 2) * (k === p ? a : k === q ? b : 0);
      }) as unknown as Vec3,
  );
}

function wayArrow({ from, seat }: Way, picture: Picture, placement: Placement): Mark[] {
  const seen = seenStretches(picture, from, seat).map((pair) =>
    pair.map((spot) => spotOnPaper(picture, placement, spot)),
  ) as [Paper, Paper][];
  const last = seen.at(-1);
  if (last === undefined) return [];
  const run = Math.hypot(last[1][0] - last[0][0], last[1][1] - last[0][1]);
  return [
    { kind: "lines", line: "strong", chains: seen },
    {
      kind: "arrowhead",
      tip: last[1],
      way: unit(last[0], last[1]),
      size: Math.max(leastHead, Math.min(boardArrow, run / 2)),
    },
  ];
}

/** How far back along its way a fastener's head leaves the board it is in, inches: a pocket's head lies deep in it. */
const outOf = (board: Member, head: Vec3, way: Vec3): number =>
  Math.max(0, stretchIn(board.solid, head, times(way, -1), 0)?.[1] ?? 0);

type Arrow = { readonly line: Segment; readonly seen: boolean; readonly way: Paper };

/** Parallel lines stand this far apart on paper (ISO 128-2). */
const leastApart = 0.7;
/** A dashed line this near to a continuous one lies under it. */
const under = 0.1;

const runsBeside = (a: Segment, b: Segment, apart: number): boolean => {
  const found = sideBySide(a, b);
  return found !== undefined && found.together > 0.4 && found.apart < apart;
};

/**
 * Short arrows that end at the heads; a head nobody sees from here has its arrow dashed. Where two would run into one line, or a
 * dashed one under an edge (`edges`: continuous lines), the later one is its head alone.
 */
export function drawScrews(
  driven: readonly Driven[],
  by: ReadonlyMap<string, Vec3>,
  picture: Picture,
  placement: Placement,
  edges: readonly Mark[],
): Mark[] {
  const continuous = segmentsOf(edges);
  const drawn: Arrow[] = [];
  return driven.flatMap((one): Mark[] => {
    const arrow = arrowOf(one, by, picture, placement);
    if (arrow === undefined) return [];
    const { line, seen, way } = arrow;
    const isLost =
      drawn.some((other) => runsBeside(line, other.line, leastApart)) ||
      (!seen && continuous.some((edge) => runsBeside(line, edge, under)));
    if (!isLost) drawn.push(arrow);
    return [
      ...(isLost
        ? []
        : [{ kind: "lines", line: seen ? "dimension" : "hidden", chains: seen ? [line] : twoDashes(line) } as const]),
      { kind: "arrowhead", tip: line[1], way, size: screwArrow },
    ];
  });
}

/** Two dashes of the usual pattern and their gap, mm: a shorter shaft would look continuous. */
const twoDashesLong = 5;
const dashGap = 0.75;

/** A dashed shaft; one too short for the pattern is drawn as two dashes of its own that end at its head. */
function twoDashes(line: Segment): readonly Segment[] {
  const [from, tip] = line;
  const whole = Math.hypot(tip[0] - from[0], tip[1] - from[1]);
  const shaft = whole - screwArrow;
  if (shaft >= twoDashesLong || shaft <= dashGap) return [line];
  const on = (run: number): Paper => [
    from[0] + ((tip[0] - from[0]) * run) / whole,
    from[1] + ((tip[1] - from[1]) * run) / whole,
  ];
  return [
    [from, on((shaft - dashGap) / 2)],
    [on((shaft + dashGap) / 2), on(shaft)],
  ];
}

const segmentsOf = (marks: readonly Mark[]): readonly Segment[] =>
  marks.flatMap((mark) =>
    mark.kind === "lines"
      ? mark.chains.flatMap((chain) => chain.slice(1).map((to, i): Segment => [chain[i] as Paper, to]))
      : [],
  );

function arrowOf(
  one: Driven,
  by: ReadonlyMap<string, Vec3>,
  picture: Picture,
  placement: Placement,
): Arrow | undefined {
  const head = add(one.head, by.get(one.a) ?? [0, 0, 0]);
  const start = add(head, times(one.way, -screwLength / placement.scale));
  const line: Segment = [spotOnPaper(picture, placement, start), spotOnPaper(picture, placement, head)];
  const way = unit(...line);
  if (way[0] === 0 && way[1] === 0) return undefined;
  const board = picture.bodies.find(({ member }) => member.id === one.a)?.member;
  const out = board === undefined ? 0 : outOf(board, one.head, one.way);
  return { line, way, seen: isSeen(picture, add(head, times(one.way, -out - 0.05))) };
}
