// A block of Markdown -> its source text in which every character knows its place in the file.
import type { Token } from "markdown-it";
import type { Place, Written } from "../problems/place.ts";
import type { Block } from "./markdown.ts";

export type Source = { readonly file: string; readonly lines: readonly string[]; readonly firstLine: number };

/** The source of a paragraph or a heading, its lines without what Markdown takes away before them. */
export type Passage = {
  readonly lines: readonly Written[];
  readonly children: readonly Token[];
  readonly at: Place;
};

export function passageOf(block: Block, source: Source): Passage {
  const texts = (block.inline?.content ?? "").split("\n");
  const first = block.inline?.map?.[0] ?? block.lines[0];
  const lines = texts.map((text, i) => {
    const raw = source.lines[first + i] ?? "";
    const column = Math.max(0, raw.trimEnd().endsWith(text) ? raw.trimEnd().length - text.length : raw.indexOf(text));
    return { text, at: { file: source.file, line: source.firstLine + first + i, column: column + 1 } };
  });
  return { lines, children: block.inline?.children ?? [], at: lines[0]?.at ?? placeOf(block, source) };
}

/** Where a block starts: at the first sign of its first line. */
export function placeOf(block: Block, source: Source): Place {
  const raw = source.lines[block.lines[0]] ?? "";
  const column = raw.length - raw.trimStart().length + 1;
  return { file: source.file, line: source.firstLine + block.lines[0], column };
}

/** The passage without the first `count` letters of its first line and the blanks after them. */
export function passageAfter(passage: Passage, count: number): Passage {
  const [first, ...others] = passage.lines;
  if (!first) return passage;
  const rest = first.text.slice(count).trimStart();
  const at = { ...first.at, column: first.at.column + first.text.length - rest.length };
  return { lines: [{ text: rest, at }, ...others], children: passage.children, at };
}

/** What stands in bold, in order, each in its place. */
export function boldIn(passage: Passage): Written[] {
  const bold: Written[] = [];
  let line = 0;
  let from = 0;
  for (let i = 0; i < passage.children.length; i++) {
    if (passage.children[i]?.type !== "strong_open") continue;
    const mark = passage.children[i]?.markup ?? "";
    let text = "";
    while (++i < passage.children.length && passage.children[i]?.type !== "strong_close")
      text += passage.children[i]?.type === "softbreak" ? " " : (passage.children[i]?.content ?? "");
    while (line < passage.lines.length && !passage.lines[line]?.text.includes(mark, from)) {
      line++;
      from = 0;
    }
    const written = passage.lines[line];
    if (!written) return [...bold, { text, at: passage.at }];
    const start = written.text.indexOf(mark, from) + mark.length;
    const ends = written.text.indexOf(mark, start);
    bold.push({ text, at: { ...written.at, column: written.at.column + start } });
    from = ends < 0 ? written.text.length : ends + mark.length;
  }
  return bold;
}
