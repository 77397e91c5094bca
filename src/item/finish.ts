// Finish schemes -> the coats on each member, the area they cover and what that takes out of the tin; and the variants offered.
import { nearest } from "../problems/nearest.ts";
import { type Problem, problem } from "../problems/problem.ts";
import type { Chosen } from "../recipe/choices-variants.ts";
import type { Coat, FinishScheme, Recipe } from "../recipe/recipe.ts";
import { squareFeet } from "../units/area.ts";
import type { Finish, Yard } from "../yard/yard.ts";
import type { Contact, Item, Member, Variant } from "./item.ts";
import { byLine } from "./joins/held-together.ts";
import type { PlacedMember, Placing } from "./placed.ts";

/** One line of coats with the members it covers. */
type Coated = { readonly finish: Finish; readonly coats: number; readonly members: readonly string[] };

/** A scheme worked out. */
type Scheme = { readonly name: string; readonly coated: readonly Coated[] };

/** Every scheme of the recipe, whether offered or not, so that all their problems are told. */
export function schemesOf(
  recipe: Recipe,
  placing: Placing,
  yard: Yard,
): { schemes: readonly Scheme[]; problems: Problem[] } {
  const problems: Problem[] = [];
  const schemes = recipe.finishes.map((scheme): Scheme => {
    const coated = coatedBy(scheme, placing, yard, problems);
    return { name: scheme.name.text, coated };
  });
  return { schemes, problems };
}

function coatedBy(scheme: FinishScheme, placing: Placing, yard: Yard, problems: Problem[]): Coated[] {
  const finishes = scheme.coats.map((coat) => finishOf(coat, yard));
  problems.push(...finishes.flatMap((f) => ("code" in f ? [f] : [])));
  const covered = new Map<string, Coat>();
  const named = scheme.coats.map((coat) => membersOf(coat, placing, problems));
  scheme.coats.forEach((coat, i) => {
    const twice: PlacedMember[] = [];
    for (const member of named[i] ?? []) {
      if (covered.has(member.id) && covered.get(member.id) !== coat) twice.push(member);
      else covered.set(member.id, coat);
    }
    for (const line of byLine(twice)) {
      const ids = line.map((m) => m.id);
      const first = covered.get(ids[0] ?? "");
      problems.push(problem("coated-twice", coat.at, { scheme: scheme.name.text, members: ids }, first?.at));
    }
  });
  return scheme.coats.flatMap((coat, i): Coated[] => {
    const finish = finishes[i];
    const rest = coat.on.kind === "rest" ? placing.members.filter((m) => !covered.has(m.id)) : undefined;
    if (rest && rest.length === 0) problems.push(problem("no-rest", coat.at, { scheme: scheme.name.text }));
    const members = rest ?? named[i] ?? [];
    return finish && !("code" in finish) ? [{ finish, coats: coat.coats, members: members.map((m) => m.id) }] : [];
  });
}

function finishOf(coat: Coat, yard: Yard): Finish | Problem {
  const what = coat.finish.text;
  const known = yard.finishes.map((f) => f.name);
  const finish = yard.finishes.find((f) => f.name === what);
  return finish ?? problem("unknown-finish", coat.finish.at, { what, known, nearest: nearest(what, known) });
}

/** The members a coat names, each once; the rest is worked out when all others are known. */
function membersOf(coat: Coat, placing: Placing, problems: Problem[]): readonly PlacedMember[] {
  if (coat.on.kind !== "some") return coat.on.kind === "all" ? placing.members : [];
  const found = coat.on.of.flatMap((reference): readonly PlacedMember[] => {
    const members = placing.find(reference, undefined);
    if (!("code" in members)) return members;
    problems.push(members);
    return [];
  });
  return [...new Set(found)];
}

const bare: Scheme = { name: "unfinished", coated: [] };

/** The scheme a variant has; an item without finishes is unfinished. */
export function schemeOf({ finish }: Chosen, schemes: readonly Scheme[]): Scheme {
  if (finish === undefined) return bare;
  const scheme = schemes.find((s) => s.name === finish);
  if (!scheme) throw new Error(`"${finish}" is offered but no finish; the reader lets no such recipe through`);
  return scheme;
}

/** Square inches of each member that air reaches: its whole skin less what lies on another member. */
export function openAreas(
  members: readonly Pick<Member, "id" | "solid">[],
  contacts: readonly Contact[],
): ReadonlyMap<string, number> {
  const areas = new Map(members.map((m) => [m.id, m.solid.area]));
  for (const { a, b, area } of contacts) {
    for (const id of [a, b]) areas.set(id, (areas.get(id) ?? 0) - area);
  }
  return areas;
}

/** The variant with this scheme; `areas` has every member. Gallons are for all its coats, at the finish's own coverage. */
export function variantOf(scheme: Scheme, chosen: Chosen, areas: ReadonlyMap<string, number>): Variant {
  const coated = new Set(scheme.coated.flatMap(({ members }) => members));
  const { slug, name, standard, values, form, formName } = chosen;
  return {
    ...{ slug, name, standard, values, form, formName },
    unfinished: scheme.coated.length === 0,
    bare: [...areas.keys()].filter((id) => !coated.has(id)),
    finish: scheme.coated.map(({ finish, coats, members }) => {
      const area = members.reduce((sum, id) => sum + (areas.get(id) ?? 0), 0);
      return { finish, coats, members, area, gallons: (squareFeet(area) * coats) / finish.coverage };
    }),
  };
}

/** The coats on one member, in order. */
export const coatsOn = (id: string, scheme: Scheme): Item["members"][number]["coats"] =>
  scheme.coated.filter((c) => c.members.includes(id)).map(({ finish, coats }) => ({ finish, coats }));
