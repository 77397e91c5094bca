// `only with lid`, `only for size M or L` -> where a line, a join, a step or a paragraph stands.
import type { Written } from "../problems/place.ts";
import { further } from "../problems/place.ts";
import { isName } from "./name.ts";
import { type Passage, passageAfter } from "./passage.ts";
import type { Only, Prose } from "./recipe.ts";
import { attempt, type Form, type Gathered, Scan } from "./scan.ts";

export const onlyForm: Form = {
  form: "only with|without CHOICE · only for CHOICE VALUE [or VALUE]",
  means: "It stands only where the buyer chose that; at the end of a line, or with a colon before a paragraph.",
  example: "only for size M or L",
};

/** The condition, noted for the check of names; undefined with its problem gathered. */
function readOnly(whole: Written, into: Gathered): Only | undefined {
  return attempt(into.problems, () => {
    const scan = new Scan(whole, onlyForm, into);
    scan.must("only");
    const word = scan.take();
    if (!["with", "without", "for"].includes(word.text)) {
      scan.read--;
      scan.wants('"with", "without" or "for"');
    }
    if (!isName(scan.peek())) scan.wants("the name of a choice");
    const choice = scan.take();
    const values = word.text === "for" ? [readValue(scan)] : [word];
    while (word.text === "for" && scan.skip("or")) values.push(readValue(scan));
    scan.end();
    const only: Only = { at: whole.at, choice, values };
    into.onlys.push(only);
    return only;
  });
}

function readValue(scan: Scan): Written {
  if (scan.done) scan.wants("a value of the choice");
  return scan.take();
}

const isOnly = (text: string): boolean => /^only(\s|$)/i.test(text);

/** The parts of a line without the one that starts with `only`, and what that says. */
export function takeOnly(
  parts: readonly Written[],
  into: Gathered,
): { readonly parts: readonly Written[]; readonly only?: Only } {
  const found = parts.find((part) => isOnly(part.text));
  const only = found && readOnly(found, into);
  return { parts: parts.filter((part) => part !== found), ...(only ? { only } : {}) };
}

/** A value without its last part, where that starts with `only`. */
export function cutOnly(value: Written, into: Gathered): { readonly value: Written; readonly only?: Only } {
  const comma = value.text.lastIndexOf(",");
  const last = value.text.slice(comma + 1);
  const blanks = last.length - last.trimStart().length;
  if (comma < 0 || !isOnly(last.trim())) return { value };
  const only = readOnly({ text: last.trim(), at: further(value.at, comma + 1 + blanks) }, into);
  return { value: { text: value.text.slice(0, comma).trimEnd(), at: value.at }, ...(only ? { only } : {}) };
}

/** A paragraph without `Only with lid:` before it. */
export function passageOnly(passage: Passage, into: Gathered): { readonly passage: Passage; readonly only?: Only } {
  const text = passage.lines[0]?.text ?? "";
  const head = /^Only (?:with|without|for) [^:{}]*:/.exec(text)?.[0];
  if (head === undefined) return { passage };
  const words = `o${head.slice(1, -1)}`;
  const only = readOnly({ text: words, at: passage.lines[0]?.at ?? passage.at }, into);
  return { passage: passageAfter(passage, head.length), ...(only ? { only } : {}) };
}

/** Prose that stood behind a condition starts with a capital of its own. */
export const underOnly = (prose: Prose, only: Only | undefined): Prose =>
  only ? { ...prose, markdown: prose.markdown.replace(/^[a-z]/, (first) => first.toUpperCase()), only } : prose;
