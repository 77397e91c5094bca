// The cord rules of a recipe -> each rope in its place: its way, its length, its knots, what it weighs.
import { nearest } from "../../problems/nearest.ts";
import { type Problem, problem } from "../../problems/problem.ts";
import type { CordRule, Sum } from "../../recipe/recipe.ts";
import { sameLength } from "../../units/length.ts";
import type { Rope, Yard } from "../../yard/yard.ts";
import { cutLength } from "../cuts/cut-length.ts";
import type { Cord, WorkedCut } from "../item.ts";
import type { Placing } from "../placed.ts";
import { legsOf } from "./hanging.ts";
import { runOf, type Stretch, stretchesOf, type Taken, threadCord, type WayPoint } from "./thread.ts";
import { knotsOf, tubeOf } from "./tube.ts";

/** Cords in the order written, not yet loaded; members that a broken rule was to carry are in `nowhere`. */
export function cordsOf(
  rules: readonly CordRule[],
  placing: Placing,
  cutsOf: ReadonlyMap<string, readonly WorkedCut[]>,
  yard: Yard,
): { cords: readonly Cord[]; nowhere: ReadonlySet<string>; problems: Problem[] } {
  const taken: Taken = new Map();
  const cords: Cord[] = [];
  const problems: Problem[] = [];
  const nowhere = new Set<string>();
  for (const rule of rules) {
    const found = cordOf(rule, placing, cutsOf, yard, taken);
    if ("problems" in found) {
      problems.push(...found.problems);
      for (const id of meant(rule, placing)) nowhere.add(id);
    } else cords.push(found);
  }
  problems.push(...checkTied(cords));
  return { cords, nowhere, problems };
}

const meant = (rule: CordRule, placing: Placing): string[] =>
  rule.way.flatMap((part) => {
    const members = part.kind === "holes" ? placing.find(part.of, undefined) : [];
    return "code" in members ? [] : members.map((m) => m.id);
  });

function cordOf(
  rule: CordRule,
  placing: Placing,
  cutsOf: ReadonlyMap<string, readonly WorkedCut[]>,
  yard: Yard,
  taken: Taken,
): Cord | { readonly problems: readonly Problem[] } {
  const rope = yard.ropes.find((r) => r.name === rule.rope.text);
  if (!rope) return { problems: [unknownRope(rule, yard)] };
  const points = threadCord(rule, rope, placing, cutsOf, taken);
  const perKnot = lengthOf(rule.perKnot, placing);
  const slack = lengthOf(rule.slack, placing);
  const lengths = [perKnot, slack].flatMap((one) => (typeof one === "number" ? [] : [one]));
  if (!isWay(points)) return { problems: [...points, ...lengths] };
  const ends = checkEnds(rule, points);
  if (typeof perKnot !== "number" || typeof slack !== "number" || ends.length > 0)
    return { problems: [...lengths, ...ends] };
  const stretches = stretchesOf(points);
  const sum = (kind: Stretch["kind"]) =>
    stretches.reduce((total, stretch) => (stretch.kind === kind ? total + runOf(stretch) : total), 0);
  const [through, between, hanging] = [sum("through"), sum("between"), sum("hanging")];
  const length = through + between + hanging + 2 * perKnot + slack;
  return {
    name: rule.name.text,
    rope,
    at: rule.at,
    members: [...new Set(points.flatMap((point) => (point.kind === "mouth" ? [point.hole.member.id] : [])))],
    points: points.map((point) => point.at),
    through,
    between,
    hanging,
    knots: 2,
    perKnot,
    slack,
    length,
    weight: (length / 12) * rope.weightPerFoot,
    tube: [...tubeOf(stretches, rope.diameter.valueOf()), ...knotsOf(points, rope.diameter.valueOf())],
    legs: legsOf(points),
  };
}

const isWay = (found: readonly WayPoint[] | readonly Problem[]): found is readonly WayPoint[] =>
  !found.some((one) => "code" in one);

const lengthOf = (sum: Sum | undefined, placing: Placing): number | Problem => {
  const value = sum ? cutLength(sum, placing) : 0;
  return sum && typeof value === "number" && value < 0 ? problem("below-nothing", sum.at, { length: value }) : value;
};

function unknownRope(rule: CordRule, yard: Yard): Problem {
  const known = yard.ropes.map((rope: Rope) => rope.name);
  const what = rule.rope.text;
  return problem("unknown-rope", rule.rope.at, { what, known, nearest: nearest(what, known) });
}

/** An end at a hanger or a loop is tied there; one at a hole needs a knot. Every knot takes rope. */
function checkEnds(rule: CordRule, points: readonly WayPoint[]): Problem[] {
  const name = rule.name.text;
  const ends = [
    { where: "start", point: points[0] },
    { where: "end", point: points.at(-1) },
  ] as const;
  const loose = ends.flatMap(({ where, point }) =>
    point?.kind === "mouth" && !rule.knots[where]
      ? [problem("cord-end-loose", rule.at, { name, where, member: point.hole.member.id })]
      : [],
  );
  if (loose.length > 0 || rule.perKnot) return loose;
  return [problem("cord-knot-rope", rule.at, { name, knots: 2 })];
}

/** The members next to each other on a cord, which holds them as a join does. */
export const pairsHeld = (cords: readonly Cord[]): { readonly a: string; readonly b: string }[] =>
  cords.flatMap(({ members }) => members.slice(1).map((b, i) => ({ a: members[i] as string, b })));

/** Where a rope is tied to a hanger, another has to be tied to the same. */
function checkTied(cords: readonly Cord[]): Problem[] {
  const tied = cords.flatMap((cord) =>
    cord.legs.filter((leg) => leg.tiedAs === "hanger").map((leg) => ({ cord, leg })),
  );
  return tied.flatMap(({ cord, leg }) => {
    const mate = tied.some(
      (other) =>
        other.cord !== cord && Math.hypot(other.leg.at[0] - leg.at[0], other.leg.at[2] - leg.at[2]) < sameLength,
    );
    return mate ? [] : [problem("cord-hanger-alone", leg.said, { name: cord.name, part: leg.part })];
  });
}
