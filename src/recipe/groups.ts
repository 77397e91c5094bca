// A recipe's names -> every path of names that a reference can end in.
import type { Written } from "../problems/place.ts";
import type { Line, Recipe } from "./recipe.ts";

/** `face rails`, `front-face rails`, `front-face`, `planks`: the names from the outermost to the line. */
export type Group = {
  readonly path: readonly string[];
  readonly kind: "panel" | "line" | "fitting";
  readonly named: Written;
};

type Named = Pick<Recipe, "panels" | "assemblies" | "stand" | "fittings" | "cords">;

/** Every panel and assembly kind and every one of them that stands, and every line under them, in the order of the recipe. */
export function groupsOf(recipe: Named): readonly Group[] {
  const kits = [...recipe.panels, ...recipe.assemblies];
  const under = (path: readonly string[], lines: readonly Line[]): Group[] =>
    lines.flatMap((line): Group[] => {
      const here = [...path, line.name.text];
      const kit = kits.find((k) => k.name.text === line.what.text);
      // Deeper nesting than a panel in an assembly is told elsewhere, a kit inside itself too.
      if (kit && path.length > 1) return [];
      const inner = kit ? [...under(here, kit.lines)] : [];
      return [{ path: here, kind: kit ? "panel" : "line", named: line.name }, ...inner];
    });
  return [
    ...kits.flatMap((kit): Group[] => [
      { path: [kit.name.text], kind: "panel", named: kit.name },
      ...under([kit.name.text], kit.lines),
    ]),
    ...under([], recipe.stand),
    ...recipe.fittings.map((line): Group => ({ path: [line.name.text], kind: "fitting", named: line.name })),
    ...recipe.cords.map((cord): Group => ({ path: [cord.name.text], kind: "fitting", named: cord.name })),
  ];
}

/** Whether the names are the end of the path: `rails` and `face rails` both end `face rails`. */
export const endsPath = (path: readonly string[], names: readonly string[]): boolean =>
  names.length <= path.length && names.every((name, i) => name === path[path.length - names.length + i]);
