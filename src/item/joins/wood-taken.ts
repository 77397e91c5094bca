// A fastener in its place and the cuts of the two boards it holds -> how much of its wood a cut takes away.
import type { Vec3 } from "../../geometry/shape.ts";
import { add, cross, dot, length as lengthOf, subtract, times, unit } from "../../geometry/vector.ts";
import { type Problem, problem } from "../../problems/problem.ts";
import { blankOf, holeReach, type Lying, ownAxes, ownSize } from "../frame.ts";
import type { Driven, Join, WorkedCut } from "../item.ts";
import { airAlong } from "../outlines/in-wood.ts";
import type { PlacedMember } from "../placed.ts";

type Part = { readonly from: Vec3; readonly to: Vec3 };
/** What a hole for a fastener may be: as wide as its head (two diameters, common practice) where it goes through, as its shank where it bites. */
type Bored = { readonly widest: number; readonly sunk: boolean };

/** A hole this near to a fastener's line is meant for it (inches). */
const onLine = 1 / 32;

type Span = readonly [number, number];

const none: Span = [0, 0];
const spanned = ([low, high]: Span): number => Math.max(0, high - low);
const both = (a: Span, b: Span): Span => [Math.max(a[0], b[0]), Math.min(a[1], b[1])];

/** What a cut takes from one fastener: of its length in that board, and how much stands there. */
export type Taken = {
  readonly member: string;
  readonly cut: WorkedCut;
  readonly lost: number;
  readonly stands: number;
};

/** The cut that takes most of the wood along the shank, where that is more than half a diameter. */
export function woodTaken(
  driven: Driven,
  memberOf: ReadonlyMap<string, PlacedMember>,
  cutsOf: ReadonlyMap<string, readonly WorkedCut[]>,
): Taken | undefined {
  const entry = add(driven.head, times(driven.way, driven.through));
  const { kind, diameter } = driven.fastener;
  const head = { widest: 2 * diameter, sunk: true };
  const parts = [
    { id: driven.a, from: driven.head, to: entry, bored: head },
    { id: driven.b, from: entry, to: driven.tip, bored: kind === "bolt" ? head : { widest: diameter, sunk: false } },
  ];
  const found = parts.flatMap(({ id, from, to, bored }): Taken[] => {
    const member = memberOf.get(id);
    if (!member) return [];
    const lines = shank(member, from, to, diameter / 2);
    return (cutsOf.get(id) ?? []).flatMap((cut): Taken[] => {
      if (cut.kind === "hole" && lines[0] && isForIt(cut, lines[0], bored)) return [];
      const lost = Math.max(...lines.map((line) => lostIn(cut, line, ownSize(member))));
      return lost > diameter / 2 ? [{ member: id, cut, lost, stands: lengthOf(subtract(to, from)) }] : [];
    });
  });
  return found.sort((p, q) => q.lost - p.lost)[0];
}

/** Inches of a fastener that stand beside the wood of a member cut to an outline, and in which; undefined under half a diameter. */
export function besideWood(
  driven: Driven,
  memberOf: ReadonlyMap<string, PlacedMember>,
): { readonly member: string; readonly out: number } | undefined {
  const entry = add(driven.head, times(driven.way, driven.through));
  const { diameter } = driven.fastener;
  const parts = [
    { id: driven.a, from: driven.head, to: entry },
    { id: driven.b, from: entry, to: driven.tip },
  ];
  const found = parts.flatMap(({ id, from, to }) => {
    const member = memberOf.get(id);
    if (!member?.outline) return [];
    const out = Math.max(...shank(member, from, to, diameter / 2).map((line) => airAlong(member, line.from, line.to)));
    return out > diameter / 2 ? [{ member: id, out }] : [];
  });
  return found.sort((p, q) => q.out - p.out)[0];
}

/** One problem for each cut and way of joining that meet. */
export function checkWoodTaken(
  joins: readonly Join[],
  members: readonly PlacedMember[],
  cutsOf: ReadonlyMap<string, readonly WorkedCut[]>,
): Problem[] {
  const memberOf = new Map(members.map((m) => [m.id, m]));
  return joins.flatMap(({ driven, at }) =>
    driven.flatMap((one): Problem[] => {
      const taken = woodTaken(one, memberOf, cutsOf);
      const beside = besideWood(one, memberOf);
      if (beside) {
        const facts = { fastener: one.fastener.name, a: one.a, b: one.b, ...beside };
        return [problem("fastener-off-wood", at, facts, memberOf.get(beside.member)?.at)];
      }
      if (!taken) return [];
      const { member, cut, lost, stands } = taken;
      const facts = { fastener: one.fastener.name, a: one.a, b: one.b, member, cut: wordFor(cut), lost, stands };
      return [problem("fastener-in-cut", at, facts, cut.at)];
    }),
  );
}

const wordFor = (cut: WorkedCut): string =>
  cut.kind === "box" || cut.kind === "pocket" || cut.kind === "prism"
    ? cut.name
    : cut.kind === "corners"
      ? "rounded corner"
      : cut.kind;

/** The middle of the shank and four lines along its skin, in the board's own frame. */
function shank(member: Lying, from: Vec3, to: Vec3, radius: number): Part[] {
  const blank = blankOf(member);
  const own = (p: Vec3): Vec3 => {
    const q = subtract(p, blank.origin);
    return [dot(q, blank.length), dot(q, blank.width), dot(q, blank.thickness)];
  };
  const line = { from: own(from), to: own(to) };
  const way = subtract(line.to, line.from);
  if (lengthOf(way) < 1e-9) return [line];
  const least = [0, 1, 2].reduce(
    (best, i) => (Math.abs(way[i] as number) < Math.abs(way[best] as number) ? i : best),
    0,
  );
  const one = unit(cross(way, [0, 1, 2].map((i) => (i === least ? 1 : 0)) as unknown as Vec3));
  const other = unit(cross(way, one));
  const skin = [one, times(one, -1), other, times(other, -1)].map((out) => times(out, radius * 0.99));
  return [line, ...skin.map((out) => ({ from: add(line.from, out), to: add(line.to, out) }))];
}

/** Inches of this line that lie in what the cut takes away. */
function lostIn(cut: WorkedCut, part: Part, size: Vec3): number {
  const long = lengthOf(subtract(part.to, part.from));
  const inside = (from: Span): number => spanned(from) * long;
  switch (cut.kind) {
    case "box":
    case "pocket":
      return inside(inBox(part, cut.min, cut.max));
    case "prism":
      return inside(inFigure(part, cut));
    case "slope":
      return inside(beyond(part, cut.normal, cut.offset));
    case "hole":
      return inside(inHole(cut, part, size));
    case "corners":
      return cut.corners.reduce((most, corner) => Math.max(most, inCorner(cut, corner, part, size) * long), 0);
    case "eased":
      return 0;
  }
}

/** The share of the line, from 0 to 1, with normal . p above the offset. */
function beyond({ from, to }: Part, normal: Vec3, offset: number): Span {
  const start = dot(normal, from) - offset;
  const rise = dot(normal, subtract(to, from));
  if (Math.abs(rise) < 1e-12) return start > 1e-9 ? [0, 1] : none;
  const at = -start / rise;
  return rise > 0 ? both([0, 1], [at, 1]) : both([0, 1], [0, at]);
}

function inBox(part: Part, min: Vec3, max: Vec3): Span {
  return [0, 1, 2].reduce<Span>(
    (span, i) => {
      const axis = [0, 1, 2].map((j) => (i === j ? 1 : 0)) as unknown as Vec3;
      return both(both(span, beyond(part, axis, min[i] as number)), beyond(part, times(axis, -1), -(max[i] as number)));
    },
    [0, 1],
  );
}

function inFigure(part: Part, { axis, outline, low, high }: WorkedCut & { kind: "prism" }): Span {
  const others = ownAxes.filter((own) => own !== axis);
  const spread = ([u, v]: readonly [number, number], along: number): Vec3 =>
    ownAxes.map((own) => (own === axis ? along : others.indexOf(own) === 0 ? u : v)) as unknown as Vec3;
  const through = both(beyond(part, spread([0, 0], 1), low), beyond(part, spread([0, 0], -1), -high));
  return outline.reduce<Span>((span, [x, y], i) => {
    const [nx, ny] = outline[(i + 1) % outline.length] ?? [x, y];
    const inward = [y - ny, nx - x] as const;
    return both(span, beyond(part, spread(inward, 0), inward[0] * x + inward[1] * y));
  }, through);
}

/** Inside a round column along one own axis, however long. */
function inRound({ from, to }: Part, axis: number, centre: Vec3, radius: number): Span {
  const flat = (v: Vec3): Vec3 => v.map((x, i) => (i === axis ? 0 : x)) as unknown as Vec3;
  const start = flat(subtract(from, centre));
  const way = flat(subtract(to, from));
  const [a, b, c] = [dot(way, way), dot(start, way), dot(start, start) - radius * radius];
  if (a < 1e-12) return c < -1e-9 ? [0, 1] : none;
  const root = b * b - a * c;
  return root <= 0 ? none : both([0, 1], [(-b - Math.sqrt(root)) / a, (-b + Math.sqrt(root)) / a]);
}

function inHole(cut: WorkedCut & { kind: "hole" }, part: Part, size: Vec3): Span {
  const axis = ownAxes.indexOf(cut.axis);
  const [start, stop] = holeReach(cut, size);
  const along = [0, 1, 2].map((i) => (i === axis ? 1 : 0)) as unknown as Vec3;
  const round = inRound(part, axis, cut.at3, cut.across / 2);
  return both(both(round, beyond(part, along, start)), beyond(part, times(along, -1), -stop));
}

/** Bored for this fastener: on its line, and no wider than it may be all the way, or blind where its head or nut may be sunk. */
function isForIt(cut: WorkedCut & { kind: "hole" }, { from, to }: Part, { widest, sunk }: Bored): boolean {
  const axis = ownAxes.indexOf(cut.axis);
  const off = (p: Vec3) => Math.hypot(...p.map((v, i) => (i === axis ? 0 : v - (cut.at3[i] as number))));
  return Math.max(off(from), off(to)) <= onLine && (cut.across <= widest + 1e-9 || (sunk && cut.deep !== undefined));
}

/** The share of the line in a corner's square but outside its round. */
function inCorner(
  cut: WorkedCut & { kind: "corners" },
  [farLength, farWidth]: readonly [0 | 1, 0 | 1],
  part: Part,
  size: Vec3,
): number {
  const through = ownAxes.indexOf(cut.axis);
  const flat = [0, 1, 2].filter((i) => i !== through);
  const far = [farLength, farWidth];
  const low: number[] = [0, 0, 0];
  const high: number[] = [...size];
  const centre: number[] = [0, 0, 0];
  flat.forEach((i, k) => {
    const room = size[i] as number;
    low[i] = far[k] === 1 ? room - cut.radius : 0;
    high[i] = far[k] === 1 ? room : cut.radius;
    centre[i] = far[k] === 1 ? room - cut.radius : cut.radius;
  });
  const square = inBox(part, low as unknown as Vec3, high as unknown as Vec3);
  return spanned(square) - spanned(both(square, inRound(part, through, centre as unknown as Vec3, cut.radius)));
}
