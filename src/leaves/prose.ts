// Worked-out prose -> markup: Markdown with its figures set in as text. Nothing a maker writes becomes markup of its own.
import markdownIt from "markdown-it";
import type { Figure, WorkedProse } from "../item/item.ts";
import type { Markup } from "./leaf.ts";

/** Recipes stress words and make lists; links, pictures and HTML stay text, so that no leaf can point off its shelf. */
const markdown = markdownIt({ html: false, linkify: false, typographer: false }).disable([
  "link",
  "image",
  "autolink",
  "reference",
  "code",
]);

const escapes: Record<string, string> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };
export const escapeText = (text: string): string => text.replace(/[&<>"']/g, (c) => escapes[c] ?? c);

/** Paragraphs and lists of the prose. Errors: a figure that is missing is our bug. */
export const proseBlock = (prose: WorkedProse, print: (figure: Figure) => string): Markup => ({
  html: withFigures(markdown.render(prose.markdown), prose, print),
});

/** The prose as one line, without a paragraph round it. */
export const proseLine = (prose: WorkedProse, print: (figure: Figure) => string): Markup => ({
  html: withFigures(markdown.renderInline(prose.markdown.replaceAll("\n", " ")), prose, print),
});

/** The prose as plain text, for titles and descriptions. */
export const proseText = (prose: WorkedProse, print: (figure: Figure) => string): string =>
  setFigures(prose.markdown.replace(/[*_]/g, ""), prose, print);

const withFigures = (html: string, prose: WorkedProse, print: (figure: Figure) => string): string =>
  setFigures(html, prose, (figure) => `<span class="figure">${escapeText(print(figure))}</span>`);

const setFigures = (text: string, prose: WorkedProse, print: (figure: Figure) => string): string =>
  text.replace(/⟦(\d+)⟧/g, (_, number: string) => {
    const figure = prose.figures[Number(number)];
    if (!figure) throw new Error(`prose at line ${prose.at.line} has no figure ${number}`);
    return print(figure);
  });
