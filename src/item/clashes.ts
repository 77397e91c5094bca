// Overlaps that are left after the cuts -> problems: two bodies in one place, and which way they'd have to part.
import { contactOf } from "../geometry/contact.ts";
import { isClash, overlapOf } from "../geometry/overlap.ts";
import type { Vec3 } from "../geometry/shape.ts";
import type { Box, Solid } from "../geometry/solid.ts";
import { inInches } from "../geometry/tolerance.ts";
import { type Problem, problem } from "../problems/problem.ts";
import { sameLength } from "../units/length.ts";
import { type Axis, axes } from "../units/side.ts";
import { boxOf } from "./frame.ts";
import type { Overlap, PlacedFitting } from "./item.ts";
import type { PlacedMember } from "./placed.ts";

/** Told once for each pair of lines, by the pair that shares most; `more` counts the others. */
export function checkClashes(members: readonly PlacedMember[], overlaps: readonly Overlap[]): Problem[] {
  const byId = new Map(members.map((m) => [m.id, m]));
  const lines = new Map<string, Overlap[]>();
  for (const overlap of overlaps) {
    const key = [overlap.a, overlap.b].map((id) => JSON.stringify(byId.get(id)?.at)).join(" ");
    lines.set(key, [...(lines.get(key) ?? []), overlap]);
  }
  return [...lines.values()].map((clashes) => {
    const worst = clashes.reduce((w, c) => (c.volume > w.volume ? c : w));
    const [a, b] = [byId.get(worst.a), byId.get(worst.b)];
    if (!a || !b) throw new Error(`an overlap names ${worst.a} and ${worst.b}, one of them unknown`);
    const [p, q] = [boxOf(a), boxOf(b)];
    const room = axes.map(
      (_, i) => Math.min(p.max[i] as number, q.max[i] as number) - Math.max(p.min[i] as number, q.min[i] as number),
    );
    // The least way out: b moves toward the end of a that it is nearer to, and into nothing else.
    const ways = axes.flatMap((axis, i) => [
      { axis, far: true, by: (p.max[i] as number) - (q.min[i] as number) },
      { axis, far: false, by: (q.max[i] as number) - (p.min[i] as number) },
    ]);
    const part = ways
      .filter(({ axis, far, by }) => isFree(moved(q, axis, far ? by : -by), b, members))
      .reduce<(typeof ways)[number] | undefined>(
        (least, w) => (least && w.by >= least.by - 1e-9 ? least : w),
        undefined,
      );
    const facts = { a: a.id, b: b.id, room, part, volume: worst.volume, more: clashes.length - 1 };
    return problem("two-in-one-place", a.at, facts, b.at);
  });
}

function moved({ min, max }: Box, axis: Axis, by: number): Box {
  const shift = (v: Vec3): Vec3 => v.map((x, i) => (axes[i] === axis ? x + by : x)) as unknown as Vec3;
  return { min: shift(min), max: shift(max) };
}

/** Whether a member could lie in this box: above the floor and in no other's box. */
const isFree = (box: Box, member: PlacedMember, members: readonly PlacedMember[]): boolean =>
  box.min[2] >= Math.min(0, boxOf(member).min[2]) - sameLength &&
  members.every((other) => {
    if (other.id === member.id) return true;
    const { min, max } = boxOf(other);
    return axes.some(
      (_, i) =>
        (box.max[i] as number) <= (min[i] as number) + inInches.clashDepth ||
        (max[i] as number) <= (box.min[i] as number) + inInches.clashDepth,
    );
  });

/** A fitting in its place shares no room with a board, cut as it is, and lies on one. */
export function checkFittings(
  fittings: readonly PlacedFitting[],
  members: readonly { readonly placed: PlacedMember; readonly solid: Solid }[],
): Problem[] {
  return fittings.flatMap(({ id, solid: body, at }): Problem[] => {
    if (!body) return [];
    const clash = members.find((m) => isClash(overlapOf(m.solid, body)));
    if (clash) {
      const { volume, depth } = overlapOf(clash.solid, body);
      return [problem("fitting-in-wood", at, { fitting: id, member: clash.placed.id, volume, depth }, clash.placed.at)];
    }
    const lies = members.some((m) => contactOf(m.solid, body).area > 0);
    return lies ? [] : [problem("fitting-in-air", at, { fitting: id })];
  });
}
