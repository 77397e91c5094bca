// `2026-10-05: first written` under `revisions:` -> the revisions of a recipe, oldest first. The last one is the one that stands.
import { problem } from "../problems/problem.ts";
import { entriesUnder, type TreeMap } from "../problems/yaml-tree.ts";
import { isDay } from "../units/day.ts";
import type { Gathered } from "./scan.ts";

/** A day, and what changed on it in the maker's words: printed in the plan that is sold, never in the store. */
export type Revision = { readonly day: string; readonly says: string };

const expected = "a day like 2026-10-03 and what changed";

export function readRevisions(tree: TreeMap, into: Gathered): readonly Revision[] {
  const revisions: Revision[] = [];
  for (const { key, value } of entriesUnder(tree, "revisions")) {
    if (value.kind !== "text") continue;
    const says = value.text.trim();
    const found = isDay(key.text) ? says : key.text;
    if (!isDay(key.text) || says === "")
      into.problems.push(
        problem("bad-value", isDay(key.text) ? value.at : key.at, { key: "revisions", found, expected }),
      );
    else revisions.push({ day: key.text, says });
  }
  return revisions.sort((a, b) => (a.day < b.day ? -1 : 1));
}
