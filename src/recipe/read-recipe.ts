// A recipe file -> the recipe, or every problem in it. This file is the reader's table of contents.
import type { Place, Written } from "../problems/place.ts";
import { inReadingOrder, type Problem, problem } from "../problems/problem.ts";
import { entriesUnder, type TreeMap, textUnder, valueUnder } from "../problems/yaml-tree.ts";
import { slug } from "../units/slug.ts";
import { readBody } from "./body.ts";
import { checkLineCounts } from "./check-counts.ts";
import { checkNamesGiven, checkReferences, checkSizesUsed, checkWhatLinesAre } from "./check-names.ts";
import { checkSizeCircles } from "./check-sizes.ts";
import { checkMakes, readOffered } from "./choices.ts";
import { readClaim } from "./claims.ts";
import { readCuts } from "./cuts.ts";
import { readOverall, readPanelSize } from "./extents.ts";
import { readScheme } from "./finish.ts";
import { readFrontMatter } from "./front-matter.ts";
import { checkFormat, checkTitle, knownFormat, readClasses, readDraft } from "./head.ts";
import { checkHiddenCharacters, withoutHidden } from "./hidden-characters.ts";
import { readJoin } from "./joins.ts";
import { readLine } from "./line.ts";
import { keepOneLine, textsOf } from "./one-line.ts";
import { readPiece } from "./pieces.ts";
import type { PanelKind, Recipe } from "./recipe.ts";
import { type Gathered, gathered } from "./scan.ts";
import { readSize } from "./sizes.ts";

/** No recipe is longer than this, in characters. */
const longestRecipe = 200_000;

/** Never throws for anything the maker wrote. There is a recipe if there is no problem. */
export function readRecipe(file: string, text: string): { recipe?: Recipe; problems: Problem[] } {
  const start: Place = { file, line: 1, column: 1 };
  if (text.length > longestRecipe)
    return { problems: [problem("recipe-too-long", start, { letters: text.length, most: longestRecipe })] };
  const plain = text.replace(/^\ufeff/, "").replace(/\r\n/g, "\n");
  const hidden = checkHiddenCharacters(file, plain);
  const visible = hidden.length > 0 ? withoutHidden(plain) : plain;
  const front = readFrontMatter(file, visible);
  const into = gathered();
  into.problems.push(...hidden, ...front.problems, ...checkLineCounts(front.tree));
  if (front.tree.entries.length === 0) return { problems: inReadingOrder(into.problems) };
  const tree = keepOneLine(front.tree, visible.split("\n"), into.problems);
  const { intro, sections } = readBody(file, front.body, front.bodyLine, into);
  const recipe: Recipe = { file, ...readHead(tree, into), ...readParts(tree, into), intro, sections };
  into.problems.push(
    ...checkNamesGiven(recipe),
    ...checkWhatLinesAre(recipe),
    ...checkSizesUsed(into.sizes, recipe),
    ...checkSizeCircles(recipe),
    ...checkReferences(into.references, recipe),
    ...checkMakes(recipe),
  );
  return into.problems.length > 0 ? { problems: inReadingOrder(into.problems) } : { recipe, problems: [] };
}

function readHead(tree: TreeMap, into: Gathered) {
  const title = textUnder(tree, "title");
  const format = textUnder(tree, "format");
  const optional = (key: "line" | "notes" | "purpose") => {
    const written = textUnder(tree, key);
    return written ? { [key]: written.text.trim() } : {};
  };
  into.problems.push(...(title ? checkTitle(title) : []), ...checkFormat(format));
  return {
    title: title?.text ?? "",
    slug: slug(title?.text ?? ""),
    format: knownFormat,
    draft: readDraft(textUnder(tree, "draft"), into.problems),
    classes: readClasses(textUnder(tree, "class"), into.problems),
    ...optional("line"),
    ...optional("notes"),
    ...optional("purpose"),
  };
}

function readParts(tree: TreeMap, into: Gathered) {
  const under = (key: string) => textsOf(entriesUnder(tree, key));
  const lines = (key: string) => under(key).map(({ key: name, value }) => readLine(name, value, into));
  const overall = textUnder(tree, "overall") ?? { text: "fit x fit x fit", at: tree.at };
  const finishes = under("finish").map(({ key, value }) => readScheme(key, value, into));
  return {
    overall: { at: overall.at, ...readOverall(overall, into) },
    sizes: entriesUnder(tree, "sizes").map(({ key, value }) => readSize(key, value, into)),
    pieces: under("pieces").map(({ key, value }) => readPiece(key, value, into)),
    panels: readKits(tree, "panels", (size) => readPanelSize(size, into), into),
    assemblies: readKits(tree, "assemblies", (size) => readOverall(size, into), into),
    stand: lines("stand"),
    fittings: lines("fittings"),
    joins: under("joins").flatMap(({ key, value }) => readJoin(key, value, into) ?? []),
    cuts: under("cuts").flatMap(({ key, value }) => readCuts(key, value, into) ?? []),
    finishes,
    offered: readOffered(textUnder(valueUnder(tree, "choices"), "finish"), finishes, into),
    claims: under("claims").flatMap(({ key, value }) => readClaim(key, value, into) ?? []),
  };
}

/** The panels or the assemblies: each a size and lines of its own. */
function readKits<S>(
  tree: TreeMap,
  key: "panels" | "assemblies",
  readExtents: (size: Written) => S,
  into: Gathered,
): (S & Pick<PanelKind, "name" | "at" | "lines">)[] {
  return entriesUnder(tree, key).flatMap(({ key: name, value }) => {
    if (value.kind !== "map") return [];
    const size: Written = textUnder(value, "size") ?? {
      text: key === "panels" ? "fit x fit" : "fit x fit x fit",
      at: value.at,
    };
    const lines = textsOf(value.entries).filter(({ key }) => key.text !== "size");
    return [
      {
        name,
        at: name.at,
        ...readExtents(size),
        lines: lines.map((line) => readLine(line.key, line.value, into)),
      },
    ];
  });
}
