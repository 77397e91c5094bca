// Names used -> a problem for each that nothing in the recipe has, with the name most likely meant.
import { nearest } from "../problems/nearest.ts";
import type { Written } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";
import { endsPath, groupsOf } from "./groups.ts";
import { checkName } from "./name.ts";
import type { Line, Recipe } from "./recipe.ts";
import type { Gathered } from "./scan.ts";

type Parts = Pick<
  Recipe,
  "sizes" | "pieces" | "panels" | "assemblies" | "stand" | "fittings" | "finishes" | "cords" | "texts"
>;

/** Names that can't be names, and names given twice where one could be taken for the other. */
export function checkNamesGiven(recipe: Parts): Problem[] {
  const kits = [...recipe.panels, ...recipe.assemblies];
  const lines = [...kits.flatMap((kit) => kit.lines), ...recipe.stand, ...recipe.fittings];
  const all = [
    ...recipe.sizes,
    ...recipe.pieces.filter((piece) => !piece.own),
    ...kits,
    ...recipe.finishes,
    ...recipe.cords,
    ...recipe.texts,
    ...lines,
  ];
  return [
    ...all.flatMap(({ name }) => checkName(name) ?? []),
    ...clashes(recipe.pieces, kits, "a piece"),
    ...clashes(recipe.panels, recipe.assemblies, "a panel"),
    ...clashes(recipe.stand, recipe.fittings, "a line under stand"),
    ...clashes(lines, recipe.cords, "a line"),
  ];
}

type Has = { readonly name: Written };

function clashes(first: readonly Has[], second: readonly Has[], what: string): Problem[] {
  return second.flatMap(({ name }) => {
    const twin = first.find((other) => other.name.text === name.text);
    return twin
      ? [problem("name-twice", name.at, { name: name.text, what, line: twin.name.at.line }, twin.name.at)]
      : [];
  });
}

/** Lines must be of something: a piece in a panel, a piece or a panel under `stand:`. Fittings are looked up in the yard. */
export function checkWhatLinesAre(recipe: Parts): Problem[] {
  const own = recipe.pieces.flatMap((piece) => (piece.own ? [piece.name.text] : []));
  const pieces = recipe.pieces.flatMap((piece) => (piece.own ? [] : [piece.name.text]));
  const panels = recipe.panels.map((panel) => panel.name.text);
  const assemblies = recipe.assemblies.map((kit) => kit.name.text);
  const check = (line: Line, allowed: readonly string[], inPanel: boolean): Problem[] => {
    const found = line.what.text;
    if (found === "" || allowed.includes(found) || own.includes(found)) return [];
    if (inPanel && panels.includes(found)) return [problem("panel-in-panel", line.what.at, { found })];
    const board = recipe.pieces.find((piece) => !piece.own && piece.board.text === found)?.name.text;
    return [
      problem("no-such-piece", line.what.at, { found, allowed, nearest: board ?? nearest(found, allowed), inPanel }),
    ];
  };
  return [
    ...recipe.panels.flatMap((panel) => panel.lines.flatMap((line) => check(line, pieces, true))),
    ...recipe.assemblies.flatMap((kit) => kit.lines.flatMap((line) => check(line, [...pieces, ...panels], false))),
    ...recipe.stand.flatMap((line) => check(line, [...pieces, ...panels, ...assemblies], false)),
  ];
}

const overallSizes = ["width", "depth", "height"];

/** Names of sizes in sums. */
export function checkSizesUsed(used: Gathered["sizes"], recipe: Parts): Problem[] {
  const known = [...overallSizes, ...recipe.sizes.map((size) => size.name.text)];
  const sizes = new Set(known);
  const things = new Set([
    ...groupsOf(recipe).map((group) => group.path.at(-1)),
    ...recipe.pieces.map((piece) => piece.name.text),
  ]);
  return used.flatMap((size) => {
    const found = size.text;
    if (sizes.has(found)) return [];
    const apart = hyphenApart(found, sizes);
    if (apart) return [problem("hyphen-for-minus", size.at, { found, apart })];
    if (things.has(found)) return [problem("thing-as-size", size.at, { found })];
    return [problem("no-size-called", size.at, { found, known, nearest: nearest(found, known) })];
  });
}

/** `tall-clear` as `tall - clear`, if both are sizes (or what follows the hyphen is a number). */
function hyphenApart(name: string, known: ReadonlySet<string>): string | undefined {
  for (let i = name.indexOf("-"); i >= 0; i = name.indexOf("-", i + 1)) {
    const left = name.slice(0, i);
    const right = name.slice(i + 1);
    if (known.has(left) && (known.has(right) || /^\d+$/.test(right))) return `${left} - ${right}`;
  }
  return undefined;
}

/** References: their names must end the path of some line or panel; a piece's name will do where only a measure is asked. */
export function checkReferences(used: Gathered["references"], recipe: Parts): Problem[] {
  const paths = groupsOf(recipe).map((group) => group.path);
  const pieces = recipe.pieces.map((piece) => piece.name.text);
  const known = [...new Set(paths.flatMap((path) => [path.join(" "), path.at(-1) ?? ""]))];
  return used.flatMap(({ reference, measured }) => {
    const names = reference.names.map((name) => name.text);
    const found = names.join(" ");
    if (paths.some((path) => endsPath(path, names)) || (measured && pieces.includes(found))) return [];
    const at = reference.names[0]?.at ?? reference.at;
    if (pieces.includes(found)) {
      const lines = [...[...recipe.panels, ...recipe.assemblies].flatMap((kit) => kit.lines), ...recipe.stand];
      const users = lines.filter((line) => line.what.text === found).map((line) => line.name.text);
      return [problem("piece-as-place", at, { found, lines: [...new Set(users)] })];
    }
    const facts = { found, known, nearest: nearest(found, measured ? [...known, ...pieces] : known) };
    return [problem("no-such-name", at, facts)];
  });
}
