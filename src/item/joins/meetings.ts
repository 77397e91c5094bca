// Members and their boxes -> where they share room, and how far apart the nearest two are.

import type { Vec3 } from "../../geometry/shape.ts";
import type { Box } from "../../geometry/solid.ts";
import { inInches } from "../../geometry/tolerance.ts";
import { boxOf } from "../frame.ts";
import type { PlacedMember } from "../placed.ts";

/** The same for a with b and b with a. */
export const pairKey = (a: string, b: string): string => (a < b ? `${a} ${b}` : `${b} ${a}`);

/** Each a with each b, a pair once whichever way round; never a member with itself. */
export function pairsOf(
  a: readonly PlacedMember[],
  b: readonly PlacedMember[],
): (readonly [PlacedMember, PlacedMember])[] {
  const seen = new Set<string>();
  const pairs: (readonly [PlacedMember, PlacedMember])[] = [];
  for (const one of a) {
    for (const other of b) {
      if (one.id === other.id || seen.has(`${other.id} ${one.id}`)) continue;
      seen.add(`${one.id} ${other.id}`);
      pairs.push([one, other]);
    }
  }
  return pairs;
}

/** The box two uncut boards have in common; undefined where it is thinner than a clash. */
export function sharedBox(a: PlacedMember, b: PlacedMember): Box | undefined {
  const p = boxOf(a);
  const q = boxOf(b);
  const min = p.min.map((v, i) => Math.max(v, q.min[i] as number)) as unknown as Vec3;
  const max = p.max.map((v, i) => Math.min(v, q.max[i] as number)) as unknown as Vec3;
  return max.every((v, i) => v - (min[i] as number) > inInches.clashDepth) ? { min, max } : undefined;
}

/** Inches between the two boxes; 0 where they touch or share room. */
export function apart(a: PlacedMember, b: PlacedMember): number {
  const p = boxOf(a);
  const q = boxOf(b);
  return Math.hypot(
    ...p.min.map((v, i) => Math.max(0, v - (q.max[i] as number), (q.min[i] as number) - (p.max[i] as number))),
  );
}
