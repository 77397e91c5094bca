// A member cut to an outline, or with slanted ends -> whether a hole or a shank stands in its wood.
import { isInWood } from "../../geometry/outline-faults.ts";
import { crossingsOf, linesOf } from "../../geometry/outline-lines.ts";
import type { Vec2, Vec3 } from "../../geometry/shape.ts";
import { dot, subtract } from "../../geometry/vector.ts";
import { type Problem, problem } from "../../problems/problem.ts";
import type { Cut } from "../../recipe/recipe.ts";
import { sameLength } from "../../units/length.ts";
import { blankOf, holeReach, type Lying, ownAxes, ownSize } from "../frame.ts";
import type { WorkedCut } from "../item.ts";
import type { PlacedMember } from "../placed.ts";

const flat = ([x, y]: Vec3): Vec2 => [x, y];

/** Inches of a line in the board's own frame that lie in no wood of its outline. */
export function airAlong(member: Lying, from: Vec3, to: Vec3): number {
  if (!member.outline) return 0;
  const lines = linesOf(member.outline);
  const long = Math.hypot(...subtract(to, from));
  const [a, b] = [flat(from), flat(to)];
  const stops = [0, ...crossingsOf(lines, a, b).filter((s) => s > 0 && s < 1), 1];
  return stops.slice(1).reduce((air, stop, i) => {
    const start = stops[i] ?? 0;
    const middle = (start + stop) / 2;
    const at: Vec2 = [a[0] + (b[0] - a[0]) * middle, a[1] + (b[1] - a[1]) * middle];
    return isInWood(lines, at) ? air : air + (stop - start) * long;
  }, 0);
}

/** A hole that isn't wholly in wood, and any other cut that takes none away. */
export function checkInWood(cut: Cut, worked: WorkedCut, member: PlacedMember): Problem[] {
  const facts = { cut: cut.text, member: member.id };
  if (worked.kind === "hole") {
    const by = Math.max(outOfOutline(worked, member), outOfTrims(worked, member));
    return by > sameLength ? [problem("hole-off-wood", cut.at, { ...facts, by })] : [];
  }
  if ((worked.kind !== "box" && worked.kind !== "pocket") || !member.outline) return [];
  const lines = linesOf(member.outline);
  const shares = [0.02, 0.26, 0.5, 0.74, 0.98];
  const { min, max } = worked;
  const inWood = shares.some((s) =>
    shares.some((t) => isInWood(lines, [min[0] + s * (max[0] - min[0]), min[1] + t * (max[1] - min[1])])),
  );
  return inWood ? [] : [problem("cut-in-air", cut.at, facts)];
}

type Hole = WorkedCut & { kind: "hole" };

/** How far a hole stands out of the wood of an outline. Right through the width or the length it may pass cut-outs on its way. */
function outOfOutline(hole: Hole, member: PlacedMember): number {
  if (!member.outline) return 0;
  const radius = (hole.countersink ?? hole.across) / 2;
  const lines = linesOf(member.outline);
  if (hole.axis === "thickness") {
    const at = flat(hole.at3);
    const gap = Math.min(
      ...lines.flatMap((points) => points.map((a, i) => gapTo(at, a, points[(i + 1) % points.length] ?? a))),
    );
    return isInWood(lines, at) ? radius - gap : radius + gap;
  }
  const [from, to] = endsOf(hole, member);
  const air = airAlong(member, from, to);
  const long = Math.hypot(...subtract(to, from));
  if (hole.deep === undefined) return air > long - sameLength ? long : 0;
  return air > radius ? air : 0;
}

/** How far a hole stands past a plane that trims the board. */
function outOfTrims(hole: Hole, member: PlacedMember): number {
  const blank = blankOf(member);
  const at = ownAxes.indexOf(hole.axis);
  const radius = (hole.countersink ?? hole.across) / 2;
  return blank.trims.reduce((most, { point, normal }) => {
    const own = ownAxes.map((axis) => dot(normal, blank[axis])) as unknown as Vec3;
    const offset = dot(normal, subtract(point, blank.origin));
    // What runs out at its own end, as through a bevelled face, is how a hole is drilled.
    const across = Math.sqrt(Math.max(0, 1 - (own[at] as number) ** 2));
    if (across < 0.5) return most;
    const reach = Math.max(...endsOf(hole, member).map((end) => dot(own, end))) + radius * across - offset;
    return Math.max(most, reach);
  }, 0);
}

/** The middles of a hole's mouth and bottom in the board's own frame. */
function endsOf(hole: Hole, member: PlacedMember): readonly [Vec3, Vec3] {
  const at = ownAxes.indexOf(hole.axis);
  const [start, stop] = holeReach(hole, ownSize(member));
  const end = (along: number) => hole.at3.map((v, i) => (i === at ? along : v)) as unknown as Vec3;
  return [end(start), end(stop)];
}

function gapTo([x, y]: Vec2, [ax, ay]: Vec2, [bx, by]: Vec2): number {
  const [ux, uy] = [bx - ax, by - ay];
  const square = ux * ux + uy * uy;
  const t = square === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * ux + (y - ay) * uy) / square));
  return Math.hypot(ax + t * ux - x, ay + t * uy - y);
}
