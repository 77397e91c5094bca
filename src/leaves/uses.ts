// How an item is used -> what it is made for and what it is not made for, and how to look after it, in a buyer's words.
import type { Use } from "../findings/use.ts";
import { type HazardClass, hazardClasses } from "../recipe/recipe.ts";

type Words = (use: Use, weight: (pounds: number) => string) => string | undefined;

/** Each ends the sentence "Made …": any number of them reads on after commas. */
const made: Record<HazardClass, Words> = {
  D: () => "to be looked at",
  S: () => "to hold things where it stands",
  L: ({ loads }, weight) =>
    loads.length === 0
      ? "to carry weight"
      : `to carry ${loads.map(({ pounds, count }) => `${count === 1 ? "" : `${count} × `}${weight(pounds)}`).join(" and ")}`,
  C: () => "for children",
  F: () => "to be used near food",
  A: () => "for animals",
  H: ({ hasRope }) => (hasRope ? "to hang from a hook" : "to hang on a wall"),
  T: ({ anchored }) => (anchored ? "to stand fastened to a wall" : "to stand on firm level ground"),
  G: () => "to let the light in",
  X: () => "to be out in the rain",
};

/** What whatever carries no people is misused for first. */
export const noClimbing = "to sit, step or climb on";

const not: Partial<Record<HazardClass, Words>> = {
  D: ({ classes }) => (classes.includes("L") ? undefined : "to carry a load"),
  S: ({ carriesPeople }) => (carriesPeople ? undefined : noClimbing),
  L: ({ carriesPeople }) => (carriesPeople ? undefined : noClimbing),
  H: () => "to hang where people sit or sleep under it",
  T: ({ anchored }) => (anchored ? "to stand free, without its anchor" : "to lean on"),
  G: () => "to lean on",
};

/** Empty where no class is stated; else the words after "Made", as one. */
export function madeFor(use: Use, weight: (pounds: number) => string): string[] {
  const all = use.classes.flatMap((one) => made[one](use, weight) ?? []);
  const last = all.at(-1);
  return last === undefined ? [] : [[all.slice(0, -1).join(", "), last].filter((part) => part !== "").join(" and ")];
}

export const notMadeFor = (use: Use): string[] => [
  ...new Set(use.classes.flatMap((one) => not[one]?.(use, String) ?? [])),
];

/** The classes by name, for the bench; only what carries people is sat or stood on. */
export const classNames = ({ classes, carriesPeople }: Use): string =>
  classes.map((one) => (one === "L" && !carriesPeople ? "load-bearing" : hazardClasses[one])).join("; ");

/** How to look after it by what it is, beside its finish. Common practice, no source. */
export const careWords = ({ classes, hasRope }: Use): string[] => [
  classes.includes("H") ? "Look once a year at what it hangs from." : "Stand it off wet ground where you can.",
  ...(hasRope
    ? ["Look at the rope twice a year, at its knots and holes above all: one that is frayed or stiff is replaced."]
    : []),
  ...(classes.includes("G")
    ? ["Wash the clear panel with water, mild soap and a soft cloth; no scourer, no solvent."]
    : []),
];
