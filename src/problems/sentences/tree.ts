// The sentences of problems any file of keys and values can have, one for each code.
import type { Sentence } from "../sentences.ts";

const quoted = (names: readonly string[]): string => names.map((n) => `"${n}"`).join(", ");
const optional = (nearest: string | undefined) => (nearest === undefined ? {} : { nearest });

export const treeSentences = {
  "yaml-no-keys": (f: { found: string }) => ({
    says: `Here stands ${f.found}, where lines like "key: value" belong.`,
    found: f.found,
    expected: 'lines like "title: Windfall bin"',
    mend: "Write a key, a colon, a blank and the value on each line.",
  }),
  "yaml-tab": (f: { found: string }) => ({
    says: `"${f.found}" is pushed in with a tab.`,
    found: f.found,
    expected: "blanks at the start of the line",
    mend: "Put two blanks in place of the tab.",
  }),
  "yaml-indent": (f: { found: string }) => ({
    says: `"${f.found}" does not line up with the lines it belongs to.`,
    found: f.found,
    expected: "the same number of blanks before each line of a group",
    mend: "Line it up with its neighbours above.",
  }),
  "yaml-second-colon": (f: { found: string }) => ({
    says: `"${f.found}" has a second colon on the line.`,
    found: f.found,
    expected: "one key and one value a line",
    mend: "Write one key a line, or put the value in double quotes if the colon belongs to it.",
  }),
  "yaml-open-quote": (f: { found: string }) => ({
    says: `A quote is opened in "${f.found}" and never closed.`,
    found: f.found,
    expected: "a closing quote",
    mend: 'Close the quote, or leave it out. An inch mark at the end of a value is fine: write 18".',
  }),
  "yaml-no-colon": (f: { found: string }) => ({
    says: `"${f.found}" has no colon, so no key can be told from a value.`,
    found: f.found,
    expected: '"key: value", with a blank after the colon',
    mend: "Put a colon and a blank after the key, or push a line that goes on from the one above further in.",
  }),
  "yaml-bad-start": (f: { found: string }) => ({
    says: `The value in "${f.found}" starts with a sign that can't start one.`,
    found: f.found,
    expected: "a value that starts with a letter, a digit or a quote",
    mend: "Put the whole value in double quotes.",
  }),
  "yaml-shorthand": (f: { found: string }) => ({
    says: `"${f.found}" starts with a sign (&, * or !) that has a meaning of its own here and is not used in these files.`,
    found: f.found,
    expected: "the value itself",
    mend: "Write the value out, or put it in double quotes.",
  }),
  "yaml-flow": (f: { found: string }) => ({
    says: `A value starts with ${f.found}, so it reads as a list in brackets.`,
    found: f.found,
    expected: "one value a line",
    mend: "Write each entry on a line of its own; put a text that starts with a bracket in double quotes.",
  }),
  "yaml-hash": (f: { kept: string; lost: string }) => ({
    says: `"${f.lost}" is read as a remark, because # after a blank starts one; only "${f.kept}" is left.`,
    found: f.lost,
    expected: '"No. 8" for a screw size',
    mend: 'Write "No." for #, or start a real remark with a word.',
  }),
  "yaml-unreadable": (f: { found: string }) => ({
    says: `"${f.found}" can't be read as a key and a value.`,
    found: f.found,
    expected: '"key: value" lines, one a line',
    mend: "Write a key, a colon, a blank and the value; put odd signs in double quotes.",
  }),
  "duplicate-key": (f: { key: string; firstLine: number }) => ({
    says: `"${f.key}" stands here a second time; the first is on line ${f.firstLine}.`,
    found: f.key,
    expected: "each name once",
    mend: "Take one of the two out, or give it another name.",
  }),
  "unknown-key": (f: { key: string; where: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `"${f.key}" is not a key ${f.where}.`,
    found: f.key,
    expected: f.known.length > 0 ? `one of ${quoted(f.known)}` : "no key here",
    ...optional(f.nearest),
    mend: f.nearest === undefined ? "Take the line out, or use one of the keys." : `Write "${f.nearest}".`,
  }),
  "missing-key": (f: { key: string; where: string; expected: string }) => ({
    says: `"${f.key}" is missing ${f.where}.`,
    expected: f.expected,
    mend: `Add a line "${f.key}: …".`,
  }),
  "wrong-kind": (f: { key: string; found: string; expected: string }) => ({
    says: `"${f.key}" has ${f.found}, not ${f.expected}.`,
    found: f.found,
    expected: f.expected,
    mend: `Give "${f.key}" ${f.expected}.`,
  }),
  "not-one-of": (f: { key: string; found: string; allowed: readonly string[]; nearest: string | undefined }) => ({
    says: `"${f.found}" is not something "${f.key}" can be.`,
    found: f.found,
    expected: `one of ${quoted(f.allowed)}`,
    ...optional(f.nearest),
    mend: `Write ${f.nearest === undefined ? "one of them" : `"${f.nearest}"`}.`,
  }),
  "bad-value": (f: { key: string; found: string; expected: string }) => ({
    says: f.found === "" ? `"${f.key}" has no value.` : `"${f.key}" can't be "${f.found}".`,
    found: f.found,
    expected: f.expected,
    mend: `Write ${f.expected}.`,
  }),
} satisfies Record<string, (facts: never) => Sentence>;
