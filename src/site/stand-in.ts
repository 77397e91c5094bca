// What is worked out now, and what was last good -> what live pages are made of while something is broken.
import type { WorkedContent } from "./work-content.ts";

/** A broken recipe stands as it last was good, or not at all; with a broken yard or shop everything stands as it was. */
export function standIn(now: WorkedContent, good: WorkedContent | undefined): WorkedContent | undefined {
  if (!now.yard || !now.shop) return good;
  const taken = new Set<string>();
  const recipes = now.recipes.flatMap((worked) => {
    const shown = worked.problems.length === 0 ? worked : good?.recipes.find(({ file }) => file === worked.file);
    const slug = shown?.recipe?.slug;
    if (!shown || slug === undefined || taken.has(slug)) return [];
    taken.add(slug);
    return [shown];
  });
  return { ...now, recipes, problems: [] };
}
