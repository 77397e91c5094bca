// What is offered and what is made -> checked against the finishes and panels that are written.
import { nearest } from "../problems/nearest.ts";
import type { Written } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";
import type { FinishScheme, Recipe } from "./recipe.ts";
import { type Gathered, split } from "./scan.ts";

/** The finish schemes offered, the standard one first; all of them in order where the recipe is silent. */
export function readOffered(choice: Written | undefined, schemes: readonly FinishScheme[], into: Gathered): Written[] {
  const names = schemes.map((scheme) => scheme.name.text);
  if (!choice) return schemes.map((scheme) => scheme.name);
  const offered: Written[] = [];
  for (const part of split(choice, ",")) {
    const first = offered.find((other) => other.text === part.text);
    if (part.text === "") into.problems.push(problem("empty-clause", part.at, { whole: choice.text }));
    else if (first) into.problems.push(problem("offered-twice", part.at, { found: part.text }, first.at));
    else if (!names.includes(part.text)) {
      const facts = { found: part.text, known: names, nearest: nearest(part.text, names) };
      into.problems.push(problem("no-such-scheme", part.at, facts));
    } else offered.push(part);
  }
  return offered;
}

/** Every `makes` names a panel. */
export function checkMakes(recipe: Pick<Recipe, "sections" | "panels" | "assemblies">): Problem[] {
  const known = [...recipe.panels, ...recipe.assemblies].map((panel) => panel.name.text);
  return recipe.sections.flatMap(({ makes }) => {
    if (!makes || known.includes(makes.panel.text)) return [];
    const found = makes.panel.text;
    return [problem("makes-unknown", makes.panel.at, { found, known, nearest: nearest(found, known) })];
  });
}
