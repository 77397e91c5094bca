// A maker's folders on disk -> the texts in them, in sorted order. The only place that reads what a maker wrote.
import { readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join, resolve, sep } from "node:path";
import type { Place } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";

/** One file as it was asked for, with `/` between folders; of a recipe also the drawings beside it that it names. */
export type SourceFile = { readonly file: string; readonly text: string; readonly drawings?: readonly Drawing[] };
type Drawing = { readonly name: string; readonly text: string };

export type Content = {
  readonly folder: string;
  readonly recipes: readonly SourceFile[];
  readonly yard: readonly SourceFile[];
  readonly shop: readonly SourceFile[];
  readonly guide: readonly SourceFile[];
  /** What was kept when sheets were printed. Private. */
  readonly printed: readonly SourceFile[];
  /** Private. */
  readonly orders: readonly SourceFile[];
};

const slashed = (path: string): string => (sep === "/" ? path : path.split(sep).join("/"));

/** Where a problem with a whole file or folder stands. */
export const startOf = (path: string): Place => ({ file: slashed(path), line: 1, column: 1 });

const byName = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

export const isFolder = (path: string): boolean => statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;

/** Plain words for what the disk answers. */
export function tellWhy(error: unknown): string {
  const code = (error as NodeJS.ErrnoException).code;
  if (code === "ENOENT") return "there is no such file";
  if (code === "EACCES" || code === "EPERM") return "you may not open it";
  if (code === "EISDIR") return "it is a folder";
  if (code === "ENOTDIR" || code === "EEXIST") return "a file stands where a folder is meant";
  return `the disk answers ${code ?? String(error)}`;
}

/** The text of one file, without a byte order mark and with plain line ends, or what is wrong with it. */
export function readSource(path: string): SourceFile | Problem {
  try {
    const text = textOf(path);
    const drawings = path.endsWith(".md") ? drawingsFor(path, text) : [];
    return { file: slashed(path), text, ...(drawings.length > 0 ? { drawings } : {}) };
  } catch (error) {
    if (error instanceof TypeError) return problem("not-text", startOf(path), {});
    return problem("unreadable-file", startOf(path), { why: tellWhy(error) });
  }
}

const textOf = (path: string): string =>
  new TextDecoder("utf-8", { fatal: true }).decode(readFileSync(path)).replaceAll("\r\n", "\n");

/** The drawings a recipe names that are there; one that isn't is told where it is named. */
function drawingsFor(path: string, recipe: string): Drawing[] {
  const names = new Set([...recipe.matchAll(/\boutline\s+([\w-]+\.svg)\b/g)].map(([, name = ""]) => name));
  return [...names].flatMap((name) => {
    const beside = join(dirname(path), name);
    const there = statSync(beside, { throwIfNoEntry: false })?.isFile() ?? false;
    return there ? [{ name, text: textOf(beside) }] : [];
  });
}

/** The text of the drawing of this name. */
export const drawingOf =
  ({ drawings }: SourceFile) =>
  (name: string): string | undefined =>
    drawings?.find((drawing) => drawing.name === name)?.text;

export const isProblem = (value: object): value is Problem => "code" in value;

/** Paths of the files below a folder whose name ends so, sorted; names that start with a dot are not looked at. */
export function findFiles(folder: string, endings: readonly string[]): string[] {
  const found: string[] = [];
  for (const entry of readdirSync(folder, { withFileTypes: true }).sort((a, b) => byName(a.name, b.name))) {
    if (entry.name.startsWith(".") || entry.name === "node_modules") continue;
    const path = join(folder, entry.name);
    // Links are followed to files, not to folders: a link to a folder above would never end.
    if (entry.isDirectory()) found.push(...findFiles(path, endings));
    else if (endings.some((ending) => entry.name.endsWith(ending)) && !isFolder(path)) found.push(path);
  }
  return found;
}

function readFolder(folder: string, endings: readonly string[], problems: Problem[]): SourceFile[] {
  const read = findFiles(folder, endings).map(readSource);
  problems.push(...read.filter(isProblem));
  return read.filter((file): file is SourceFile => !isProblem(file));
}

/** The yard and the shop of a content folder. */
export function readYardFiles(
  folder: string,
): Pick<Content, "yard" | "shop"> & { readonly problems: readonly Problem[] } {
  const problems: Problem[] = [];
  const of = (what: "yard" | "shop") => {
    const path = join(folder, what);
    if (isFolder(path)) return readFolder(path, [".yaml", ".yml"], problems);
    problems.push(problem("no-folder", startOf(folder), { what }));
    return undefined;
  };
  const [yard, shop] = [of("yard"), of("shop")];
  if (shop && shop.length !== 1) {
    problems.push(problem("shop-files", startOf(join(folder, "shop")), { count: shop.length }));
  }
  return { yard: yard ?? [], shop: shop ?? [], problems };
}

/** Everything in a content folder that the site is made from. */
export function readContent(folder: string): { readonly content: Content; readonly problems: readonly Problem[] } {
  const empty: Content = {
    folder: slashed(folder),
    recipes: [],
    yard: [],
    shop: [],
    guide: [],
    orders: [],
    printed: [],
  };
  if (!isFolder(folder)) {
    return { content: empty, problems: [problem("no-folder", startOf(folder), { what: "content" })] };
  }
  const { yard, shop, problems: yardProblems } = readYardFiles(folder);
  const problems = [...yardProblems];
  const recipesFolder = join(folder, "recipes");
  if (!isFolder(recipesFolder)) problems.push(problem("no-folder", startOf(folder), { what: "recipes" }));
  const recipes = isFolder(recipesFolder) ? readFolder(recipesFolder, [".md"], problems) : [];
  if (isFolder(recipesFolder) && findFiles(recipesFolder, [".md"]).length === 0) {
    problems.push(problem("no-recipes", startOf(recipesFolder), {}));
  }
  const guideFolder = join(folder, "guide");
  const guide = isFolder(guideFolder) ? readFolder(guideFolder, [".md"], problems) : [];
  const ordersFolder = join(folder, "orders");
  const orders = isFolder(ordersFolder) ? readFolder(ordersFolder, [".yaml", ".yml"], problems) : [];
  const printedFolder = join(folder, "printed");
  const printed = isFolder(printedFolder) ? readFolder(printedFolder, [".json"], problems) : [];
  return { content: { ...empty, recipes, yard, shop, guide, orders, printed }, problems };
}

/** The content folder a recipe belongs to: the nearest folder above it that holds a yard; undefined if there is none. */
export function findContentFolder(path: string): string | undefined {
  let folder = dirname(path);
  for (;;) {
    if (isFolder(join(folder, "yard"))) return folder;
    const above = join(folder, "..");
    if (resolve(above) === resolve(folder)) return undefined;
    folder = above;
  }
}
