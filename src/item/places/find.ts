// A reference read over the whole recipe (joins, cuts, finish, steps, figures) -> the members and panels it means.
import { nearest } from "../../problems/nearest.ts";
import { problem } from "../../problems/problem.ts";
import type { Reference } from "../../recipe/recipe.ts";
import type { Within } from "../placed.ts";
import { Fault } from "./fault.ts";
import { picked } from "./meant.ts";
import type { Places } from "./places.ts";
import type { Target } from "./target.ts";
import type { Space, Thing } from "./thing.ts";

/** Every panel in the item, in the order of its lines. */
export function panelSpaces(item: Space): Space[] {
  return [...item.things.values()].flatMap((t) => (t.body.kind === "panel" ? t.body.inner : []));
}

const kindOf = (space: Space): string | undefined => space.panel?.name.text;
const lineOf = (space: Space): string | undefined => space.host?.thing().line.name.text;

/** The things a reference's names mean, anywhere; in a panel kind its own groups come first. */
function thingsMeant(places: Places, reference: Reference, within: Within): (Thing | Space)[] {
  const [first, second] = reference.names.map((n) => n.text) as [string, string | undefined];
  const panels = panelSpaces(places.item);
  const inside = (spaces: readonly Space[], name: string) => spaces.flatMap((s) => s.things.get(name) ?? []);
  if (within) {
    const own = inside(
      panels.filter((s) => kindOf(s) === within.panelKind),
      first,
    );
    if (second === undefined && own.length > 0) return own;
  }
  if (second !== undefined) {
    return inside(
      panels.filter((s) => lineOf(s) === first || kindOf(s) === first),
      second,
    );
  }
  const named = [
    ...(places.item.things.get(first) ? [places.item.things.get(first) as Thing] : []),
    ...inside(panels, first),
  ];
  return named.length > 0 ? named : panels.filter((s) => kindOf(s) === first);
}

/** All names a reference may start with, for the nearest one. */
function knownNames(item: Space): string[] {
  const panels = panelSpaces(item);
  return [...new Set([...item.things.keys(), ...panels.flatMap((s) => [kindOf(s) ?? "", ...s.things.keys()])])];
}

/** The targets a reference means over the whole recipe. Throws a Fault where it means nothing. */
export function findTargets(places: Places, reference: Reference, within: Within): Target[] {
  const things = thingsMeant(places, reference, within);
  const targets = things.flatMap((thing): Target[] => {
    if ("line" in thing) return picked(places, thing, reference);
    const host = thing.host;
    return host ? [{ thing: host.thing(), index: host.index }] : [];
  });
  if (targets.length > 0) return targets;
  for (const space of [places.item, ...panelSpaces(places.item)]) {
    const fault = reference.names.map((n) => space.faults.get(n.text)).find((f) => f !== undefined);
    if (fault) throw fault;
  }
  const known = knownNames(places.item);
  const what = reference.names.map((n) => n.text).join(" ");
  const guess = reference.names.map((n) => nearest(n.text, known) ?? n.text).join(" ");
  const facts = { what, where: within?.panelKind, known, nearest: guess === what ? undefined : guess };
  throw new Fault(problem("nothing-called", reference.at, facts));
}
