// A recipe file -> the recipe, or every problem in it. This file is the reader's table of contents.
import type { Place, Written } from "../problems/place.ts";
import { inReadingOrder, type Problem, problem } from "../problems/problem.ts";
import { entriesUnder, type TreeMap, textUnder } from "../problems/yaml-tree.ts";
import { slug } from "../units/slug.ts";
import { checkUnprovable } from "../yard/unprovable.ts";
import { readAvailability } from "./availability.ts";
import { readBody } from "./body.ts";
import { checkLineCounts } from "./check-counts.ts";
import { checkNamesGiven, checkReferences, checkSizesUsed, checkWhatLinesAre } from "./check-names.ts";
import { checkSizeCircles } from "./check-sizes.ts";
import { checkMakes } from "./choices.ts";
import { checkChoices } from "./choices-check.ts";
import { readChoices } from "./choices-list.ts";
import { cutOnly } from "./choices-only.ts";
import { readClaim } from "./claims.ts";
import { readComparables } from "./comparables.ts";
import { readCord } from "./cord.ts";
import { readCuts } from "./cuts.ts";
import { withoutEchoes } from "./echoes.ts";
import { provenBy, readEvidence } from "./evidence.ts";
import { readOverall, readPanelSize } from "./extents.ts";
import { figureInstead } from "./figure-instead.ts";
import { readScheme } from "./finish.ts";
import { checkFixed, readFixed } from "./fixed.ts";
import { knownFormat } from "./format-migrations.ts";
import { readFrontMatter } from "./front-matter.ts";
import { checkFormat, checkTitle, readClasses, readListed, readYes } from "./head.ts";
import { checkHiddenCharacters, checkHiddenValues, withoutHidden } from "./hidden-characters.ts";
import { readJoins } from "./joins.ts";
import { checkLeft } from "./left-to-buyer.ts";
import { readText } from "./lettering.ts";
import { readLine } from "./line.ts";
import { readLoad, readSoldAs, readUsers } from "./loads.ts";
import { keepOneLine, textsOf } from "./one-line.ts";
import { type Beside, checkOutlinesUsed, readDrawings, readOutline } from "./outlines.ts";
import { readPhotoWords } from "./photo-words.ts";
import { readPiece } from "./pieces.ts";
import { checkPrices, readPrices } from "./price.ts";
import type { PanelKind, Recipe } from "./recipe.ts";
import { checkRecord, readRecord } from "./record.ts";
import { readRevisions } from "./revisions.ts";
import { type Gathered, gathered } from "./scan.ts";
import { readSeason } from "./season.ts";
import { readSize } from "./sizes.ts";

/** No recipe is longer than this, in characters. */
const longestRecipe = 200_000;

/**
 * Never throws for anything the maker wrote. There is a recipe if there is no problem. `beside` gives the texts of drawings that
 * stand beside the file.
 */
export function readRecipe(file: string, text: string, beside?: Beside): { recipe?: Recipe; problems: Problem[] } {
  const start: Place = { file, line: 1, column: 1 };
  if (text.length > longestRecipe)
    return { problems: [problem("recipe-too-long", start, { letters: text.length, most: longestRecipe })] };
  const plain = text.replace(/^\ufeff/, "").replace(/\r\n/g, "\n");
  const hidden = checkHiddenCharacters(file, plain);
  const visible = hidden.length > 0 ? withoutHidden(plain) : plain;
  const front = readFrontMatter(file, visible);
  const into = gathered();
  into.problems.push(...hidden, ...checkHiddenValues(front.tree), ...front.problems, ...checkLineCounts(front.tree));
  if (front.tree.entries.length === 0) return { problems: inReadingOrder(into.problems) };
  const tree = keepOneLine(front.tree, visible.split("\n"), into.problems);
  for (const key of ["title", "line", "purpose"]) {
    const text = textUnder(tree, key);
    if (text) into.told.push([text]);
  }
  const { intro, sections } = readBody(file, front.body, front.bodyLine, into);
  const recipe: Recipe = { file, ...readHead(tree, into), ...readParts(tree, into, beside), intro, sections };
  into.problems.push(
    ...into.bares.map(({ at, found, plain }) =>
      problem("bare-figure", at, { found, plain, ...figureInstead(plain, recipe) }),
    ),
    ...checkUnprovable([...into.told, ...publicNames(recipe)], provenBy(recipe.classes, recipe.evidence)),
    ...checkNamesGiven(recipe),
    ...checkWhatLinesAre(recipe),
    ...checkFixed(recipe),
    ...checkSizesUsed(into.sizes, recipe),
    ...checkSizeCircles(recipe),
    ...checkReferences(into.references, recipe),
    ...checkMakes(recipe),
    ...checkLeft(recipe),
    ...checkChoices(recipe, into.onlys, into.problems.length === 0),
    ...(into.problems.length === 0 ? [...checkPrices(recipe), ...checkRecord(recipe)] : []),
  );
  return into.problems.length > 0
    ? { problems: inReadingOrder(withoutEchoes(into.problems)) }
    : { recipe, problems: [] };
}

/** Names of finishes, choices and loads stand on the product page. */
const publicNames = ({ finishes, choices, loads }: Recipe): Written[][] =>
  [...finishes, ...choices, ...choices.flatMap(({ values }) => values), ...loads].map(({ name }) => [name]);

function readHead(tree: TreeMap, into: Gathered) {
  const title = textUnder(tree, "title");
  const format = textUnder(tree, "format");
  const optional = (key: "line" | "notes" | "purpose") => {
    const written = textUnder(tree, key);
    return written ? { [key]: written.text.trim() } : {};
  };
  const classes = readClasses(textUnder(tree, "class"), into.problems);
  into.problems.push(...(title ? checkTitle(title) : []), ...checkFormat(format));
  return {
    title: title?.text ?? "",
    slug: slug(title?.text ?? ""),
    format: knownFormat,
    draft: readYes(textUnder(tree, "draft"), into.problems),
    hasPlan: readYes(textUnder(tree, "plan"), into.problems),
    revisions: readRevisions(tree, into),
    classes,
    madeFor: readUsers(textUnder(tree, "for"), classes, into),
    ...readListed(textUnder(tree, "listed"), into.problems),
    ...optional("line"),
    ...optional("notes"),
    ...optional("purpose"),
  };
}

function readParts(tree: TreeMap, into: Gathered, beside: Beside | undefined) {
  const under = (key: string) => textsOf(entriesUnder(tree, key));
  const lines = (key: string) => under(key).map(({ key: name, value }) => readLine(name, value, into));
  /** Rules that may end in `only with …`. */
  const conditional = <R extends object>(key: string, read: (name: Written, value: Written) => R[]): R[] =>
    under(key).flatMap(({ key: name, value }) => {
      const { value: plain, only } = cutOnly(value, into);
      return read(name, plain).map((rule) => (only ? { ...rule, only } : rule));
    });
  const optional = <R>(rule: R | undefined): R[] => (rule === undefined ? [] : [rule]);
  const soldAs = readSoldAs(textUnder(tree, "sold as"), into);
  const overall = textUnder(tree, "overall") ?? { text: "fit x fit x fit", at: tree.at };
  const finishes = under("finish").map(({ key, value }) => readScheme(key, value, into));
  const pieces = under("pieces").map(({ key, value }) => readPiece(key, value, into));
  const outlines = [
    ...entriesUnder(tree, "outlines").flatMap((entry) => readOutline(entry, into)),
    ...readDrawings(pieces, beside, into),
  ];
  checkOutlinesUsed(pieces, outlines, into);
  const offers = readChoices(tree, finishes, into);
  const standing = {
    panels: readKits(tree, "panels", (size) => readPanelSize(size, into), into),
    assemblies: readKits(tree, "assemblies", (size) => readOverall(size, into), into),
    stand: lines("stand"),
  };
  return {
    overall: { at: overall.at, ...readOverall(overall, into) },
    sizes: entriesUnder(tree, "sizes").map(({ key, value }) => readSize(key, value, into)),
    pieces: [...pieces, ...into.ownPieces],
    outlines,
    ...standing,
    fittings: lines("fittings"),
    joins: conditional("joins", (key, value) => readJoins(key, value, into)),
    cuts: conditional("cuts", (key, value) => readCuts(key, value, into)),
    finishes,
    cords: conditional("cords", (key, value) => optional(readCord(key, value, into))),
    texts: conditional("text", (key, value) => optional(readText(key, value, into))),
    ...offers,
    availability: readAvailability(tree, offers.choices, into),
    photoWords: readPhotoWords(tree, into),
    claims: conditional("claims", (key, value) => optional(readClaim(key, value, into))),
    fixed: readFixed(textUnder(tree, "fixed")),
    evidence: readEvidence(tree, into),
    loads: under("loads").flatMap(({ key, value }) => readLoad(key, value, into) ?? []),
    ...(soldAs ? { soldAs } : {}),
    prices: readPrices(tree, into),
    record: readRecord(tree, into),
    comparables: readComparables(tree, into),
    ...readSeason(textUnder(tree, "season"), into),
    ...readLeft(tree),
  };
}

function readLeft(tree: TreeMap): { readonly leftToBuyer?: Written } {
  const leftToBuyer = textUnder(tree, "left to the buyer");
  return leftToBuyer ? { leftToBuyer } : {};
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
        lines: lines.map((line) => readLine(line.key, line.value, into, name)),
      },
    ];
  });
}
