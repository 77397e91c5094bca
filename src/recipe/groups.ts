// A recipe's names -> every path of names that a reference can end in.
import type { Written } from "../problems/place.ts";
import type { Recipe } from "./recipe.ts";

/** `face rails`, `front-face rails`, `front-face`, `planks`: the names from the outermost to the line. */
export type Group = {
  readonly path: readonly string[];
  readonly kind: "panel" | "line" | "fitting";
  readonly named: Written;
};

type Named = Pick<Recipe, "panels" | "stand" | "fittings">;

/** Every panel kind and panel, and every line under them, in the order of the recipe. */
export function groupsOf(recipe: Named): readonly Group[] {
  const groups: Group[] = [];
  for (const panel of recipe.panels) {
    groups.push({ path: [panel.name.text], kind: "panel", named: panel.name });
    for (const line of panel.lines)
      groups.push({ path: [panel.name.text, line.name.text], kind: "line", named: line.name });
  }
  for (const line of recipe.stand) {
    const panels = recipe.panels.filter((panel) => panel.name.text === line.what.text);
    groups.push({ path: [line.name.text], kind: panels.length > 0 ? "panel" : "line", named: line.name });
    for (const panel of panels)
      for (const inner of panel.lines)
        groups.push({ path: [line.name.text, inner.name.text], kind: "line", named: inner.name });
  }
  for (const line of recipe.fittings) groups.push({ path: [line.name.text], kind: "fitting", named: line.name });
  return groups;
}

/** Whether the names are the end of the path: `rails` and `face rails` both end `face rails`. */
export const endsPath = (path: readonly string[], names: readonly string[]): boolean =>
  names.length <= path.length && names.every((name, i) => name === path[path.length - names.length + i]);
