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

/** Every panel and assembly inside a space, in the order of its lines, an assembly before its panels. */
export function panelSpaces(space: Space): Space[] {
  return [...space.things.values()].flatMap((t) =>
    t.body.kind === "panel" ? t.body.inner.flatMap((inner) => [inner, ...panelSpaces(inner)]) : [],
  );
}

const kindOf = (space: Space): string | undefined => space.panel?.name.text;
const lineOf = (space: Space): string | undefined => space.host?.thing().line.name.text;

/** Whether the names, last to first, are those of the space and of the ones around it (their lines' or their kinds'). */
function isInside(space: Space, names: readonly string[]): boolean {
  const name = names.at(-1);
  if (name === undefined) return true;
  if (lineOf(space) !== name && kindOf(space) !== name) return false;
  const around = space.host?.thing().space;
  return names.length === 1 || (around !== undefined && isInside(around, names.slice(0, -1)));
}

/** The things a reference's names mean, anywhere; in a panel kind its own groups come first. */
function thingsMeant(places: Places, reference: Reference, within: Within): (Thing | Space)[] {
  const names = reference.names.map((n) => n.text);
  const last = names.at(-1) as string;
  const before = names.slice(0, -1);
  const inner = panelSpaces(places.item);
  const named = [places.item, ...inner]
    .filter((space) => isInside(space, before))
    .flatMap((space) => space.things.get(last) ?? []);
  const own = named.filter((thing) => within && kindOf(thing.space) === within.panelKind);
  if (own.length > 0) return own;
  const found = named.filter((thing) => !within || isWithin(thing.space, within.panelKind));
  if (found.length > 0) return found;
  return named.length > 0 ? named : inner.filter((space) => kindOf(space) === last && isInside(space, names));
}

/** Whether a space is inside one of this kind. */
const isWithin = (space: Space, kind: string): boolean =>
  kindOf(space) === kind || (space.host !== undefined && isWithin(space.host.thing().space, kind));

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
