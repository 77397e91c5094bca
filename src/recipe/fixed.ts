// `fixed: width, pitch` -> the names of sizes, pieces and lines whose sizes are never nudged.
import { nearest } from "../problems/nearest.ts";
import type { Written } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";
import type { Recipe } from "./recipe.ts";
import type { Form } from "./scan.ts";

export const fixedForm: Form = {
  form: "NAME[, NAME]",
  means: "Sizes, pieces and lines whose sizes are never nudged to save wood.",
  example: "width, pitch",
};

export const readFixed = (written: Written | undefined): readonly Written[] =>
  written === undefined
    ? []
    : written.text
        .split(",")
        .map((part) => part.trim())
        .filter((text) => text !== "")
        .map((text) => ({ text, at: written.at }));

type Parts = Pick<Recipe, "fixed" | "sizes" | "pieces" | "panels" | "assemblies" | "stand">;

/** One problem for each name that nothing in the recipe has. */
export function checkFixed({ fixed, ...recipe }: Parts): Problem[] {
  const lines = [...[...recipe.panels, ...recipe.assemblies].flatMap((kit) => kit.lines), ...recipe.stand];
  const names = [
    ...["width", "depth", "height"],
    ...[...recipe.sizes, ...recipe.pieces.filter((piece) => !piece.own), ...lines].map(({ name }) => name.text),
  ];
  return fixed.flatMap(({ text, at }) =>
    names.includes(text) ? [] : [problem("fixed-unknown", at, { found: text, nearest: nearest(text, names) })],
  );
}
