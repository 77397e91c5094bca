// The cuts of a recipe -> what is taken out of each member, in its own frame.
import { type Problem, problem } from "../../problems/problem.ts";
import type { Cut, CutRule } from "../../recipe/recipe.ts";
import { sameLength } from "../../units/length.ts";
import type { WorkedCut } from "../item.ts";
import type { PlacedMember, Placing } from "../placed.ts";
import { checkMeetings } from "./cut-checks.ts";
import { workBox } from "./work-box.ts";
import { workArris, workCorners, workEased } from "./work-corners.ts";
import { workHole } from "./work-hole.ts";
import { slopeLeft, workSlope } from "./work-slope.ts";
import type { Worked } from "./worked.ts";

/** Cuts by member id; members without cuts have no entry. A cut with a problem is left out. */
export function workedCuts(
  rules: readonly CutRule[],
  placing: Placing,
): { cuts: ReadonlyMap<string, readonly WorkedCut[]>; problems: Problem[] } {
  const cuts = new Map<string, WorkedCut[]>();
  const problems: Problem[] = [];
  for (const rule of rules) {
    const members = placing.find(rule.of, undefined);
    if ("code" in members) {
      problems.push(members);
      continue;
    }
    for (const member of members) {
      for (const cut of rule.cuts) {
        const worked = workCut(cut, member, placing);
        if ("problems" in worked) {
          problems.push(...worked.problems);
          continue;
        }
        const before = cuts.get(member.id) ?? [];
        problems.push(...checkMeetings(member, before, worked.cuts));
        cuts.set(member.id, [...before, ...worked.cuts]);
      }
    }
    problems.push(...idleSlopes(rule, members, placing));
  }
  return { cuts, problems };
}

/** One cut of one member, however many times its spots make it. */
function workCut(cut: Cut, member: PlacedMember, placing: Placing): Worked {
  switch (cut.kind) {
    case "hole":
      return workHole(cut, member, placing);
    case "rounded corners":
      return workCorners(cut, member, placing);
    case "eased arrises":
      return workEased(cut, member, placing);
    case "rounded arris":
      return workArris(cut, member, placing);
    case "slope":
      return workSlope(cut, member, placing);
    default:
      return workBox(cut, member, placing);
  }
}

/** A slope that reaches none of the members it is meant for. */
function idleSlopes(rule: CutRule, members: readonly PlacedMember[], placing: Placing): Problem[] {
  return rule.cuts.flatMap((cut) => {
    if (cut.kind !== "slope") return [];
    const left = members.map((member) => slopeLeft(cut, member, placing));
    const under = left.flatMap((each) => (each === undefined || each.over > sameLength ? [] : [-each.over]));
    if (under.length < members.length || under.length === 0) return [];
    return [problem("slope-misses", cut.at, { cut: cut.text, what: rule.of.text, by: Math.min(...under) })];
  });
}
