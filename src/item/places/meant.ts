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
  if (!thingNamed(space, reference)) throw unknownName(reference, space);
  const names = reference.names.map((n) => n.text);
  const last = names.pop() ?? "";
  const spaces = names.reduce<readonly Space[]>(
    (all, name) =>
      all.flatMap((s) => {
        const body = s.things.get(name)?.body;
        return body?.kind === "panel" ? body.inner : [];
      }),
    [space],
  );
  return spaces.flatMap((s) => s.things.get(last) ?? []).flatMap((thing) => picked(places, thing, reference));
}

/** The first name that leads nowhere, or the fault that stands in its way. */
function unknownName(reference: Reference, space: Space): Fault {
  let inside: Space | undefined = space;
  let outer: Thing | undefined;
  for (const name of reference.names) {
    const thing: Thing | undefined = inside?.things.get(name.text);
    if (thing) {
      outer = thing;
      inside = thing.body.kind === "panel" ? thing.body.inner[0] : undefined;
      continue;
    }
    const fault = inside?.faults.get(name.text);
    if (fault) return fault;
    const known = [...(inside?.things.keys() ?? [])];
    const where = outer?.line.name.text ?? space.panel?.name.text;
    return new Fault(
      problem("nothing-called", name.at, { what: name.text, where, known, nearest: nearest(name.text, known) }),
    );
  }
  throw new Error(`${reference.text} was found after all`);
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
