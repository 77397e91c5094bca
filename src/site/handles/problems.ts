// `shopleaf problems`: files and folders -> their problems, for people on standard error, as JSON on standard output.
import { basename, dirname, join, resolve } from "node:path";
import { inReadingOrder, type Problem, problem } from "../../problems/problem.ts";
import { findFiles, isFolder, isProblem, readContent, readSource, startOf } from "../content-files.ts";
import { guideProblems } from "../guide-examples.ts";
import { readPhotos } from "../photos/read-photos.ts";
import { printJson, tellProblems } from "../print-json.ts";
import { recipesIn, workContent } from "../work-content.ts";
import { workRecipe } from "../work-recipe.ts";
import { WrongCall } from "../wrong-call.ts";
import { yardFor } from "../yard-for.ts";
import { parseOptions } from "./options.ts";

export async function problems(words: readonly string[]): Promise<number> {
  const { given, alone } = parseOptions(words, ["content"]);
  if (alone.length === 0) throw new WrongCall("problems takes at least one recipe or folder");
  const found: Problem[] = alone.flatMap((path) => findProblems(path, given.content));
  for (const path of alone) found.push(...(await photoProblems(path)));
  const told = inReadingOrder(found);
  printJson({ problems: told });
  return tellProblems(told);
}

/** A content folder is checked whole, drafts too; any other folder recipe by recipe; a yard's file with its whole yard. */
function findProblems(path: string, contentFolder: string | undefined): readonly Problem[] {
  if (!isFolder(path)) return fileProblems(path, contentFolder);
  if (isFolder(join(path, "recipes"))) {
    const { content, problems: reading } = readContent(path);
    const worked = workContent(content);
    return [
      ...reading,
      ...worked.problems,
      ...guideProblems(content.guide, worked),
      ...content.recipes.flatMap(({ file }) => fileProblems(file, path)),
    ];
  }
  const recipes = findFiles(path, [".md"]);
  if (recipes.length === 0) return [problem("no-recipes", startOf(path), {})];
  return recipes.flatMap((recipe) => fileProblems(recipe, contentFolder));
}

/** Only of a whole content folder: photographs lie beside recipes. */
async function photoProblems(path: string): Promise<readonly Problem[]> {
  if (!isFolder(path) || !isFolder(join(path, "recipes"))) return [];
  const { content } = readContent(path);
  return (await readPhotos(path, recipesIn(content, workContent(content)))).problems;
}

function fileProblems(path: string, contentFolder: string | undefined): readonly Problem[] {
  const source = readSource(path);
  if (isProblem(source)) return [source];
  const yard = yardFor(path, contentFolder);
  if (isGuidePage(path)) return [...yard.problems, ...guideProblems([source], yard)];
  return path.endsWith(".md") ? [...yard.problems, ...workRecipe(source, yard).problems] : yard.problems;
}

/** A page of the guide is checked for the recipes in it. */
const isGuidePage = (path: string): boolean => path.endsWith(".md") && basename(dirname(resolve(path))) === "guide";
