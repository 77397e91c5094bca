// The Markdown that recipes are written in: paragraphs, headings, numbered steps, stress. No markup, no links out.
import MarkdownIt, { type Token } from "markdown-it";

/** HTML stays text. Pages print prose with the same rules that it was checked by. */
export const markdown = new MarkdownIt({ html: false, linkify: false, typographer: false }).disable([
  "reference",
  "lheading",
]);

/** A block of Markdown with its lines (from 0, the last excluded), the blocks in it and its inline text, if it has one. */
export type Block = {
  readonly type: string;
  readonly tag: string;
  readonly lines: readonly [number, number];
  readonly inside: Block[];
  inline?: Token;
};

/** The blocks of a text as a tree; types are those of the opening token without its ending. */
export function blocksOf(text: string): readonly Block[] {
  const root: Block = { type: "root", tag: "", lines: [0, 0], inside: [] };
  const open = [root];
  for (const token of markdown.parse(text, {})) {
    const parent = open.at(-1) ?? root;
    if (token.type === "inline") parent.inline = token;
    else if (token.nesting < 0) open.pop();
    else {
      const block: Block = {
        type: token.type.replace(/_open$/, ""),
        tag: token.tag,
        lines: token.map ?? parent.lines,
        inside: [],
      };
      parent.inside.push(block);
      if (token.nesting > 0) open.push(block);
    }
  }
  return root.inside;
}
