// A recipe -> every size in it that is written as one plain length, each with the recipe that another length would make.
import type { Place } from "../problems/place.ts";
import type { Clause, Line, PieceKind, Recipe, Sum } from "../recipe/recipe.ts";
import type { Exact } from "../units/length.ts";

export type NudgeSize = {
  /** As it is told: "width", "pitch", "strip, ripped", "rails, long". */
  readonly name: string;
  readonly at: Place;
  readonly value: Exact;
  readonly with: (value: Exact) => Recipe;
};

type Plain = Extract<Sum, { kind: "length" }>;

const isPlain = (sum: Sum | { readonly kind: "fit" } | undefined): sum is Plain => sum?.kind === "length";

/** Overall sizes, sizes by name, widths ripped to, and lengths typed in lines; without those that the recipe says are fixed. */
export function nudgeSizes(recipe: Recipe): NudgeSize[] {
  const fixed = recipe.fixed.map(({ text }) => text);
  const free = (name: string): boolean => !fixed.includes(name);
  return [
    ...(["width", "depth", "height"] as const).filter(free).flatMap((name): NudgeSize[] => {
      const sum = recipe.overall[name];
      const put = (value: Exact): Recipe => ({ ...recipe, overall: { ...recipe.overall, [name]: { ...sum, value } } });
      return isPlain(sum) ? [{ name, at: sum.at, value: sum.value, with: put }] : [];
    }),
    ...recipe.sizes.flatMap(({ name, sum }, i): NudgeSize[] => {
      const put = (value: Exact): Recipe => ({
        ...recipe,
        sizes: recipe.sizes.map((size, k) => (k === i ? { ...size, sum: { ...size.sum, value } as Sum } : size)),
      });
      return isPlain(sum) && free(name.text) ? [{ name: name.text, at: sum.at, value: sum.value, with: put }] : [];
    }),
    ...recipe.pieces.flatMap((piece, i): NudgeSize[] => {
      const { ripped, name, own } = piece;
      if (!isPlain(ripped) || !free(name.text)) return [];
      const put = (value: Exact): Recipe => ({
        ...recipe,
        pieces: recipe.pieces.map((one, k): PieceKind => (k === i ? { ...one, ripped: { ...ripped, value } } : one)),
      });
      return [
        { name: own ? "a width ripped to" : `${name.text}, ripped`, at: ripped.at, value: ripped.value, with: put },
      ];
    }),
    ...lineSizes(recipe).filter(({ line }) => free(line)),
  ];
}

function lineSizes(recipe: Recipe): (NudgeSize & { readonly line: string })[] {
  return [
    ...recipe.panels.flatMap((kit, i) =>
      inLines(kit.lines, (lines) => ({
        ...recipe,
        panels: recipe.panels.map((one, k) => (k === i ? { ...one, lines } : one)),
      })),
    ),
    ...recipe.assemblies.flatMap((kit, i) =>
      inLines(kit.lines, (lines) => ({
        ...recipe,
        assemblies: recipe.assemblies.map((one, k) => (k === i ? { ...one, lines } : one)),
      })),
    ),
    ...inLines(recipe.stand, (stand) => ({ ...recipe, stand })),
  ];
}

function inLines(
  lines: readonly Line[],
  put: (lines: readonly Line[]) => Recipe,
): (NudgeSize & { readonly line: string })[] {
  return lines.flatMap((line, i) =>
    line.clauses.flatMap((clause, c) => {
      if (clause.kind !== "long" || !isPlain(clause.length)) return [];
      const { length } = clause;
      const changed = (value: Exact): Recipe => {
        const clauses = line.clauses.map(
          (one, k): Clause => (k === c ? { ...clause, length: { ...length, value } } : one),
        );
        return put(lines.map((one, k) => (k === i ? { ...one, clauses } : one)));
      };
      const name = `${line.name.text}, long`;
      return [{ name, line: line.name.text, at: length.at, value: length.value, with: changed }];
    }),
  );
}
