// Half-laps and let-in joins -> the boxes they take out of the boards.
import type { Box } from "../../geometry/solid.ts";
import { dot } from "../../geometry/vector.ts";
import { type Problem, problem } from "../../problems/problem.ts";
import type { JoinRule, JoinWay } from "../../recipe/recipe.ts";
import { sameLength } from "../../units/length.ts";
import { type Axis, axes } from "../../units/side.ts";
import { along, boxOf, ownBox, ownSize, unit } from "../frame.ts";
import type { WorkedCut } from "../item.ts";
import type { PlacedMember, Placing } from "../placed.ts";
import { headingOf } from "../sides.ts";
import { pairKey, pairsOf, sharedBox } from "./meetings.ts";
import { carve, crossingOf, cutsThrough } from "./slant-laps.ts";

type Cutting = { readonly member: string; readonly cut: WorkedCut };

/** What the joins of a recipe cut away, by member id; `refused` are the pairs that can't be cut. References that mean nothing are told by the joins themselves. */
export function joinCuts(
  rules: readonly JoinRule[],
  placing: Placing,
): { cuts: ReadonlyMap<string, readonly WorkedCut[]>; refused: ReadonlySet<string>; problems: Problem[] } {
  const cuts = new Map<string, WorkedCut[]>();
  const refused = new Set<string>();
  const problems: Problem[] = [];
  for (const rule of rules) {
    const a = placing.find(rule.a, undefined);
    const b = placing.find(rule.b, undefined);
    const way = rule.ways.find((w) => w.kind === "half-lap" || w.kind === "let in");
    if (!way || "code" in a || "code" in b) continue;
    for (const [one, other] of pairsOf(a, b)) {
      const shared = sharedBox(one, other);
      if (!shared) continue;
      const found =
        one.slant || other.slant
          ? onTheSlant(way, rule, one, other, placing)
          : way.kind === "half-lap"
            ? halfLap(way, rule, one, other, shared, placing)
            : letIn(way, one, other, shared);
      if ("code" in found) {
        problems.push(found);
        refused.add(pairKey(one.id, other.id));
      } else for (const { member, cut } of found) cuts.set(member, [...(cuts.get(member) ?? []), cut]);
    }
  }
  return { cuts, refused, problems };
}

/** The way through both boards where they cross: neither of their lengths; the thinner way where they run alike. */
function crossingAxis(a: PlacedMember, b: PlacedMember): Axis {
  const across = axes.filter((axis) => axis !== a.lie.length && axis !== b.lie.length);
  return across.includes(a.lie.thickness) ? a.lie.thickness : (across[0] as Axis);
}

function halfLap(
  way: JoinWay,
  rule: JoinRule,
  a: PlacedMember,
  b: PlacedMember,
  shared: Box,
  placing: Placing,
): Cutting[] | Problem {
  const axis = crossingAxis(a, b);
  const panel = a.panel === b.panel ? placing.turned(a) : undefined;
  // a keeps the front or upper half: of the panel that both belong to, else of the item; left where neither says.
  const kept = [headingOf("front", panel), headingOf("top", panel), headingOf("left", panel)].find(
    (h) => h.axis === axis,
  );
  if (!kept) throw new Error(`no side looks along ${axis}`);
  const low = along(shared.min, axis);
  const high = along(shared.max, axis);
  const middle = (low + high) / 2;
  const half = (upper: boolean): Box => ({
    min: axes.map((x, i) => (x === axis && upper ? middle : (shared.min[i] as number))) as unknown as Box["min"],
    max: axes.map((x, i) => (x === axis && !upper ? middle : (shared.max[i] as number))) as unknown as Box["max"],
  });
  const aUpper = kept.sign === 1;
  const [pa, pb] = [boxOf(a), boxOf(b)];
  // Each half that is lost must lie open to its board's own face, or it could not be sawn.
  const lostAtFace = (box: Box, upper: boolean) =>
    upper ? along(box.max, axis) - high <= sameLength : low - along(box.min, axis) <= sameLength;
  if (!lostAtFace(pa, !aUpper) || !lostAtFace(pb, aUpper)) {
    const level = { a: a.id, b: b.id, by: Math.max(high, low) - Math.min(high, low) };
    return problem("half-lap-closed", way.at, { ...level, names: [rule.b.text, rule.a.text] }, b.at);
  }
  return [
    { member: a.id, cut: boxCut("half-lap", way, a, half(!aUpper)) },
    { member: b.id, cut: boxCut("half-lap", way, b, half(aUpper)) },
  ];
}

/** The same where a board doesn't lie square: exact while a face of the one is level with a face of the other. */
function onTheSlant(
  way: JoinWay,
  rule: JoinRule,
  a: PlacedMember,
  b: PlacedMember,
  placing: Placing,
): Cutting[] | Problem {
  const crossing = crossingOf(a, b);
  if (crossing === "apart") return [];
  const facts = { a: a.id, b: b.id, way: way.kind };
  const slanted = (a.slant ? a : b).at;
  if (crossing === "skew") return problem("slant-carved", way.at, facts, slanted);
  const { low, high } = crossing;
  const cut = (member: PlacedMember, range: readonly [number, number]): Cutting[] => {
    const [own, by] = member === a ? [crossing.a.own, b] : [crossing.b.own, a];
    const figure = carve(member, own, by, crossing, range);
    const name = way.kind === "half-lap" ? "half-lap" : "housing";
    return figure ? [{ member: member.id, cut: { kind: "prism", why: "join", name, at: way.at, ...figure } }] : [];
  };
  if (way.kind === "let in") {
    const taken = cut(b, [low, high]);
    const size = ownSize(b);
    const through = taken.some((each) => each.cut.kind === "prism" && cutsThrough(b, each.cut));
    if (!through) return taken;
    return problem("let-in-through", way.at, { a: a.id, b: b.id, width: size[1], thickness: size[2] }, b.at);
  }
  const panel = a.panel === b.panel ? placing.turned(a) : undefined;
  const kept = (["front", "top", "left"] as const)
    .map((side) => headingOf(side, panel))
    .map(({ axis, sign }) => dot(unit(axis, sign), crossing.way))
    .find((share) => Math.abs(share) > Math.SQRT1_2);
  const aUpper = (kept ?? 1) > 0;
  const [upper, lower] = aUpper ? [crossing.a.range, crossing.b.range] : [crossing.b.range, crossing.a.range];
  // Each half that is lost must lie open to its board's own face, or it could not be sawn.
  if (upper[0] < low - sameLength || lower[1] > high + sameLength) {
    return problem("half-lap-closed", way.at, { a: a.id, b: b.id, names: [rule.b.text, rule.a.text] }, b.at);
  }
  const middle = (low + high) / 2;
  return [...cut(aUpper ? a : b, [low, middle]), ...cut(aUpper ? b : a, [middle, high])];
}

function letIn(way: JoinWay, a: PlacedMember, b: PlacedMember, shared: Box): Cutting[] | Problem {
  const cut = boxCut("housing", way, b, shared);
  const size = ownSize(b);
  const spans = (i: 0 | 1 | 2) => cut.min[i] <= sameLength && cut.max[i] >= size[i] - sameLength;
  if (spans(1) && spans(2)) {
    return problem("let-in-through", way.at, { a: a.id, b: b.id, width: size[1], thickness: size[2] }, b.at);
  }
  return [{ member: b.id, cut }];
}

const boxCut = (
  name: "half-lap" | "housing",
  way: JoinWay,
  member: PlacedMember,
  box: Box,
): WorkedCut & { kind: "box" } => ({
  kind: "box",
  why: "join",
  name,
  at: way.at,
  ...ownBox(member, box),
});
