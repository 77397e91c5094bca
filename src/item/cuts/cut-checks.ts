// Worked cuts -> problems: a cut that runs out of its board, or into another cut.
import { type Problem, problem } from "../../problems/problem.ts";
import type { Cut } from "../../recipe/recipe.ts";
import { sameLength } from "../../units/length.ts";
import { holeReach, ownAxes, ownEntry, ownSize } from "../frame.ts";
import type { Panel, WorkedCut } from "../item.ts";
import type { PlacedMember } from "../placed.ts";
import { sideAt } from "../sides.ts";

type Extent = { readonly min: readonly number[]; readonly max: readonly number[] };

/** The box round a cut, in the member's own frame. */
function extentOf(cut: WorkedCut, size: readonly [number, number, number]): Extent {
  if (cut.kind === "box") return cut;
  const [start, stop] = holeReach(cut, size);
  const at = ownAxes.indexOf(cut.axis);
  return {
    min: cut.at3.map((v, i) => (i === at ? start : v - cut.across / 2)),
    max: cut.at3.map((v, i) => (i === at ? stop : v + cut.across / 2)),
  };
}

/** One problem for each side of the board the cut runs out of. */
export function checkCut(cut: Cut, worked: WorkedCut, member: PlacedMember, panel: Panel | undefined): Problem[] {
  const size = ownSize(member);
  const { min, max } = extentOf(worked, size);
  return ownAxes.flatMap((axis, i) => {
    const room = ownEntry(size, axis);
    const out = (far: boolean, by: number) =>
      by > sameLength
        ? [
            problem("cut-outside", cut.at, {
              cut: cut.text,
              member: member.id,
              side: sideAt(member, panel, axis, far),
              by,
              axis,
              room,
            }),
          ]
        : [];
    return [...out(false, -(min[i] as number)), ...out(true, (max[i] as number) - room)];
  });
}

/** A problem for each new cut that runs into an earlier one; a hole may go through the floor of a lap. */
export function checkMeetings(
  member: PlacedMember,
  before: readonly WorkedCut[],
  cuts: readonly WorkedCut[],
): Problem[] {
  const size = ownSize(member);
  return cuts.flatMap((cut, i) =>
    [...before, ...cuts.slice(0, i)]
      .filter((other) => meet(cut, other, size))
      .slice(0, 1)
      .map((other) => problem("cuts-meet", cut.at, { member: member.id, a: cut.kind, b: other.kind }, other.at)),
  );
}

function meet(a: WorkedCut, b: WorkedCut, size: readonly [number, number, number]): boolean {
  const p = extentOf(a, size);
  const q = extentOf(b, size);
  const apart = ownAxes.some(
    (_, i) =>
      (p.max[i] as number) <= (q.min[i] as number) + sameLength ||
      (q.max[i] as number) <= (p.min[i] as number) + sameLength,
  );
  if (apart) return false;
  if (a.kind === "hole" && b.kind === "hole") {
    // Two round holes the same way: their rims meet only if the centres are nearer than the radii together.
    if (a.axis !== b.axis) return true;
    return Math.hypot(...a.at3.map((v, i) => v - (b.at3[i] as number))) < (a.across + b.across) / 2 - sameLength;
  }
  if (a.kind === "hole" || b.kind === "hole") {
    const box = a.kind === "box" ? a : (b as WorkedCut & { kind: "box" });
    return box.name === "notch";
  }
  return true;
}
