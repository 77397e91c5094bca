// The guide's Markdown files -> the whole recipes in them, worked out like any other, with their problems.
import type { Place } from "../problems/place.ts";
import type { Problem } from "../problems/problem.ts";
import type { SourceFile } from "./content-files.ts";
import { workRecipe } from "./work-recipe.ts";
import type { YardAndShop } from "./yard-of.ts";

/** A whole recipe in a page: a fenced block marked `recipe` that starts with front-matter. */
type Example = { readonly text: string; readonly line: number };

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

/** A block without front-matter is only part of a recipe. */
export const isWhole = (text: string): boolean => text.startsWith("---\n");

/** `line` is that of the opening fence. */
function findExamples(markdown: string): readonly Example[] {
  const examples: Example[] = [];
  for (const match of markdown.matchAll(/^(`{3,})recipe[ \t]*\n([\s\S]*?)^\1[ \t]*$/gm)) {
    const text = match[2] ?? "";
    if (isWhole(text)) examples.push({ text, line: markdown.slice(0, match.index).split("\n").length });
  }
  return examples;
}
