// No group of lines is longer than a maker can oversee; the bound also keeps every later stage quick.
import { type Problem, problem } from "../problems/problem.ts";
import type { Tree } from "../problems/yaml-tree.ts";

/** At most this many lines stand under one key. */
const mostLines = 200;

export function checkLineCounts(tree: Tree, key = "the front-matter"): Problem[] {
  if (tree.kind !== "map") return [];
  const first = tree.entries[mostLines];
  return [
    ...(first ? [problem("too-many-lines", first.key.at, { key, lines: tree.entries.length, most: mostLines })] : []),
    ...tree.entries.slice(0, mostLines).flatMap((entry) => checkLineCounts(entry.value, entry.key.text)),
  ];
}
