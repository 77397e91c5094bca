// A number typed into the text + the recipe -> the figure that could stand there instead, in names this recipe has.
import { compareLengths, type Length } from "../units/length.ts";
import { parseLength } from "../units/parse-length.ts";
import type { Extent, Line, Recipe } from "./recipe.ts";

/** `same`: the figure is written as just this length in the recipe; else it is only an example of one. */
export type FigureInstead = { readonly figure: string; readonly same: boolean };

type Parts = Pick<Recipe, "overall" | "sizes" | "pieces" | "panels" | "assemblies" | "stand">;

/** A size, an overall size or a piece's width or thickness that is written as this length; else a gap, or the width. */
export function figureInstead(plain: string, recipe: Parts): FigureInstead {
  const read = parseLength(plain);
  const meant = read.ok ? read.value : undefined;
  const found = meant === undefined ? undefined : sameAs(meant, recipe);
  return found === undefined ? { figure: exampleOf(recipe), same: false } : { figure: found, same: true };
}

function sameAs(meant: Length, { overall, sizes, pieces }: Parts): string | undefined {
  const written: readonly (readonly [string, Extent | undefined])[] = [
    ...sizes.map(({ name, sum }) => [name.text, sum] as const),
    ["width", overall.width],
    ["depth", overall.depth],
    ["height", overall.height],
    ...pieces.flatMap(({ name, ripped, planed }) => [
      [`width of ${name.text}`, ripped] as const,
      [`thickness of ${name.text}`, planed] as const,
    ]),
  ];
  return written.find(([, sum]) => sum?.kind === "length" && compareLengths(sum.value, meant) === 0)?.[0];
}

function exampleOf({ panels, assemblies, stand }: Parts): string {
  const isRow = (line: Line) => line.clauses.some(({ kind }) => kind.startsWith("spread"));
  const inKit = [...panels, ...assemblies].flatMap((kit) =>
    kit.lines.filter(isRow).map((line) => `${kit.name.text} ${line.name.text}`),
  );
  const row = [...inKit, ...stand.filter(isRow).map((line) => line.name.text)][0];
  return row === undefined ? "width" : `gap of ${row}`;
}
