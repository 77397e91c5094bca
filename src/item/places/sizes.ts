// The recipe's own sizes by name: `sizes:` and the three overall ones.

import type { Place } from "../../problems/place.ts";
import { problem } from "../../problems/problem.ts";
import type { Extent, Recipe, Sum } from "../../recipe/recipe.ts";
import type { Length } from "../../units/length.ts";
import type { Answers } from "./ask.ts";
import { Fault } from "./fault.ts";
import { type Asked, type Value, workLength, workSum } from "./sums.ts";

export const overallNames = ["width", "depth", "height"] as const;
export type OverallName = (typeof overallNames)[number];

export const overallAxis = { width: "x", depth: "y", height: "z" } as const;

/** The overall size as written, `fit` included. */
export const overallOf = (recipe: Recipe, name: OverallName): Extent => recipe.overall[name];

/**
 * The size of this name. `followed` answers for an overall size that is left to `fit`; `asked` for what a size's own sum
 * names. Throws a Fault for an unknown name or a circle.
 */
export function sizeNamed(
  recipe: Recipe,
  answers: Answers,
  name: string,
  at: Place,
  asked: Asked,
  followed: (name: OverallName) => Length,
): Value {
  const overall = overallNames.find((n) => n === name);
  if (overall) {
    const extent = overallOf(recipe, overall);
    if (extent.kind === "fit") return { kind: "length", value: followed(overall) };
    return answers.ask({ key: `size ${name}`, words: `the ${name}`, at: extent.at }, () => ({
      kind: "length" as const,
      value: workLength(extent, asked),
    }));
  }
  const size = recipe.sizes.find((s) => s.name.text === name);
  // The reader lets no unknown name through.
  if (!size) throw new Error(`a sum at ${at.file}:${at.line} asks for the unknown size ${name}`);
  return answers.ask({ key: `size ${name}`, words: `the size ${name}`, at: size.at }, () => workSum(size.sum, asked));
}

/** Works sums before anything is placed: sizes and lengths only. */
export function sizesBeforePlacing(recipe: Recipe, answers: Answers): (sum: Sum) => Length {
  const refuse = (sum: { readonly at: Place }): never => {
    throw new Fault(problem("size-needs-place", sum.at, {}));
  };
  const asked: Asked = {
    size: (name, at) => sizeNamed(recipe, answers, name, at, asked, () => refuse({ at })),
    line: refuse,
    measure: refuse,
  };
  return (sum) => workLength(sum, asked);
}
