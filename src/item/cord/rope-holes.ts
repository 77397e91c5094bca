// A board with its cuts -> the through holes a rope can take, in item space, and what is wrong with them.
import type { Vec3 } from "../../geometry/shape.ts";
import { add, dot, times } from "../../geometry/vector.ts";
import { type Problem, problem } from "../../problems/problem.ts";
import { ropeHolePlay } from "../../recipe/cord-hole.ts";
import type { CordPart } from "../../recipe/recipe.ts";
import { sameLength } from "../../units/length.ts";
import { axisOf, isFar, type Side, sides } from "../../units/side.ts";
import type { Rope } from "../../yard/yard.ts";
import { blankOf, depthIn, ownAxes, ownEntry, unit } from "../frame.ts";
import type { WorkedCut } from "../item.ts";
import type { PlacedMember } from "../placed.ts";

/** Between a rope hole and any edge at least this many hole diameters of wood; common practice, no source. */
export const ropeHoleWood = 2;

/** Both ends of a hole, each with the direction out of the wood. */
export type Mouth = { readonly at: Vec3; readonly out: Vec3 };
export type RopeHole = {
  readonly member: PlacedMember;
  readonly cut: WorkedCut & { kind: "hole" };
  readonly centre: Vec3;
  readonly mouths: readonly [Mouth, Mouth];
};

/** Where a side of the item looks. */
export const wayTo = (side: Side): Vec3 => unit(axisOf[side], isFar(side) ? 1 : -1);

/** The side of the item a direction looks to most. */
export function sideToward(way: Vec3): Side {
  return sides.reduce((best, side) => (dot(way, wayTo(side)) > dot(way, wayTo(best)) + sameLength ? side : best));
}

/** The board's drilled through holes; with a side those nearer to it than the board's middle. */
export function ropeHolesOf(
  member: PlacedMember,
  cuts: readonly WorkedCut[],
  side: Side | undefined,
): readonly RopeHole[] {
  const blank = blankOf(member);
  const inItem = (own: readonly number[]): Vec3 =>
    ownAxes.reduce((point, axis, i) => add(point, times(blank[axis], own[i] as number)), blank.origin);
  const middle = inItem(blank.size.map((size) => size / 2));
  return cuts.flatMap((cut): RopeHole[] => {
    if (cut.kind !== "hole" || cut.deep !== undefined || cut.why !== "cut") return [];
    const size = ownEntry(blank.size, cut.axis);
    const along = (depth: number) => inItem(cut.at3.map((v, i) => (ownAxes[i] === cut.axis ? depth : v)));
    const centre = along(size / 2);
    const toSide = side && wayTo(side);
    if (toSide && dot(centre, toSide) <= dot(middle, toSide) + sameLength) return [];
    const out = blank[cut.axis];
    return [
      {
        member,
        cut,
        centre,
        mouths: [
          { at: along(0), out: times(out, -1) },
          { at: along(size), out },
        ],
      },
    ];
  });
}

/** A hole too narrow for its rope, or with too little wood beside it. */
export function checkRopeHole(hole: RopeHole, rope: Rope, name: string, part: CordPart): Problem[] {
  const { member, cut, centre } = hole;
  const thick = rope.diameter.valueOf();
  const wants = rope.diameter.add(ropeHolePlay).valueOf();
  const problems: Problem[] = [];
  if (cut.across < wants - sameLength) {
    const facts = { name, member: member.id, hole: cut.across, rope: thick, wants };
    problems.push(problem("cord-hole-narrow", part.at, facts, cut.at));
  }
  const blank = blankOf(member);
  const ways = ownAxes.filter((axis) => axis !== cut.axis).flatMap((axis) => [times(blank[axis], -1), blank[axis]]);
  const woods = ways.map((way) => ({ way, wood: depthIn(member, centre, way) - cut.across / 2 }));
  const [first, ...others] = woods as [(typeof woods)[number], ...typeof woods];
  const nearest = others.reduce((best, each) => (each.wood < best.wood - sameLength ? each : best), first);
  const least = ropeHoleWood * cut.across;
  if (nearest.wood < least - sameLength) {
    const facts = { member: member.id, hole: cut.across, wood: nearest.wood, side: sideToward(nearest.way), least };
    problems.push(problem("cord-hole-near-edge", cut.at, facts, part.at));
  }
  return problems;
}
