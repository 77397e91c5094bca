// The cuts of a recipe -> what is taken out of each member, in its own frame.
import { type Problem, problem } from "../../problems/problem.ts";
import type { Cut, CutRule, Sum } from "../../recipe/recipe.ts";
import { inches } from "../../units/length.ts";
import { type OwnAxis, ownAxes, ownEntry, ownSize } from "../frame.ts";
import type { WorkedCut } from "../item.ts";
import type { PlacedMember, Placing } from "../placed.ts";
import { ownSideOf } from "../sides.ts";
import { checkCut, checkMeetings } from "./cut-checks.ts";
import { type Room, spotsOf } from "./spots.ts";

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
  }
  return { cuts, problems };
}

type Worked = { readonly cuts: readonly WorkedCut[] } | { readonly problems: readonly Problem[] };

function workCut(cut: Cut, member: PlacedMember, placing: Placing): Worked {
  const bad = (...problems: Problem[]): Worked => ({ problems });
  const sizes: number[] = [];
  for (const sum of cut.kind === "hole"
    ? [cut.across, cut.deep]
    : cut.kind === "notch"
      ? [cut.along, cut.across]
      : [cut.along, cut.deep]) {
    if (!sum) continue;
    const size = lengthOf(sum, placing);
    if (typeof size !== "number") return bad(size);
    if (size <= 0) return bad(problem("cut-no-size", sum.at, { cut: cut.text, size }));
    sizes.push(size);
  }
  const [first = 0, second] = sizes;
  const facts = { cut: cut.text, member: member.id };
  const into = cut.kind !== "notch" && cut.into ? ownSideOf(member, placing.turned(member), cut.into) : undefined;
  const whole = ownSize(member);

  if (cut.kind === "hole") {
    if (cut.deep && !into) return bad(problem("cut-side-missing", cut.at, facts));
    const axis = into?.own ?? "thickness";
    const full = ownEntry(whole, axis);
    if (second !== undefined && second >= full) {
      return bad(problem("cut-too-deep", cut.at, { ...facts, deep: second, full, into: cut.into ?? "front" }));
    }
    const free = ownAxes.filter((a) => a !== axis);
    const spotted = spotsOf(
      cut,
      member,
      placing,
      free.map((a) => ({ axis: a, extent: 0 })),
    );
    if (!("get" in spotted)) return bad(...spotted);
    const holes = pairs(free.map((a) => spotted.get(a) ?? [])).map(
      (spot): WorkedCut => ({
        kind: "hole",
        why: "cut",
        at: cut.at,
        across: first,
        axis,
        at3: vector((a) => (a === axis ? 0 : (spot[free.indexOf(a)] as number))),
        ...(second === undefined ? {} : { deep: second }),
        from: into?.far ? "high" : "low",
      }),
    );
    return checked(cut, member, placing, holes);
  }

  if (cut.kind === "notch") {
    const rooms: Room[] = [
      { axis: "length", extent: first },
      { axis: "width", extent: second ?? 0 },
    ];
    const spotted = spotsOf(cut, member, placing, rooms);
    if (!("get" in spotted)) return bad(...spotted);
    const boxes = pairs([spotted.get("length") ?? [], spotted.get("width") ?? []]).map(
      ([l = 0, w = 0]): WorkedCut => ({
        kind: "box",
        why: "cut",
        name: "notch",
        at: cut.at,
        min: [l, w, 0],
        max: [l + first, w + (second ?? 0), whole[2]],
      }),
    );
    return checked(cut, member, placing, boxes);
  }

  if (!into || into.own === "length") return bad(problem("lap-into-end", cut.at, { ...facts, into: cut.into }));
  const deep = second ?? 0;
  const full = ownEntry(whole, into.own);
  if (deep >= full) return bad(problem("cut-too-deep", cut.at, { ...facts, deep, full, into: cut.into }));
  const spotted = spotsOf(cut, member, placing, [{ axis: "length", extent: first }]);
  if (!("get" in spotted)) return bad(...spotted);
  const laps = (spotted.get("length") ?? []).map(
    (l): WorkedCut => ({
      kind: "box",
      why: "cut",
      name: "lap",
      at: cut.at,
      min: vector((a) => (a === "length" ? l : a === into.own && into.far ? full - deep : 0)),
      max: vector((a) => (a === "length" ? l + first : a === into.own && !into.far ? deep : ownEntry(whole, a))),
    }),
  );
  return checked(cut, member, placing, laps);
}

const vector = (entry: (axis: OwnAxis) => number) => [entry("length"), entry("width"), entry("thickness")] as const;

/** Every pick of one number from each list, in order. */
const pairs = (lists: readonly (readonly number[])[]): number[][] =>
  lists.reduce<number[][]>((found, list) => found.flatMap((f) => list.map((n) => [...f, n])), [[]]);

function checked(cut: Cut, member: PlacedMember, placing: Placing, cuts: readonly WorkedCut[]): Worked {
  const problems = cuts.flatMap((worked) => checkCut(cut, worked, member, placing.turned(member)));
  return problems.length > 0 ? { problems } : { cuts };
}

/** A sum that has to be a length, in inches. */
function lengthOf(sum: Sum, placing: Placing): number | Problem {
  const worked = placing.work(sum, undefined);
  if ("code" in worked) return worked;
  if (worked.kind !== "length")
    return problem("wants-a-length", sum.at, { is: worked.kind === "angle" ? "an angle" : "a plain number" });
  return inches(worked.value);
}
