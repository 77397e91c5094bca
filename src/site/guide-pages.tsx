// The guide's Markdown files -> its pages, with every whole recipe in them worked out and drawn.
import { GuidePageView } from "../../layouts/guide-page.tsx";
import { drawCoatedView } from "../drawing/coated-view.ts";
import { type GuideSource, guidePageLeaf } from "../leaves/guide-page.ts";
import { rootFrom } from "../leaves/paths.ts";
import { slug } from "../units/slug.ts";
import type { SourceFile } from "./content-files.ts";
import { isWhole } from "./guide-examples.ts";
import { pageHtml } from "./page-html.ts";
import type { Page } from "./site.ts";
import { workRecipe } from "./work-recipe.ts";
import type { YardAndShop } from "./yard-of.ts";

/** In the order of the file names, `index.md` first; without one the first page stands in its place. */
function guideSources(files: readonly SourceFile[]): readonly GuideSource[] {
  const [first, ...rest] = files
    .map(({ file, text }) => ({ path: pathOf(file), markdown: text }))
    .sort((a, b) => Number(b.path === "index.html") - Number(a.path === "index.html"));
  return first ? [{ ...first, path: "index.html" }, ...rest] : [];
}

/** "content/guide/05-panels.md" -> "05-panels.html": nothing in a file's name can break a link or leave the folder. */
const pathOf = (file: string): string => `${slug((file.split("/guide/").at(-1) ?? file).replace(/\.md$/, ""))}.html`;

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
