// The guide's Markdown files -> its pages, with every whole recipe in them worked out and drawn.
import { basename } from "node:path";
import { GuidePageView } from "../../layouts/guide-page.tsx";
import { drawCoatedView } from "../drawing/coated-view.ts";
import { type GuideSource, guidePageLeaf } from "../leaves/guide-page.ts";
import { rootFrom } from "../leaves/paths.ts";
import type { Place } from "../problems/place.ts";
import type { Problem } from "../problems/problem.ts";
import type { SourceFile } from "./content-files.ts";
import { pageHtml } from "./page-html.ts";
import type { Page } from "./site.ts";
import { workRecipe } from "./work-recipe.ts";
import type { YardAndShop } from "./yard-of.ts";

/** A whole recipe in a page: a fenced block marked `recipe` that starts with front-matter. */
type Example = { readonly text: string; readonly line: number };

/** In the order of the file names; `index.md` comes first. */
export const guideSources = (files: readonly SourceFile[]): readonly GuideSource[] =>
  files
    .map(({ file, text }) => ({ path: `${basename(file, ".md")}.html`, markdown: text }))
    .sort((a, b) => Number(b.path === "index.html") - Number(a.path === "index.html"));

export function guidePages(files: readonly SourceFile[], yard: YardAndShop): readonly Page[] {
  const all = guideSources(files);
  return all.map((source) => {
    const leaf = guidePageLeaf(source, all, (text) => {
      const [item] = isWhole(text) ? workRecipe({ file: source.path, text }, yard).items : [];
      return item && drawCoatedView(item);
    });
    return { path: `guide/${source.path}`, html: pageHtml(<GuidePageView leaf={leaf} root={rootFrom(source.path)} />) };
  });
}

/** The problems of the guide's whole recipes, each at its line in the guide. */
export const guideProblems = (files: readonly SourceFile[], yard: YardAndShop): readonly Problem[] =>
  files.flatMap((file) =>
    findExamples(file.text).flatMap(({ text, line }) => {
      const down = (at: Place): Place => ({ ...at, file: file.file, line: at.line + line });
      return workRecipe({ file: file.file, text }, yard).problems.map((found) => ({
        ...found,
        at: down(found.at),
        ...(found.also ? { also: found.also.file === file.file ? down(found.also) : found.also } : {}),
      }));
    }),
  );

const isWhole = (text: string): boolean => text.startsWith("---\n");

/** `line` is that of the opening fence. */
export function findExamples(markdown: string): readonly Example[] {
  const examples: Example[] = [];
  for (const match of markdown.matchAll(/^(`{3,})recipe[ \t]*\n([\s\S]*?)^\1[ \t]*$/gm)) {
    const text = match[2] ?? "";
    if (isWhole(text)) examples.push({ text, line: markdown.slice(0, match.index).split("\n").length });
  }
  return examples;
}
