// Hazard classes -> what an item is made for and what it is not made for, in a buyer's words.
import type { HazardClass } from "../recipe/recipe.ts";

const made: Record<HazardClass, string> = {
  D: "to look at",
  S: "to hold things where it stands",
  L: "to carry a load",
  C: "for children",
  F: "to be used near food",
  A: "for animals",
  H: "to hang on a wall or overhead",
  T: "tall: it has to be fastened to a wall",
  G: "with a clear panel",
  X: "for wet places and for standing on soil",
};

const not: Partial<Record<HazardClass, string>> = {
  D: "to carry a load",
  S: "to sit, step or climb on",
  L: "to sit or stand on: no load has been worked out for it",
  F: "to cut on",
  H: "to hang over a bed or a seat",
  T: "to stand free, without its anchor",
  G: "to lean on",
  X: "to stand in standing water",
};

export const madeFor = (classes: readonly HazardClass[]): string[] => classes.map((one) => made[one]);

export const notMadeFor = (classes: readonly HazardClass[]): string[] => classes.flatMap((one) => not[one] ?? []);
