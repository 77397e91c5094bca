// One Markdown page of the authoring guide -> guide page: contents, text, and each worked example with its drawing.
import markdownIt from "markdown-it";
import type { Drawing } from "../drawing/drawing.ts";
import { formatSvg } from "../drawing/svg.ts";
import { slug } from "../units/slug.ts";
import type { Link, Markup } from "./leaf.ts";
import { escapeText } from "./prose.ts";

export type GuidePage = {
  readonly title: string;
  readonly description: string;
  readonly contents: readonly { readonly id: string; readonly text: string }[];
  readonly body: Markup;
  /** Every page of the guide, this one among them, and the way up. */
  readonly pages: readonly (Link & { readonly here: boolean })[];
  readonly home: Link;
};

export type GuideSource = { readonly path: string; readonly markdown: string };

/** The first heading is the page's title; the file's path where it has none. */
export const guideTitle = (source: GuideSource): string =>
  /^#\s+(.+)$/m.exec(source.markdown)?.[1]?.trim() ?? source.path;

/**
 * `draw` gives the drawing of a fenced block marked `recipe`, or undefined where it is only part of one.
 * The guide is the shop's own text, but HTML in it stays text all the same.
 */
export function guidePageLeaf(
  source: GuideSource,
  all: readonly GuideSource[],
  draw: (recipe: string) => Drawing | undefined,
): GuidePage {
  const title = guideTitle(source);
  const contents: { id: string; text: string }[] = [];
  const markdown = markdownIt({ html: false, linkify: false });
  const tokens = markdown.parse(withoutTitle(source.markdown), {});
  const known = new Map<string, number>();
  tokens.forEach((token, i) => {
    if (token.type !== "heading_open") return;
    const text = tokens[i + 1]?.content.replaceAll("`", "") ?? "";
    const id = unused(slug(text) || "part", known);
    token.attrSet("id", id);
    if (token.tag === "h2") contents.push({ id, text });
  });
  markdown.renderer.rules.fence = (list, i) => {
    const { content = "", info = "" } = list[i] ?? {};
    const drawing = info.trim() === "recipe" ? draw(content) : undefined;
    return exampleMarkup(content, drawing && { ...drawing, id: `example-${i}` });
  };
  markdown.renderer.rules.table_open = () => '<div class="scroll" tabindex="0"><table>';
  markdown.renderer.rules.table_close = () => "</table></div>";
  return {
    title,
    description: `${title}: how recipes are written.`,
    contents,
    body: { html: markdown.renderer.render(tokens, markdown.options, {}) },
    pages: all.map((one) => ({ path: one.path, text: guideTitle(one), here: one.path === source.path })),
    home: { path: "index.html", text: "Authoring guide" },
  };
}

const withoutTitle = (markdown: string): string => markdown.replace(/^#\s+.+$/m, "");

function unused(id: string, known: Map<string, number>): string {
  const count = known.get(id) ?? 0;
  known.set(id, count + 1);
  return count === 0 ? id : `${id}-${count + 1}`;
}

function exampleMarkup(code: string, drawing: Drawing | undefined): string {
  const written = `<pre class="written" tabindex="0"><code>${escapeText(code)}</code></pre>`;
  if (!drawing) return `${written}\n`;
  return `<div class="example">${written}<figure class="drawing">${formatSvg(drawing)}<figcaption>${escapeText(drawing.title)}</figcaption></figure></div>\n`;
}
