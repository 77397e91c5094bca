// Two things a board stands between -> the clear room there, further over them by a lap.
import { problem } from "../../problems/problem.ts";
import type { Reference } from "../../recipe/recipe.ts";
import { compareLengths, type Length, minus, plus } from "../../units/length.ts";
import type { Axis } from "../../units/side.ts";
import { Fault } from "./fault.ts";
import { halfOf, type Interval, sizeOf } from "./interval.ts";
import { resolve } from "./meant.ts";
import type { Places } from "./places.ts";
import { axisWords, type One, type Target } from "./target.ts";
import { clauseOf } from "./thing.ts";

/** What stands at the near and at the far end of the room, with the box of each. */
export type Neighbour = { readonly targets: readonly Target[]; readonly box: Interval };

/** The two of a, or a and b, the nearer one first. Throws a Fault where they aren't two. */
export function apart(
  places: Places,
  one: One,
  a: Reference,
  b: Reference | undefined,
  axis: Axis,
): [Neighbour, Neighbour] {
  const space = one.thing.space;
  const first = resolve(places, a, space, one.set);
  const sides = b ? [first, resolve(places, b, space, one.set)] : first.map((t) => [t]);
  if (sides.length !== 2) {
    const facts = { name: one.thing.line.name.text, what: a.text, count: sides.length };
    throw new Fault(problem("between-how-many", a.at, facts));
  }
  const [p, q] = sides.map((targets) => ({ targets, box: places.box(targets, space, axis) })) as [Neighbour, Neighbour];
  return compareLengths(p.box.lo, q.box.lo) <= 0 ? [p, q] : [q, p];
}

/** The clear room along an axis. Throws a Fault where the two overlap. */
export function room(places: Places, one: One, a: Reference, b: Reference | undefined, axis: Axis): Interval {
  const [near, far] = apart(places, one, a, b, axis).map((n) => n.box) as [Interval, Interval];
  if (compareLengths(near.hi, far.lo) > 0) {
    const facts = { name: one.thing.line.name.text, a: a.text, b: b?.text, along: axisWords[axis] };
    throw new Fault(problem("nothing-between", a.at, { ...facts, over: minus(near.hi, far.lo) }));
  }
  return { lo: near.hi, hi: far.lo };
}

/** The room between, or further over what stands there by a lap. */
export function lapped(places: Places, one: One, a: Reference, b: Reference | undefined, axis: Axis): Interval {
  const clause = clauseOf(one.thing.line, "lapping");
  if (!clause) return room(places, one, a, b, axis);
  const [near, far] = apart(places, one, a, b, axis);
  const by = ({ box }: Neighbour): Length =>
    clause.by === "half"
      ? halfOf(sizeOf(box))
      : places.amount(clause.by, { space: one.thing.space, axis, set: one.set });
  return { lo: minus(near.box.hi, by(near)), hi: plus(far.box.lo, by(far)) };
}
