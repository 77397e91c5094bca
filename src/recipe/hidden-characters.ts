// Characters that can't be seen, or that turn the reading direction, are told at their place and never read on.
import type { Place, Written } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";
import type { Tree } from "../problems/yaml-tree.ts";

const named: Readonly<Record<number, string>> = {
  0: "a null character",
  8: "a backspace",
  27: "an escape character",
  173: "a soft hyphen",
  1564: "a reading-direction mark",
  8203: "a blank of no width",
  8206: "a reading-direction mark",
  8207: "a reading-direction mark",
  8232: "a line separator",
  8233: "a paragraph separator",
  8234: "a reading-direction mark",
  8235: "a reading-direction mark",
  8236: "a reading-direction mark",
  8237: "a reading-direction override",
  8238: "a reading-direction override",
  8294: "a reading-direction mark",
  8295: "a reading-direction mark",
  8296: "a reading-direction mark",
  8297: "a reading-direction mark",
  65279: "a byte-order mark",
  65533: "a sign that stands for broken text",
};

// Controls but for tab and line feed, soft hyphen, marks of direction and no width, tags, lone surrogates, broken text.
const hidden =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: finding them is what it is for
  /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u00ad\u061c\u180e\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\uffff\u{e0000}-\u{e0fff}\p{Cs}]/u;

/** The first on each line. `text` has single line feeds. */
export function checkHiddenCharacters(file: string, text: string): Problem[] {
  return text.split("\n").flatMap((line, i) => {
    const found = hidden.exec(line);
    return found ? [told(found, line, { file, line: i + 1, column: found.index + 1 })] : [];
  });
}

function told(found: RegExpExecArray, text: string, at: Place): Problem {
  const code = found[0].codePointAt(0) ?? 0;
  return problem("hidden-character", at, {
    character: `U+${code.toString(16).toUpperCase().padStart(4, "0")}`,
    named: named[code] ?? "a character that can't be seen",
    before: text.slice(Math.max(0, found.index - 20), found.index).trimStart(),
  });
}

/** The same of keys and values as they are read: in quotes a character may be spelt as its number. */
export function checkHiddenValues(tree: Tree): Problem[] {
  if (tree.kind === "list") return tree.items.flatMap(checkHiddenValues);
  if (tree.kind === "map")
    return tree.entries.flatMap(({ key, value }) => [...checkHiddenText(key), ...checkHiddenValues(value)]);
  return checkHiddenText(tree);
}

function checkHiddenText({ text, at }: Written): Problem[] {
  const found = hidden.exec(text);
  return found ? [told(found, text, at)] : [];
}

/** The text with a blank in the place of each, so that the rest can be read on at the same columns. */
export const withoutHidden = (text: string): string =>
  text
    .split("\n")
    .map((line) => line.replace(new RegExp(hidden, "gu"), (found) => " ".repeat(found.length)))
    .join("\n");

/** Whether the text holds one. */
export const hasHidden = (text: string): boolean => hidden.test(text);
