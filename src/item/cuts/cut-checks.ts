// Worked cuts -> problems: a cut that runs out of its board, or into another cut.
import { type Problem, problem } from "../../problems/problem.ts";
import type { Cut } from "../../recipe/recipe.ts";
import { sameLength } from "../../units/length.ts";
import { holeReach, ownAxes, ownEntry, ownSize } from "../frame.ts";
import type { Panel, WorkedCut } from "../item.ts";
import type { PlacedMember } from "../placed.ts";
import { sideAt } from "../sides.ts";

type Extent = { readonly min: readonly number[]; readonly max: readonly number[] };

/** The box round a cut that has a place of its own, in the member's own frame. */
function extentOf(cut: WorkedCut, size: readonly [number, number, number]): Extent | undefined {
  if (cut.kind === "box" || cut.kind === "pocket") return cut;
  if (cut.kind !== "hole") return undefined;
  const [start, stop] = holeReach(cut, size);
  const at = ownAxes.indexOf(cut.axis);
  const half = (cut.countersink ?? cut.across) / 2;
  return {
    min: cut.at3.map((v, i) => (i === at ? start : v - half)),
    max: cut.at3.map((v, i) => (i === at ? stop : v + half)),
  };
}

/** One problem for each side of the board the cut runs out of. */
export function checkCut(cut: Cut, worked: WorkedCut, member: PlacedMember, panel: Panel | undefined): Problem[] {
  const size = ownSize(member);
  const extent = extentOf(worked, size);
  if (!extent) return [];
  const { min, max } = extent;
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
      .map((other) =>
        problem("cuts-meet", cut.at, { member: member.id, a: wordFor(cut), b: wordFor(other) }, other.at),
      ),
  );
}

function wordFor(cut: WorkedCut): string {
  if (cut.kind === "pocket") return cut.name;
  if (cut.kind !== "box") return cut.kind;
  return ["notch", "lap", "half-lap", "housing"].includes(cut.name) ? "notch or lap" : cut.name;
}

/** Channels along the arrises and across each other are usual. */
const crossing: readonly string[] = ["rabbet", "dado", "groove"];

function meet(a: WorkedCut, b: WorkedCut, size: readonly [number, number, number]): boolean {
  const p = extentOf(a, size);
  const q = extentOf(b, size);
  if (!p || !q) return false;
  const apart = ownAxes.some(
    (_, i) =>
      (p.max[i] as number) <= (q.min[i] as number) + sameLength ||
      (q.max[i] as number) <= (p.min[i] as number) + sameLength,
  );
  if (apart) return false;
  if (a.kind === "hole" && b.kind === "hole") {
    // Two round holes the same way: their rims meet only if the centres are nearer than the radii together.
    if (a.axis !== b.axis) return true;
    const off = Math.hypot(...a.at3.map((v, i) => v - (b.at3[i] as number)));
    // A counterbore is one cut with its hole.
    if (off <= sameLength && a.at === b.at) return false;
    return off < (a.across + b.across) / 2 - sameLength;
  }
  if (a.kind === "hole" || b.kind === "hole") {
    const box = a.kind === "hole" ? b : a;
    return box.kind === "pocket" || (box.kind === "box" && box.name === "notch");
  }
  if (a.kind === "box" && b.kind === "box" && crossing.includes(a.name) && crossing.includes(b.name)) return false;
  return !isWithin(p, q, size) && !isWithin(q, p, size);
}

/** Whether `inner` is cut through the floor of `outer`: from the same side, within its sides, and deeper. */
function isWithin(inner: Extent, outer: Extent, size: readonly [number, number, number]): boolean {
  return ownAxes.some((_, axis) => {
    const others = [0, 1, 2].filter((i) => i !== axis);
    const low = (e: Extent, i: number) => e.min[i] as number;
    const high = (e: Extent, i: number) => e.max[i] as number;
    const inside = others.every(
      (i) => low(inner, i) >= low(outer, i) - sameLength && high(inner, i) <= high(outer, i) + sameLength,
    );
    const fromLow = low(inner, axis) <= sameLength && low(outer, axis) <= sameLength;
    const fromHigh = [inner, outer].every((e) => high(e, axis) >= (size[axis] as number) - sameLength);
    const deeper = high(inner, axis) - low(inner, axis) > high(outer, axis) - low(outer, axis) + sameLength;
    return inside && deeper && fromLow !== fromHigh;
  });
}
