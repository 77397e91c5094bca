// The cuts of a recipe -> what is taken out of each member, in its own frame.
import { type Problem, problem } from "../../problems/problem.ts";
import type { Cut, CutRule } from "../../recipe/recipe.ts";
import { type OwnAxis, ownAxes, ownEntry, ownSize } from "../frame.ts";
import type { WorkedCut } from "../item.ts";
import type { PlacedMember, Placing } from "../placed.ts";
import { ownSideOf } from "../sides.ts";
import { checkCut, checkMeetings } from "./cut-checks.ts";
import { cutLength } from "./cut-length.ts";
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

const refused = (...problems: readonly Problem[]): Worked => ({ problems });

/** One cut of one member, however many times its spots make it. */
function workCut(cut: Cut, member: PlacedMember, placing: Placing): Worked {
  const sums = cut.kind === "hole" ? [cut.across, cut.deep] : [cut.along, cut.kind === "notch" ? cut.across : cut.deep];
  const sizes: number[] = [];
  for (const sum of sums) {
    if (!sum) continue;
    const size = cutLength(sum, placing);
    if (typeof size !== "number") return refused(size);
    if (size <= 0) return refused(problem("cut-no-size", sum.at, { cut: cut.text, size }));
    sizes.push(size);
  }
  const [first = 0, second = 0] = sizes;
  switch (cut.kind) {
    case "hole":
      return workHole(cut, first, sizes[1], member, placing);
    case "notch":
      return workNotch(cut, first, second, member, placing);
    case "lap":
      return workLap(cut, first, second, member, placing);
  }
}

function workHole(
  cut: Cut & { kind: "hole" },
  across: number,
  deep: number | undefined,
  member: PlacedMember,
  placing: Placing,
): Worked {
  const facts = { cut: cut.text, member: member.id };
  const into = cut.into && ownSideOf(member, placing.turned(member), cut.into);
  if (deep !== undefined && !into) return refused(problem("cut-side-missing", cut.at, facts));
  const axis = into?.own ?? "thickness";
  const full = ownEntry(ownSize(member), axis);
  if (deep !== undefined && cut.into && deep >= full) {
    return refused(problem("cut-too-deep", cut.at, { ...facts, deep, full, into: cut.into }));
  }
  const free = ownAxes.filter((a) => a !== axis);
  const rooms = free.map((a): Room => ({ axis: a, extent: 0 }));
  const spotted = spotsOf(cut, member, placing, rooms);
  if (!("get" in spotted)) return refused(...spotted);
  const spots = everyPick(free.map((a) => spotted.get(a) ?? []));
  const holes = spots.map(
    (spot): WorkedCut => ({
      kind: "hole",
      why: "cut",
      at: cut.at,
      across,
      axis,
      at3: vector((a) => (a === axis ? 0 : (spot[free.indexOf(a)] as number))),
      ...(deep === undefined ? {} : { deep }),
      from: into?.far ? "high" : "low",
    }),
  );
  return checked(cut, member, placing, holes);
}

function workNotch(
  cut: Cut & { kind: "notch" },
  along: number,
  across: number,
  member: PlacedMember,
  placing: Placing,
): Worked {
  const rooms: readonly Room[] = [
    { axis: "length", extent: along },
    { axis: "width", extent: across },
  ];
  const spotted = spotsOf(cut, member, placing, rooms);
  if (!("get" in spotted)) return refused(...spotted);
  const spots = everyPick(rooms.map(({ axis }) => spotted.get(axis) ?? []));
  const thickness = ownEntry(ownSize(member), "thickness");
  const notches = spots.map(
    ([l = 0, w = 0]): WorkedCut => ({
      kind: "box",
      why: "cut",
      name: "notch",
      at: cut.at,
      min: [l, w, 0],
      max: [l + along, w + across, thickness],
    }),
  );
  return checked(cut, member, placing, notches);
}

function workLap(
  cut: Cut & { kind: "lap" },
  along: number,
  deep: number,
  member: PlacedMember,
  placing: Placing,
): Worked {
  const facts = { cut: cut.text, member: member.id, into: cut.into };
  const whole = ownSize(member);
  const { own, far } = ownSideOf(member, placing.turned(member), cut.into);
  if (own === "length") return refused(problem("lap-into-end", cut.at, facts));
  const full = ownEntry(whole, own);
  if (deep >= full) return refused(problem("cut-too-deep", cut.at, { ...facts, deep, full }));
  const spotted = spotsOf(cut, member, placing, [{ axis: "length", extent: along }]);
  if (!("get" in spotted)) return refused(...spotted);
  const laps = (spotted.get("length") ?? []).map(
    (l): WorkedCut => ({
      kind: "box",
      why: "cut",
      name: "lap",
      at: cut.at,
      min: vector((a) => (a === "length" ? l : a === own && far ? full - deep : 0)),
      max: vector((a) => (a === "length" ? l + along : a === own && !far ? deep : ownEntry(whole, a))),
    }),
  );
  return checked(cut, member, placing, laps);
}

const vector = (entry: (axis: OwnAxis) => number) => [entry("length"), entry("width"), entry("thickness")] as const;

/** Every pick of one number from each list, in order. */
const everyPick = (lists: readonly (readonly number[])[]): number[][] =>
  lists.reduce<number[][]>((found, list) => found.flatMap((f) => list.map((n) => [...f, n])), [[]]);

function checked(cut: Cut, member: PlacedMember, placing: Placing, cuts: readonly WorkedCut[]): Worked {
  const problems = cuts.flatMap((worked) => checkCut(cut, worked, member, placing.turned(member)));
  return problems.length > 0 ? { problems } : { cuts };
}
