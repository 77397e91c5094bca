// What of the building is left to the buyer -> a problem where no section has that heading, or the section makes a part of it.
import { nearest } from "../problems/nearest.ts";
import { type Problem, problem } from "../problems/problem.ts";
import type { Recipe } from "./recipe.ts";

export function checkLeft({ leftToBuyer, sections }: Recipe): Problem[] {
  if (!leftToBuyer) return [];
  const known = sections.filter(({ makes }) => makes === undefined).map(({ heading }) => heading.markdown);
  if (known.includes(leftToBuyer.text)) return [];
  const found = leftToBuyer.text;
  return [problem("left-no-section", leftToBuyer.at, { found, known, nearest: nearest(found, known) })];
}
