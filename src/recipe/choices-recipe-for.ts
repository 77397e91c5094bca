// A recipe and one of its variants -> the recipe as that variant would be written, without a choice left in it.
import type { Place, Written } from "../problems/place.ts";
import type { Chosen } from "./choices-variants.ts";
import { withoutFallen } from "./fallen-away.ts";
import { groupsOf } from "./groups.ts";
import type { BodySection, Change, Line, Only, Recipe } from "./recipe.ts";

/** What may stand only with some choice; anything that has a place may. */
type Conditional = { readonly at: Place; readonly only?: Only };

/**
 * Sizes and boards are those of the variant's values, and what stands only with other values is gone. What names only
 * things that are gone goes too: joins, cuts, coats, claims, loads, and steps and sections that put only those in place.
 */
export function recipeFor(recipe: Recipe, variant: Pick<Chosen, "values">): Recipe {
  const chosen = new Map(variant.values.map(({ choice, value }) => [choice, value]));
  const stands = ({ only }: Conditional): boolean =>
    only === undefined || only.values.some((value) => value.text === chosen.get(only.choice.text));
  const changes = recipe.choices.flatMap(
    ({ name, values }) => values.find((value) => value.name.text === chosen.get(name.text))?.changes ?? [],
  );
  const changed = changes.reduce(change, recipe);
  const lines = (all: readonly Line[]): readonly Line[] => all.filter(stands);
  const kept: Recipe = {
    ...changed,
    panels: changed.panels.map((panel) => ({ ...panel, lines: lines(panel.lines) })),
    assemblies: changed.assemblies.map((kit) => ({ ...kit, lines: lines(kit.lines) })),
    stand: lines(changed.stand),
    fittings: lines(changed.fittings),
    joins: changed.joins.filter(stands),
    cuts: changed.cuts.filter(stands),
    claims: changed.claims.filter(stands),
    loads: changed.loads.filter(stands),
    cords: changed.cords.filter(stands),
    texts: changed.texts
      .filter(stands)
      .map((text) => ({ ...text, sayings: text.sayings.map((words) => standardOf(words, recipe)) })),
    intro: changed.intro.filter(stands),
    sections: changed.sections.filter(stands).map((section) => sectionFor(section, stands)),
  };
  const whole = dropUnused(kept, changed);
  return withoutFallen(whole, groupsOf(changed));
}

/** Whether anything stands only with some finish, so that variants of one form may differ in more than their coats. */
export function hangsOnFinish(recipe: Recipe): boolean {
  const { panels, assemblies, stand, fittings, joins, cuts, claims, loads, cords, texts, intro, sections } = recipe;
  const steps = sections.flatMap((section) => [section, ...section.notes, ...section.steps]);
  const proofs = sections.flatMap((section) => section.steps.flatMap((step) => [...step.checks, ...step.cautions]));
  const lines = [...panels, ...assemblies].flatMap((kit) => kit.lines);
  const all: readonly Conditional[] = [
    ...[...lines, ...stand, ...fittings, ...joins, ...cuts, ...claims, ...loads, ...cords, ...texts],
    ...[...intro, ...steps, ...proofs],
  ];
  return all.some(({ only }) => only?.choice.text === "finish");
}

/** Where a text names a choice of words, its standard words. */
function standardOf(words: Written, { sayings }: Recipe): Written {
  const saying = sayings.find(({ name }) => name.text === words.text);
  return saying ? { text: saying.standard, at: words.at } : words;
}

function change(recipe: Recipe, one: Change): Recipe {
  if (one.kind === "board") {
    const pieces = recipe.pieces.map((piece) =>
      piece.board.text === one.from.text || piece.name.text === one.from.text ? { ...piece, board: one.to } : piece,
    );
    return { ...recipe, pieces };
  }
  const { name, to } = one;
  if (name.text === "width" || name.text === "depth" || name.text === "height")
    return { ...recipe, overall: { ...recipe.overall, [name.text]: to } };
  if (to.kind === "fit") return recipe;
  return {
    ...recipe,
    sizes: recipe.sizes.map((size) => (size.name.text === name.text ? { ...size, sum: to, at: one.at } : size)),
  };
}

const sectionFor = (section: BodySection, stands: (one: Conditional) => boolean): BodySection => ({
  ...section,
  notes: section.notes.filter(stands),
  steps: section.steps
    .filter(stands)
    .map((step) => ({ ...step, checks: step.checks.filter(stands), cautions: step.cautions.filter(stands) })),
});

/** Without the panels and assemblies that no line is of any more, as far as one was before. */
function dropUnused(recipe: Recipe, before: Recipe): Recipe {
  const used = (one: Recipe): ReadonlySet<string> => {
    const kits = [...one.panels, ...one.assemblies];
    return new Set([...one.stand, ...kits.flatMap((kit) => kit.lines)].map((line) => line.what.text));
  };
  const [was, is] = [used(before), used(recipe)];
  const kept = ({ name }: { readonly name: { readonly text: string } }) => is.has(name.text) || !was.has(name.text);
  const next = { ...recipe, panels: recipe.panels.filter(kept), assemblies: recipe.assemblies.filter(kept) };
  const fewer = next.panels.length + next.assemblies.length < recipe.panels.length + recipe.assemblies.length;
  return fewer ? dropUnused(next, before) : next;
}
