// Front-matter in a test -> its placing in the small yard.
import { expect } from "vitest";
import type { PlacedMember, Placing } from "../../src/item/placed.ts";
import { placeMembers } from "../../src/item/places/place-members.ts";
import { printProblem } from "../../src/problems/print.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { smallYard } from "./small-yard.ts";

/** The placing of a recipe's front-matter, or its problems as text. */
export function place(matter: string): { placing: Placing | undefined; told: string[] } {
  const read = readRecipe("recipes/x.md", `---\ntitle: X\n${matter.trim()}\n---\n`);
  if (!read.recipe) return { placing: undefined, told: read.problems.map(printProblem) };
  const placed = placeMembers(read.recipe, smallYard);
  return { placing: placed.placing, told: placed.problems.map(printProblem) };
}

export function placed(matter: string): Placing {
  const { placing, told } = place(matter);
  expect(told).toEqual([]);
  return placing as Placing;
}

export const member = (placing: Placing, id: string): PlacedMember => {
  const found = placing.members.find((m) => m.id === id);
  if (!found) throw new Error(`no ${id} among ${placing.members.map((m) => m.id).join(" ")}`);
  return found;
};
