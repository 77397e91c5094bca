// A placed member and its cuts -> the shape it is in item space; and item points in the board's own frame and back.

import { runOut } from "../geometry/convex.ts";
import { crossingsOf, linesOf } from "../geometry/outline-lines.ts";
import { type CornerRadii, roundedRectangle } from "../geometry/rounded-rectangle.ts";
import type { Frame, Prism, Removal, Shape, Trim, Vec2, Vec3 } from "../geometry/shape.ts";
import type { Box } from "../geometry/solid.ts";
import { add, cross, dot, subtract, times } from "../geometry/vector.ts";
import { inches } from "../units/length.ts";
import { type Axis, axes } from "../units/side.ts";
import type { OwnSide, Point, WorkedCut } from "./item.ts";
import type { PlacedMember, Slant } from "./placed.ts";

/** The board's own axes in the order of its own frame. */
export const ownAxes = ["length", "width", "thickness"] as const;
export type OwnAxis = (typeof ownAxes)[number];

export type Lying = Pick<PlacedMember, "lie" | "min" | "max" | "slant" | "outline">;

/** The entry of a vector along an axis of item space, or along one of the board's own. */
export const along = (v: Vec3, axis: Axis): number => v[axes.indexOf(axis)] as number;
export const ownEntry = (v: Vec3, axis: OwnAxis): number => v[ownAxes.indexOf(axis)] as number;

export const vecOf = (p: Point): Vec3 => [inches(p.x), inches(p.y), inches(p.z)];

const boxes = new WeakMap<Lying, Box>();

/** The member's box in inches; remembered, as turning exact lengths into doubles is slow where every pair is asked. */
export function boxOf(member: Lying): Box {
  const known = boxes.get(member);
  if (known) return known;
  const box = { min: vecOf(member.min), max: vecOf(member.max) };
  boxes.set(member, box);
  return box;
}
export const unit = (axis: Axis, sign: 1 | -1 = 1): Vec3 => axes.map((a) => (a === axis ? sign : 0)) as unknown as Vec3;

/** The own axis that runs along this axis of the item. */
export const ownAlong = (member: Lying, axis: Axis): OwnAxis =>
  member.lie.length === axis ? "length" : member.lie.width === axis ? "width" : "thickness";

/** The square blank a board is cut from: its least corner, unit directions, size, and the planes that trim it (item space). */
export function blankOf(member: Lying): Slant {
  if (member.slant) return member.slant;
  const { min, max } = boxOf(member);
  const { lie } = member;
  const size = ownAxes.map((own) => along(max, lie[own]) - along(min, lie[own])) as unknown as Vec3;
  return {
    origin: min,
    length: unit(lie.length),
    width: unit(lie.width),
    thickness: unit(lie.thickness),
    size,
    trims: [],
  };
}

/** Length, width and thickness of the blank in inches. */
export const ownSize = (member: Lying): Vec3 => blankOf(member).size;

/** How far a straight line from a point inside the uncut board runs before it leaves it. */
export function depthIn(member: Lying, from: Vec3, way: Vec3): number {
  const blank = blankOf(member);
  const faces = ownAxes.flatMap((own): Trim[] => {
    const far = add(blank.origin, times(blank[own], ownEntry(blank.size, own)));
    return [
      { point: blank.origin, normal: times(blank[own], -1) },
      { point: far, normal: blank[own] },
    ];
  });
  const exits = [...faces, ...blank.trims].flatMap(({ point, normal }) => {
    const speed = dot(normal, way);
    return speed > 1e-9 ? [dot(normal, subtract(point, from)) / speed] : [];
  });
  return Math.min(...exits, ...outlineExits(member, blank, from, way));
}

/** Where a line from a point in an outline's plane or on its wall leaves the wood again. */
function outlineExits(member: Lying, blank: Slant, from: Vec3, way: Vec3): number[] {
  if (!member.outline) return [];
  const start = subtract(from, blank.origin);
  const inPlane = (v: Vec3): Vec2 => [dot(v, blank.length), dot(v, blank.width)];
  const [at, toward] = [inPlane(start), inPlane(way)];
  if (Math.hypot(...toward) < 1e-9) return [];
  const crossings = crossingsOf(linesOf(member.outline), at, [at[0] + toward[0], at[1] + toward[1]]);
  // The wall the point itself stands on, its chords among them, is no way out.
  return crossings.filter((s) => s > onWall);
}

/** Nearer than this a crossing is that of the wall a line starts from (inches). */
const onWall = 0.01;

/** A box of item space in the own frame of a member that lies square. */
export function ownBox(member: Lying, box: Box): Box {
  const { min } = boxOf(member);
  const turn = (v: Vec3) =>
    ownAxes.map((own) => along(v, member.lie[own]) - along(min, member.lie[own])) as unknown as Vec3;
  return { min: turn(box.min), max: turn(box.max) };
}

/** Whether length, width and thickness make a right-handed frame in this order. */
export function isRightHanded(member: Lying): boolean {
  const { length, width, thickness } = blankOf(member);
  return dot(cross(length, width), thickness) > 0;
}

/** How far a removal runs on beyond the board where it leaves it, so that no two faces lie on each other (inches). */
const beyond = 1;

/** The board, trimmed where its ends slant, less its cuts. The frame's z runs through the thickness. */
export function shapeOf(member: Lying, cuts: readonly WorkedCut[]): Shape {
  const blank = blankOf(member);
  const { size, length: x, width: y } = blank;
  const [length, width, thickness] = size;
  // The third axis of a right-handed frame runs against the own thickness where the own frame is left-handed.
  const right = isRightHanded(member);
  const origin = right ? blank.origin : add(blank.origin, times(blank.thickness, thickness));
  const z = right ? blank.thickness : times(blank.thickness, -1);
  const inFrame = (v: Vec3): Vec3 => [dot(v, x), dot(v, y), dot(v, z)];
  const turned = (box: Box): Box =>
    right
      ? box
      : {
          min: [box.min[0], box.min[1], thickness - box.max[2]],
          max: [box.max[0], box.max[1], thickness - box.min[2]],
        };
  return {
    frame: { origin, x, y },
    outline: member.outline?.edge ?? roundedRectangle(length, width, radiiOf(cuts)),
    holes: member.outline?.holes ?? [],
    depth: thickness,
    trims: [...blank.trims, ...slopesOf(cuts, blank)].map(({ point, normal }) => ({
      point: inFrame(subtract(point, origin)),
      normal: inFrame(normal),
    })),
    removals: cuts.flatMap((cut): Removal[] => {
      if (cut.kind === "box") return [boxPrism(turned(runOn(cut, size, 0)))];
      if (cut.kind === "pocket") return [pocketPrism(turned(runOn(cut, size, cut.radius)), cut.axis, cut.radius)];
      if (cut.kind === "prism") return [figurePrism(cut, size, right)];
      if (cut.kind === "eased") return cut.arris ? [arrisPrism(cut.radius, cut.arris, size, right)] : [];
      if (cut.kind !== "hole") return [];
      return [holePrism(cut, size, right), ...sinkCone(cut, size, right)];
    }),
  };
}

/** Sawn slopes as planes of item space. */
const slopesOf = (cuts: readonly WorkedCut[], blank: Slant): Trim[] =>
  cuts.flatMap((cut) => {
    if (cut.kind !== "slope") return [];
    const turn = (v: Vec3): Vec3 =>
      ownAxes.reduce<Vec3>((sum, own) => add(sum, times(blank[own], ownEntry(v, own))), [0, 0, 0]);
    return [{ point: add(blank.origin, turn(times(cut.normal, cut.offset))), normal: turn(cut.normal) }];
  });

/** The radius of each rounded corner, in the order round the rectangle. */
function radiiOf(cuts: readonly WorkedCut[]): CornerRadii {
  const radius = (l: 0 | 1, w: 0 | 1): number =>
    cuts.reduce(
      (most, cut) =>
        cut.kind === "corners" && cut.corners.some(([a, b]) => a === l && b === w) ? Math.max(most, cut.radius) : most,
      0,
    );
  return [radius(0, 0), radius(1, 0), radius(1, 1), radius(0, 1)];
}

/** A box with round corners is run on far enough that they lie outside the board. */
function runOn(box: Box, size: Vec3, radius: number): Box {
  const by = beyond + radius;
  const min = box.min.map((v) => (v <= 0 ? v - by : v)) as unknown as Vec3;
  const max = box.max.map((v, i) => (v >= (size[i] as number) ? v + by : v)) as unknown as Vec3;
  return { min, max };
}

const boxPrism = ({ min, max }: Box): Prism => ({
  frame: { origin: min, x: [1, 0, 0], y: [0, 1, 0] },
  outline: roundedRectangle(max[0] - min[0], max[1] - min[1], [0, 0, 0, 0]),
  holes: [],
  depth: max[2] - min[2],
});

function pocketPrism({ min, max }: Box, axis: OwnAxis, radius: number): Prism {
  const { x, y } = holeFrames[axis];
  const size = subtract(max, min);
  return {
    frame: { origin: min, x, y },
    outline: roundedRectangle(dot(size, x), dot(size, y), [radius, radius, radius, radius]),
    holes: [],
    depth: ownEntry(size, axis),
  };
}

// Frames whose z runs along the own length, width and thickness.
const holeFrames: Readonly<Record<OwnAxis, Pick<Frame, "x" | "y">>> = {
  length: { x: [0, 1, 0], y: [0, 0, 1] },
  width: { x: [0, 0, 1], y: [1, 0, 0] },
  thickness: { x: [1, 0, 0], y: [0, 1, 0] },
};

/** Where a hole starts and stops along its axis in the own frame. */
export function holeReach(cut: WorkedCut & { kind: "hole" }, size: Vec3): readonly [number, number] {
  const full = ownEntry(size, cut.axis);
  if (cut.deep === undefined) return [0, full];
  return cut.from === "low" ? [0, cut.deep] : [full - cut.deep, full];
}

function holePrism(cut: WorkedCut & { kind: "hole" }, size: Vec3, right: boolean): Prism {
  const [start, stop] = holeReach(cut, size);
  const full = ownEntry(size, cut.axis);
  const low = start <= 0 ? -beyond : start;
  const high = stop >= full ? full + beyond : stop;
  const flipped = !right;
  const centre = cut.at3.map((v, i) => (i === 2 && flipped ? size[2] - v : v));
  const from = cut.axis === "thickness" && flipped ? full - high : low;
  const at = ownAxes.indexOf(cut.axis);
  return {
    frame: { origin: centre.map((v, i) => (i === at ? from : v)) as unknown as Vec3, ...holeFrames[cut.axis] },
    outline: { kind: "circle", centre: [0, 0], radius: cut.across / 2 },
    holes: [],
    depth: high - low,
  };
}

/** A figure run out past the board wherever it ends at its outside. */
function figurePrism(cut: WorkedCut & { kind: "prism" }, size: Vec3, right: boolean): Prism {
  const { axis, outline } = cut;
  const [u, v] = ownAxes.filter((own) => own !== axis) as [OwnAxis, OwnAxis];
  const full = ownEntry(size, axis);
  const [low, high] = [cut.low <= 1e-9 ? -beyond : cut.low, cut.high >= full - 1e-9 ? full + beyond : cut.high];
  const wide = runOut(outline, [ownEntry(size, u), ownEntry(size, v)], beyond);
  const way = (own: OwnAxis): Vec3 =>
    ownAxes.map((each) => (each === own ? (own === "thickness" && !right ? -1 : 1) : 0)) as unknown as Vec3;
  const start: Vec3 = right ? [0, 0, 0] : [0, 0, size[2]];
  const [x, y, z] = [way(u), way(v), way(axis)];
  const turned = dot(cross(x, y), z) < 0;
  const origin = add(start, times(z, turned ? high : low));
  // Where its own two ways and its depth make a left hand, the prism runs from its high end down.
  return { frame: { origin, x, y }, outline: { kind: "path", items: wide }, holes: [], depth: high - low };
}

/** Between the walls of a countersink for wood screws: ANSI/ASME B18.6.1, 82 degrees. */
const sinkSlope = Math.tan((41 * Math.PI) / 180);

/** How deep a countersink reaches, from its mouth to where its cone is as wide as the hole. */
export const sinkDepth = (mouth: number, hole: number): number => (mouth - hole) / 2 / sinkSlope;

/** A cone from outside the wood into the hole, where it ends narrower than that. */
function sinkCone(cut: WorkedCut & { kind: "hole" }, size: Vec3, right: boolean): Removal[] {
  if (cut.countersink === undefined) return [];
  const run = beyond / 8;
  const wide = cut.countersink / 2 + run * sinkSlope;
  const narrow = (3 / 8) * cut.across;
  const at = ownAxes.indexOf(cut.axis);
  const flipped = !right;
  const low = (cut.from === "low") !== (flipped && cut.axis === "thickness");
  const mouth = low ? -run : ownEntry(size, cut.axis) + run;
  const origin = cut.at3.map((v, i) => (i === at ? mouth : i === 2 && flipped ? size[2] - v : v)) as unknown as Vec3;
  const { x, y } = holeFrames[cut.axis];
  return [
    {
      frame: { origin, x: low ? x : y, y: low ? y : x },
      outline: { kind: "circle", centre: [0, 0], radius: wide },
      holes: [],
      depth: (wide - narrow) / sinkSlope,
      taper: narrow / wide,
    },
  ];
}

/** What is left over of the corner of two sides outside a quarter round that runs into both. */
function arrisPrism(radius: number, [a, b]: readonly [OwnSide, OwnSide], size: Vec3, right: boolean): Prism {
  const inward = ({ axis, far }: OwnSide): Vec3 => {
    const turned = axis === "thickness" && !right;
    return ownAxes.map((own) => (own === axis ? (far !== turned ? -1 : 1) : 0)) as unknown as Vec3;
  };
  const [x, y] = [inward(a), inward(b)];
  const run = cross(x, y);
  const from = ownAxes.map((_, i) => {
    const way = (x[i] as number) + (y[i] as number) + (run[i] as number);
    return way > 0 ? 0 : (size[i] as number);
  }) as unknown as Vec3;
  const long = Math.abs(dot(run, size)) + 2 * beyond;
  const middle = radius * (1 - Math.SQRT1_2);
  return {
    frame: { origin: add(from, times(run, -beyond)), x, y },
    outline: {
      kind: "path",
      items: [
        [-beyond, radius],
        [-beyond, -beyond],
        [radius, -beyond],
        [radius, 0],
        { mid: [middle, middle], to: [0, radius] },
      ],
    },
    holes: [],
    depth: long,
  };
}
