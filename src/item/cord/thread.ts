// One cord rule -> the way its rope goes: from mouth to mouth of the holes, over hangers, to its ends.
import type { Vec3 } from "../../geometry/shape.ts";
import { dot, length, subtract } from "../../geometry/vector.ts";
import { type Problem, problem } from "../../problems/problem.ts";
import type { CordPart, CordRule } from "../../recipe/recipe.ts";
import { sameLength } from "../../units/length.ts";
import type { Side } from "../../units/side.ts";
import type { Rope } from "../../yard/yard.ts";
import { cutLength } from "../cuts/cut-length.ts";
import { boxOf } from "../frame.ts";
import type { WorkedCut } from "../item.ts";
import type { PlacedMember, Placing } from "../placed.ts";
import { checkRopeHole, type Mouth, type RopeHole, ropeHolesOf, sideToward, wayTo } from "./rope-holes.ts";

/** A point of the way; `out` is the direction away from the wood it lies on. */
export type WayPoint =
  | { readonly kind: "mouth"; readonly at: Vec3; readonly out: Vec3; readonly hole: RopeHole }
  | { readonly kind: "hanger" | "loop"; readonly at: Vec3; readonly part: CordPart };

/** Two points next to each other, and whether the rope is inside the wood there, lies along it, or hangs free. */
export type Stretch = {
  readonly from: WayPoint;
  readonly to: WayPoint;
  readonly kind: "through" | "between" | "hanging";
};

type CutsOf = ReadonlyMap<string, readonly WorkedCut[]>;

/** Holes that ropes have gone through, by member and cut, with the name of the rope. */
export type Taken = Map<WorkedCut, string>;

/** The points of the way in order, or what keeps the rope from going it. */
export function threadCord(
  rule: CordRule,
  rope: Rope,
  placing: Placing,
  cutsOf: CutsOf,
  taken: Taken,
): readonly WayPoint[] | readonly Problem[] {
  const problems: Problem[] = [];
  const parts = rule.way.map((part) =>
    part.kind === "holes" ? holesFor(part, rule, rope, placing, cutsOf, taken, problems) : part,
  );
  if (!rule.way.some((part) => part.kind === "holes"))
    problems.push(problem("cord-goes-nowhere", rule.at, { name: rule.name.text }));
  if (problems.length > 0) return problems;
  const points: WayPoint[] = [];
  let side: Side = rule.from;
  parts.forEach((part, i) => {
    if (!("kind" in part)) {
      for (const hole of part.holes) {
        const entered = enter(hole, part.toward, side);
        if (!entered) {
          const ways = hole.mouths.map((mouth) => sideToward(mouth.out));
          const facts = { name: rule.name.text, member: hole.member.id, from: side, ways, said: rule.fromSaid };
          problems.push(problem("cord-side-wrong", part.at, facts, hole.cut.at));
          return;
        }
        const [into, out] = entered;
        points.push({ kind: "mouth", ...into, hole }, { kind: "mouth", ...out, hole });
        side = sideToward(out.out);
      }
      return;
    }
    // A rope that starts at a hanger is tied there before it goes on to its first hole.
    const next = parts[i + 1];
    const first = next && !("kind" in next) ? next.holes[0] : undefined;
    const after = first && enter(first, (next as Run).toward, side)?.[0];
    const hung = hangerAt(part, points.at(-1)?.at ?? after?.at, rule, placing, i === 0 || i === parts.length - 1);
    if ("code" in hung) problems.push(...(problems.length > 0 && hung.code === "cord-goes-nowhere" ? [] : [hung]));
    else points.push({ kind: part.kind as "hanger" | "loop", at: hung.at, part });
  });
  return problems.length > 0 ? problems : points;
}

type Run = { readonly at: CordPart["at"]; readonly toward: Side; readonly holes: readonly RopeHole[] };

function holesFor(
  part: CordPart & { kind: "holes" },
  rule: CordRule,
  rope: Rope,
  placing: Placing,
  cutsOf: CutsOf,
  taken: Taken,
  problems: Problem[],
): Run {
  const none = { at: part.at, toward: part.toward, holes: [] };
  const members = placing.find(part.of, undefined);
  if ("code" in members) {
    problems.push(members);
    return none;
  }
  const name = rule.name.text;
  const found = members.map((member) => ropeHolesOf(member, cutsOf.get(member.id) ?? [], part.side));
  const without = members.filter((_, i) => found[i]?.length === 0);
  if (without.length > 0) {
    const facts = { name, members: without.map((m) => m.id), side: part.side };
    problems.push(problem("cord-no-hole", part.at, facts, without[0]?.at));
    return none;
  }
  const way = wayTo(part.toward);
  const holes = found.flat().sort((a, b) => dot(a.centre, way) - dot(b.centre, way));
  for (const [i, hole] of holes.entries()) {
    const before = holes[i - 1];
    if (before && dot(hole.centre, way) - dot(before.centre, way) <= sameLength) {
      const facts = { name, a: before.member.id, b: hole.member.id, side: part.toward };
      problems.push(problem("cord-holes-level", part.at, facts, hole.cut.at));
      return none;
    }
    const by = taken.get(hole.cut);
    if (by !== undefined) {
      problems.push(problem("cord-hole-taken", part.at, { name, member: hole.member.id, by }, hole.cut.at));
      return none;
    }
    problems.push(...checkRopeHole(hole, rope, name, part));
  }
  for (const hole of holes) taken.set(hole.cut, name);
  return { at: part.at, toward: part.toward, holes };
}

/** The mouth the rope goes in at and the one it comes out of: straight on where the hole runs its way, else from `side`. */
function enter({ mouths: [a, b] }: RopeHole, toward: Side, side: Side): readonly [Mouth, Mouth] | undefined {
  const straight = dot(b.out, wayTo(toward));
  if (Math.abs(straight) > Math.SQRT1_2) return straight > 0 ? [a, b] : [b, a];
  const facing = dot(b.out, wayTo(side));
  if (Math.abs(facing) < Math.SQRT1_2) return undefined;
  return facing > 0 ? [b, a] : [a, b];
}

/** A hanger lies over the middle of what it is above; a loop straight over the hole next to it; both in the plane of that hole's mouth. */
function hangerAt(
  part: CordPart & { kind: "hanger" | "loop" },
  beside: Vec3 | undefined,
  rule: CordRule,
  placing: Placing,
  isEnd: boolean,
): { readonly at: Vec3 } | Problem {
  const name = rule.name.text;
  if (part.kind === "loop" && !isEnd) return problem("cord-loop-inside", part.at, { name, part: part.text });
  const above = cutLength(part.above, placing);
  if (typeof above !== "number") return above;
  const members = placing.find(part.of, undefined);
  if ("code" in members) return members;
  if (!beside) return problem("cord-goes-nowhere", rule.at, { name });
  const z = Math.max(...tops(members)) + above;
  if (z <= beside[2] + sameLength)
    return problem("cord-hanger-low", part.at, { name, part: part.text, below: beside[2] - z });
  if (part.kind === "loop") return { at: [beside[0], beside[1], z] };
  const lefts = members.map((m) => boxOf(m).min[0]);
  const rights = members.map((m) => boxOf(m).max[0]);
  return { at: [(Math.min(...lefts) + Math.max(...rights)) / 2, beside[1], z] };
}

const tops = (members: readonly PlacedMember[]): number[] => members.map((m) => boxOf(m).max[2]);

/** The stretches of a way. */
export function stretchesOf(points: readonly WayPoint[]): readonly Stretch[] {
  return points.slice(1).map((to, i): Stretch => {
    const from = points[i] as WayPoint;
    if (from.kind !== "mouth" || to.kind !== "mouth") return { from, to, kind: "hanging" };
    return { from, to, kind: from.hole === to.hole ? "through" : "between" };
  });
}

export const runOf = ({ from, to }: Stretch): number => length(subtract(to.at, from.at));
