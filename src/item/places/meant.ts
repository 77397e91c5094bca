// A reference written in a space -> the members or panels it means.
import { nearest } from "../../problems/nearest.ts";
import { problem } from "../../problems/problem.ts";
import type { Reference } from "../../recipe/recipe.ts";
import { Fault } from "./fault.ts";
import { thingNamed } from "./lay.ts";
import type { Places } from "./places.ts";
import type { Target } from "./target.ts";
import type { Space, Thing } from "./thing.ts";

/** The members (or whole panels) a reference written in this space means; with `each`, the one of this set. */
export function resolve(places: Places, reference: Reference, space: Space, set: number): readonly Target[] {
  const all = meant(places, reference, space);
  if (!reference.each) return all;
  const one = all[set];
  if (!one) throw new Error(`set ${set} of ${reference.text} asked for, of ${all.length}`);
  return [one];
}

/** All that a reference means, without regard to `each`. */
export function meant(places: Places, reference: Reference, space: Space): readonly Target[] {
  const found = thingNamed(space, reference);
  if (!found) throw unknownName(reference, space);
  const hosts = found.panel?.body.kind === "panel" ? found.panel.body.inner : undefined;
  const name = found.thing.line.name.text;
  const things = hosts ? hosts.flatMap((inner) => inner.things.get(name) ?? []) : [found.thing];
  return things.flatMap((thing) => picked(places, thing, reference));
}

function unknownName(reference: Reference, space: Space): Fault {
  const [first, second] = reference.names;
  const outer = first && space.things.get(first.text);
  const inside = outer?.body.kind === "panel" ? outer.body.inner[0] : undefined;
  const wrong = (outer && second) ?? first;
  const fault = (inside ?? space).faults.get(wrong?.text ?? "");
  if (fault) return fault;
  const known = [...(inside ?? space).things.keys()];
  const what = wrong?.text ?? reference.text;
  const facts = { what, where: outer?.line.name.text ?? space.panel?.name.text, known };
  return new Fault(problem("nothing-called", wrong?.at ?? reference.at, { ...facts, nearest: nearest(what, known) }));
}

/** The members of a thing that a reference's numbers pick. */
export function picked(places: Places, thing: Thing, reference: Reference): Target[] {
  const count = places.count(thing);
  const all = Array.from({ length: count }, (_, index) => ({ thing, index }));
  const pick = reference.pick;
  switch (pick.kind) {
    case "all":
      return all;
    case "last":
      return all.slice(-1);
    case "odd":
      return all.filter((t) => t.index % 2 === 0);
    case "even":
      return all.filter((t) => t.index % 2 === 1);
    case "numbers": {
      const wrong = pick.ranges.find((r) => r.from < 1 || r.to > count || r.from > r.to);
      if (wrong) {
        const number = wrong.to > count ? wrong.to : wrong.from;
        const facts = { name: thing.line.name.text, number, count };
        throw new Fault(problem("no-such-number", reference.at, facts, thing.line.at));
      }
      return all.filter((t) => pick.ranges.some((r) => t.index + 1 >= r.from && t.index + 1 <= r.to));
    }
  }
}
