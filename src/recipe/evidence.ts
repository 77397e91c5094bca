// `tip: stood on a slope of 10 degrees with a child of 40 lb on its edge` -> what shows that a thing may be sold to those it is for. Private.
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import { entriesUnder, type TreeMap } from "../problems/yaml-tree.ts";
import type { Proven } from "../yard/unprovable.ts";
import type { HazardClass } from "./recipe.ts";
import type { Gathered } from "./scan.ts";

export const evidenceKinds = [
  "finish",
  "edges",
  "small parts",
  "gaps",
  "tip",
  "tracking label",
  "certificate",
  "food",
] as const;
export type EvidenceKind = (typeof evidenceKinds)[number];

/** In the maker's words: which test, or why none is due. */
export type Evidence = Readonly<Partial<Record<EvidenceKind, string>>>;

/** What a thing for children needs: all but what is for food. */
const childKinds = evidenceKinds.filter((kind) => kind !== "food");

/** What the recipe's words may say, since it is shown. */
export const provenBy = (classes: readonly HazardClass[], evidence: Evidence): Proven => ({
  child: classes.includes("C") && childKinds.every((kind) => evidence[kind] !== undefined),
  food: classes.includes("F") && evidence.food !== undefined,
});

const isKind = (text: string): text is EvidenceKind => evidenceKinds.some((kind) => kind === text);

/** Words that stand where evidence is meant to come. */
const saysNothing = /^\W*(to ?do|tb[acd]|later|none|no|n\/?a|yes|ok(ay)?|fine|safe|passed|x+)?\W*$/i;

/** A line that names no test and no reason is told, and is no evidence. */
export function readEvidence(tree: TreeMap, into: Gathered): Evidence {
  const evidence: Partial<Record<EvidenceKind, string>> = {};
  for (const { key, value } of entriesUnder(tree, "evidence")) {
    if (value.kind !== "text" || !isKind(key.text)) continue;
    if (saysNothing.test(value.text)) into.problems.push(emptyEvidence(key.text, value));
    else evidence[key.text] = value.text.trim();
  }
  return evidence;
}

const emptyEvidence = (kind: EvidenceKind, { text, at }: Written) =>
  problem("evidence-says-nothing", at, { kind, found: text });
