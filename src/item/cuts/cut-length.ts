// A sum in a cut -> inches.
import { type Problem, problem } from "../../problems/problem.ts";
import type { Sum } from "../../recipe/recipe.ts";
import { inches } from "../../units/length.ts";
import type { Panel } from "../item.ts";
import type { Placing } from "../placed.ts";

/** The length in inches, lines in it read in the space of this panel; a problem where the sum can't be worked out or comes to something else. */
export function cutLength(sum: Sum, placing: Placing, panel?: Panel): number | Problem {
  const worked = placing.work(sum, panel && { panelKind: panel.kind });
  if ("code" in worked) return worked;
  if (worked.kind === "length") return inches(worked.value);
  return problem("wants-a-length", sum.at, { is: worked.kind === "angle" ? "an angle" : "a plain number" });
}
