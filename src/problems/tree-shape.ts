// A tree of texts and a zod schema -> the same data with places, or every way it differs from the schema, at its line.
import type { z } from "zod";
import { nearest } from "./nearest.ts";
import type { Place, Written } from "./place.ts";
import { type Problem, problem } from "./problem.ts";
import { type Tree, type TreeEntry, valueUnder } from "./yaml-tree.ts";

/** What the schema gives, with every text in its place. Schemas checked here are made of maps, lists and texts only. */
export type Placed<T> = T extends string
  ? Written
  : T extends readonly (infer E)[]
    ? readonly Placed<E>[]
    : { readonly [K in keyof T]: Placed<T[K]> };

/** The tree as plain objects, lists and strings, as a schema checks it. */
export function plainOf(tree: Tree): unknown {
  if (tree.kind === "text") return tree.text;
  if (tree.kind === "list") return tree.items.map(plainOf);
  return Object.fromEntries(tree.entries.map((e) => [e.key.text, plainOf(e.value)]));
}

function placedOf(tree: Tree): unknown {
  if (tree.kind === "text") return { text: tree.text, at: tree.at };
  if (tree.kind === "list") return tree.items.map(placedOf);
  return Object.fromEntries(tree.entries.map((e) => [e.key.text, placedOf(e.value)]));
}

/**
 * Checks the tree's shape. `where` says in words what the tree is ("in the front-matter", 'of "fence board"').
 * `head` is where a missing key is told, the tree's own line if it has no better one. The `error` text of a leaf in the
 * schema says what is expected there ("a date like 2026-11-01").
 */
export function checkShape<S extends z.ZodType>(
  tree: Tree,
  schema: S,
  where: string,
  head: Place = tree.at,
): { placed?: Placed<z.output<S>>; problems: Problem[] } {
  const result = schema.safeParse(plainOf(tree), { reportInput: true });
  if (result.success) return { placed: placedOf(tree) as Placed<z.output<S>>, problems: [] };
  return { problems: result.error.issues.flatMap((issue) => issueProblems(issue, tree, schema, where, head)) };
}

type Path = readonly PropertyKey[];

function issueProblems(
  issue: z.core.$ZodIssue,
  tree: Tree,
  schema: z.core.$ZodType,
  where: string,
  head: Place,
): Problem[] {
  const path = issue.path;
  const found = nodeAt(tree, path);
  const inside = path.length === 0 ? where : `under "${path.map(String).join(": ")}"`;
  if (issue.code === "unrecognized_keys") {
    const known = Object.keys(shapeOf(schemaAt(schema, path)) ?? {});
    return issue.keys.map((key) => {
      const at = entryAt(tree, [...path, key])?.key.at ?? found.at;
      return problem("unknown-key", at, { key, where: inside, known, nearest: nearest(key, known) });
    });
  }
  const key = String(path.at(-1) ?? /"(.+)"/.exec(where)?.[1] ?? where);
  if (!found.whole) {
    const parent = path.slice(0, -1);
    return [
      problem("missing-key", found.node === tree ? head : found.at, {
        key,
        where: parent.length === 0 ? where : `under "${parent.map(String).join(": ")}"`,
        expected: issue.code === "invalid_type" ? kindWords(issue.expected) : issue.message,
      }),
    ];
  }
  const node = found.node;
  if (node.kind !== "text")
    return [
      problem("wrong-kind", node.at, {
        key,
        found: node.kind === "map" ? "lines of its own" : "a list",
        expected: issue.code === "invalid_type" ? kindWords(issue.expected) : "one value",
      }),
    ];
  if (issue.code === "invalid_value") {
    const allowed = issue.values.map(String);
    return [problem("not-one-of", node.at, { key, found: node.text, allowed, nearest: nearest(node.text, allowed) })];
  }
  if (issue.code === "invalid_type")
    return [
      problem("wrong-kind", node.at, {
        key,
        found: node.text === "" ? "no value" : `"${node.text}"`,
        expected: kindWords(issue.expected),
      }),
    ];
  return [problem("bad-value", node.at, { key, found: node.text, expected: issue.message })];
}

const kindWords = (expected: string): string =>
  expected === "object" || expected === "record"
    ? "lines of its own, pushed in below it"
    : expected === "array"
      ? 'a list, each entry on a line with "- " before it'
      : "one value on its line";

/** The node a path leads to, or the last one on the way that is there. */
function nodeAt(tree: Tree, path: Path): { node: Tree; at: Place; whole: boolean } {
  let node = tree;
  let at = tree.at;
  for (const key of path) {
    const entry = entryIn(node, key);
    const next = entry?.value ?? (node.kind === "list" ? node.items[Number(key)] : undefined);
    if (!next) return { node, at, whole: false };
    node = next;
    at = entry?.key.at ?? next.at;
  }
  return { node, at, whole: true };
}

const entryIn = (node: Tree, key: PropertyKey): TreeEntry | undefined =>
  node.kind === "map" ? node.entries.find((e) => e.key.text === String(key)) : undefined;

/** The entry, key and value, a path leads to. */
export function entryAt(tree: Tree, path: Path): TreeEntry | undefined {
  let node: Tree | undefined = tree;
  for (const key of path.slice(0, -1))
    node = node?.kind === "list" ? node.items[Number(key)] : valueUnder(node, String(key));
  const last = path.at(-1);
  return node && last !== undefined ? entryIn(node, last) : undefined;
}

type Def = {
  shape?: Record<string, z.core.$ZodType>;
  innerType?: z.core.$ZodType;
  element?: z.core.$ZodType;
  valueType?: z.core.$ZodType;
};
const defOf = (schema: z.core.$ZodType | undefined): Def => (schema?._zod.def ?? {}) as Def;

/** The schema without what only says that it may be absent. */
export function bare(schema: z.core.$ZodType | undefined): z.core.$ZodType | undefined {
  let inner = schema;
  while (defOf(inner).innerType) inner = defOf(inner).innerType;
  return inner;
}

/** The keys of a map schema with their schemas. */
export const shapeOf = (schema: z.core.$ZodType | undefined): Record<string, z.core.$ZodType> | undefined =>
  defOf(bare(schema)).shape;

/** The schema of what a list or a map of names holds. */
export const elementOf = (schema: z.core.$ZodType | undefined): z.core.$ZodType | undefined => {
  const def = defOf(bare(schema));
  return def.element ?? def.valueType;
};

function schemaAt(schema: z.core.$ZodType, path: Path): z.core.$ZodType | undefined {
  let inner: z.core.$ZodType | undefined = schema;
  for (const key of path) inner = shapeOf(inner)?.[String(key)] ?? elementOf(inner);
  return inner;
}
