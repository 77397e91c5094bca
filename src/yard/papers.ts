// What a shop file says under "papers" -> the papers that the binder's sheets are written for, as PDF.
import { nearest } from "../problems/nearest.ts";
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import type { Problems } from "./parse-values.ts";

/** `large` is for eyes that want it: the words a third larger, the drawings as wide as the page lets them. */
export type Paper = { readonly size: "letter" | "a4"; readonly type: "normal" | "large" };

const known: Readonly<Record<string, Paper>> = {
  letter: { size: "letter", type: "normal" },
  a4: { size: "a4", type: "normal" },
  "letter large": { size: "letter", type: "large" },
  "a4 large": { size: "a4", type: "large" },
};

/** Where the shop says nothing. */
export const usualPapers: readonly Paper[] = [
  { size: "letter", type: "normal" },
  { size: "a4", type: "normal" },
];

/** `letter, a4 large`: each once, in the order of the list above. */
export function readPapers(written: Written, problems: Problems): readonly Paper[] {
  const asked = written.text.split(",").map((name) => name.trim().toLowerCase());
  const names = Object.keys(known);
  const wrong = asked.find((name) => !names.includes(name));
  if (wrong === undefined) return names.flatMap((name) => (asked.includes(name) ? (known[name] ?? []) : []));
  const facts = { key: "papers", found: wrong, allowed: names, nearest: nearest(wrong, names) };
  problems.push(problem("not-one-of", written.at, facts));
  return usualPapers;
}
