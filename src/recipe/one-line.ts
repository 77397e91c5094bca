// Values that are read word by word stand on one line, so that every word has its column.
import type { Written } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";
import type { Tree, TreeEntry, TreeMap } from "../problems/yaml-tree.ts";

/** Keys whose value is prose and may run over lines. */
const prose: ReadonlySet<string> = new Set(["purpose", "notes"]);

/** The tree with every value cut at the end of its first line; a value that ran on is a problem. */
export function keepOneLine(tree: TreeMap, lines: readonly string[], problems: Problem[]): TreeMap {
  const trim = (value: Tree): Tree => {
    if (value.kind === "map") return { ...value, entries: value.entries.map(trimEntry) };
    if (value.kind === "list") return value;
    const room = (lines[value.at.line - 1] ?? "").length - value.at.column + 1;
    const first = value.text.split("\n")[0] ?? "";
    if (first === value.text && value.text.length <= room) return value;
    problems.push(problem("value-over-lines", value.at, { found: first.slice(0, 40) }));
    return { ...value, text: first.slice(0, Math.max(0, room)).replace(/[\s,;]+$/, "") };
  };
  const trimEntry = (entry: TreeEntry): TreeEntry => ({ key: entry.key, value: trim(entry.value) });
  return { ...tree, entries: tree.entries.map((e) => (prose.has(e.key.text) ? e : trimEntry(e))) };
}

/** The texts under a map, with their keys. */
export const textsOf = (entries: readonly TreeEntry[]): { readonly key: Written; readonly value: Written }[] =>
  entries.flatMap(({ key, value }) =>
    value.kind === "text" ? [{ key, value: { text: value.text, at: value.at } }] : [],
  );
