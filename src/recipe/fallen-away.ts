// A recipe that has lost lines, and the groups it had -> the same without whatever names only what is gone.
import { endsPath, type Group, groupsOf } from "./groups.ts";
import type { BodySection, Claim, FinishScheme, Recipe, Reference } from "./recipe.ts";

export function withoutFallen(recipe: Recipe, before: readonly Group[]): Recipe {
  const now = groupsOf(recipe);
  if (now.length === before.length) return { ...recipe, sections: numbered(recipe.sections) };
  const ends = (groups: readonly Group[], names: readonly string[]) => groups.some(({ path }) => endsPath(path, names));
  const gone = (names: readonly string[]): boolean => ends(before, names) && !ends(now, names);
  const fell = (reference: Reference): boolean => gone(reference.names.map((name) => name.text));
  return {
    ...recipe,
    joins: recipe.joins.filter(({ a, b }) => !fell(a) && !fell(b)),
    cuts: recipe.cuts.filter(({ of }) => !fell(of)),
    cords: recipe.cords.filter(({ way }) => way.length === 0 || !way.every(({ of }) => fell(of))),
    texts: recipe.texts.filter(({ of }) => !fell(of)),
    finishes: recipe.finishes.map((scheme) => schemeWithout(scheme, fell)),
    claims: recipe.claims.filter(({ what }) => !claimsFallen(what, fell)),
    loads: recipe.loads.filter(({ on }) => !fell(on)),
    sections: numbered(
      recipe.sections
        .filter(({ makes }) => !makes || !gone([makes.panel.text]))
        .map((section) => ({
          ...section,
          steps: section.steps.filter(({ adds }) => adds.length === 0 || !adds.every(fell)),
        }))
        .filter(({ heading, steps }) => steps.length > 0 || !hadSteps(recipe, heading)),
    ),
  };
}

const hadSteps = (recipe: Recipe, heading: BodySection["heading"]): boolean =>
  recipe.sections.some((section) => section.heading === heading && section.steps.length > 0);

function schemeWithout(scheme: FinishScheme, fell: (reference: Reference) => boolean): FinishScheme {
  const coats = scheme.coats.flatMap((coat) => {
    if (coat.on.kind !== "some") return [coat];
    const of = coat.on.of.filter((reference) => !fell(reference));
    return of.length > 0 ? [{ ...coat, on: { ...coat.on, of } }] : [];
  });
  return { ...scheme, coats };
}

const claimsFallen = (what: Claim["what"], fell: (reference: Reference) => boolean): boolean =>
  what.kind === "measure" && what.of !== undefined && fell(what.of);

/** Steps counted on through the whole body. */
function numbered(sections: readonly BodySection[]): readonly BodySection[] {
  let number = 0;
  return sections.map((section) => ({
    ...section,
    steps: section.steps.map((step) => ({ ...step, number: ++number })),
  }));
}
