// YAML text -> a tree of maps, lists and texts, each at its place. Every scalar stays the text the maker wrote.
import {
  type Document,
  isAlias,
  isCollection,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  parseDocument,
} from "yaml";
import type { Place, Written } from "./place.ts";
import { type Problem, problem } from "./problem.ts";

export type TreeText = { readonly kind: "text" } & Written;
export type TreeEntry = { readonly key: Written; readonly value: Tree };
export type TreeMap = { readonly kind: "map"; readonly at: Place; readonly entries: readonly TreeEntry[] };
export type TreeList = { readonly kind: "list"; readonly at: Place; readonly items: readonly Tree[] };
export type Tree = TreeText | TreeMap | TreeList;

/** The value a map has under a key. */
export const valueUnder = (tree: Tree | undefined, key: string): Tree | undefined =>
  tree?.kind === "map" ? tree.entries.find((e) => e.key.text === key)?.value : undefined;

/** The entries of the map under a key; none where it is absent or no map. */
export function entriesUnder(tree: Tree | undefined, key: string): readonly TreeEntry[] {
  const value = valueUnder(tree, key);
  return value?.kind === "map" ? value.entries : [];
}

/** The text under a key, if it is there and is one text. */
export function textUnder(tree: Tree | undefined, key: string): Written | undefined {
  const value = valueUnder(tree, key);
  return value?.kind === "text" ? { text: value.text, at: value.at } : undefined;
}

/**
 * Reads `text`, whose first line is line `firstLine` of the file. The tree is always a map, empty where the text says
 * nothing that can be read; where a key stands twice the first counts.
 */
export function readYamlTree(file: string, text: string, firstLine: number): { tree: TreeMap; problems: Problem[] } {
  const lines = new LineCounter();
  const document = parseDocument(text, {
    schema: "failsafe",
    lineCounter: lines,
    prettyErrors: false,
    uniqueKeys: false,
    logLevel: "error",
  });
  const place = (offset: number): Place => {
    const { line, col } = lines.linePos(offset);
    return { file, line: Math.max(line, 1) + firstLine - 1, column: Math.max(col, 1) };
  };
  const problems = syntaxProblems(document, text, place);
  const empty: TreeMap = { kind: "map", at: place(0), entries: [] };
  const root = document.contents as Node | null;
  if (problems.length > 0) return { tree: empty, problems };
  if (root === null || (isScalar(root) && root.value === "")) return { tree: empty, problems };
  const tree = grow(root, text, place, problems);
  if (tree.kind === "map") return { tree, problems };
  problems.push(
    problem("yaml-no-keys", tree.at, { found: tree.kind === "list" ? "a list" : `"${shorten(tree.text)}"` }),
  );
  return { tree: empty, problems };
}

type ToPlace = (offset: number) => Place;

/** The reader's errors in plain words, the first of each line. */
function syntaxProblems(document: Document.Parsed, text: string, place: ToPlace): Problem[] {
  const lineOf = (offset: number): string => {
    const start = text.lastIndexOf("\n", offset - 1) + 1;
    const end = text.indexOf("\n", offset);
    return text.slice(start, end < 0 ? undefined : end).trim();
  };
  const lines = new Set<number>();
  return document.errors.flatMap((error) => {
    const [code, offset] = meaning(error.code, error.message, error.pos[0], text, lineOf);
    const at = place(offset);
    const blamed = place(error.pos[0]).line;
    if (lines.has(at.line) || lines.has(blamed)) return [];
    lines.add(at.line).add(blamed);
    return [problem(code, at, { found: shorten(lineOf(offset)) })];
  });
}

type SyntaxCode =
  | "yaml-tab"
  | "yaml-indent"
  | "yaml-second-colon"
  | "yaml-open-quote"
  | "yaml-no-colon"
  | "yaml-bad-start"
  | "yaml-shorthand"
  | "yaml-unreadable";

/** What the maker most likely did, and where. */
function meaning(
  code: string,
  message: string,
  offset: number,
  text: string,
  lineOf: (offset: number) => string,
): [SyntaxCode, number] {
  if (code === "TAB_AS_INDENT") return ["yaml-tab", offset];
  if (code === "BAD_INDENT") return ["yaml-indent", offset];
  if (code === "BLOCK_AS_IMPLICIT_KEY") {
    if ((lineOf(offset).match(/:(\s|$)/g) ?? []).length > 1) return ["yaml-second-colon", offset];
    const next = text.indexOf("\n", offset) + 1;
    return ["yaml-indent", next + (/^ */.exec(text.slice(next))?.[0].length ?? 0)];
  }
  if (code === "MISSING_CHAR" && message.includes("quote")) {
    const opened = [...text.slice(0, offset).matchAll(/[:-][ ]+["']/g)].at(-1);
    return ["yaml-open-quote", opened ? opened.index + opened[0].length - 1 : offset];
  }
  if (code === "MISSING_CHAR" || code === "MULTILINE_IMPLICIT_KEY") return ["yaml-no-colon", offset];
  if (code === "BAD_SCALAR_START") return ["yaml-bad-start", offset];
  if (code === "BAD_ALIAS") return ["yaml-shorthand", offset];
  return ["yaml-unreadable", offset];
}

/** Where the scalar's own first letter stands: inside its quotes, or under its block sign. */
function textStart(node: Node, text: string): number {
  const start = node.range?.[0] ?? 0;
  const first = text[start];
  if (!isScalar(node)) return start;
  if (node.type === "QUOTE_DOUBLE" || node.type === "QUOTE_SINGLE") return start + 1;
  if (node.type === "BLOCK_LITERAL" || node.type === "BLOCK_FOLDED") {
    const body = /^[^\n]*\n(?:[ \t]*\n)*[ ]*/.exec(text.slice(start));
    return start + (body?.[0].length ?? 0);
  }
  return first === undefined ? text.length : start;
}

function grow(node: Node, text: string, place: ToPlace, problems: Problem[]): Tree {
  const at = place(textStart(node, text));
  if (isAlias(node)) {
    problems.push(problem("yaml-shorthand", at, { found: `*${node.source}` }));
    return { kind: "text", text: "", at };
  }
  if (node.tag !== undefined && hasSign(node, text)) problems.push(problem("yaml-shorthand", at, { found: node.tag }));
  if ((isScalar(node) || isCollection(node)) && node.anchor !== undefined)
    problems.push(problem("yaml-shorthand", at, { found: `&${node.anchor}` }));
  if (isMap(node)) {
    if (node.flow) problems.push(problem("yaml-flow", at, { found: "{" }));
    return { kind: "map", at, entries: growEntries(node.items, text, place, problems) };
  }
  if (isSeq(node)) {
    if (node.flow) problems.push(problem("yaml-flow", at, { found: "[" }));
    return { kind: "list", at, items: node.items.map((item) => grow(item as Node, text, place, problems)) };
  }
  const value = isScalar(node) ? String(node.value ?? "") : "";
  if (node.comment && /^\d{1,2}\b/.test(node.comment))
    problems.push(problem("yaml-hash", at, { kept: shorten(value), lost: shorten(`#${node.comment}`) }));
  return { kind: "text", text: value, at };
}

/** Whether a tag was written out; the reader also tags what it made itself. */
const hasSign = (node: Node, text: string): boolean => {
  const start = node.range?.[0] ?? 0;
  const line = text.slice(text.lastIndexOf("\n", start - 1) + 1, start);
  return /(^|\s)!\S*\s*$/.test(line);
};

type Pair = { readonly key: unknown; readonly value: unknown };

function growEntries(items: readonly Pair[], text: string, place: ToPlace, problems: Problem[]): TreeEntry[] {
  const entries: TreeEntry[] = [];
  for (const { key, value } of items) {
    const keyNode = key as Node | null;
    if (!isScalar(keyNode)) {
      const at = place(keyNode?.range?.[0] ?? 0);
      problems.push(
        problem("yaml-unreadable", at, { found: shorten(text.slice(keyNode?.range?.[0] ?? 0).split("\n")[0] ?? "") }),
      );
      continue;
    }
    const name: Written = { text: String(keyNode.value ?? ""), at: place(textStart(keyNode, text)) };
    const twin = entries.find((e) => e.key.text === name.text);
    const grown: Tree = value
      ? grow(value as Node, text, place, problems)
      : { kind: "text", text: "", at: place(keyNode.range?.[1] ?? 0) };
    if (twin)
      problems.push(problem("duplicate-key", name.at, { key: name.text, firstLine: twin.key.at.line }, twin.key.at));
    else entries.push({ key: name, value: grown });
  }
  return entries;
}

const shorten = (text: string): string => (text.length > 60 ? `${text.slice(0, 57)}…` : text);
