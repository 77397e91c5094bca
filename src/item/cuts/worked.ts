// What working out one cut of one member gives: the cuts, or why they can't be made.
import { type Problem, problem } from "../../problems/problem.ts";
import type { Cut, Sum } from "../../recipe/recipe.ts";
import { type OwnAxis, ownAxes } from "../frame.ts";
import type { WorkedCut } from "../item.ts";
import { checkInWood } from "../outlines/in-wood.ts";
import type { PlacedMember, Placing } from "../placed.ts";
import { checkCut } from "./cut-checks.ts";
import { cutLength } from "./cut-length.ts";

export type Worked = { readonly cuts: readonly WorkedCut[] } | { readonly problems: readonly Problem[] };

export const refused = (...problems: readonly Problem[]): { readonly problems: readonly Problem[] } => ({ problems });

/** The sizes of a cut in inches, each above 0; or the problem with the first that isn't. */
export function sizesOf(cut: Cut, sums: readonly Sum[], placing: Placing): readonly number[] | Problem {
  const sizes: number[] = [];
  for (const sum of sums) {
    const size = cutLength(sum, placing);
    if (typeof size !== "number") return size;
    if (size <= 0) return problem("cut-no-size", sum.at, { cut: cut.text, size });
    sizes.push(size);
  }
  return sizes;
}

/** The cuts, if none of them runs out of the board or lies where it has no wood. */
export function checked(cut: Cut, member: PlacedMember, placing: Placing, cuts: readonly WorkedCut[]): Worked {
  const problems = cuts.flatMap((worked) => {
    const out = checkCut(cut, worked, member, placing.turned(member));
    return out.length > 0 ? out : checkInWood(cut, worked, member);
  });
  return problems.length > 0 ? { problems } : { cuts };
}

export const vectorOf = (entry: (axis: OwnAxis) => number) =>
  [entry("length"), entry("width"), entry("thickness")] as const;

export const othersThan = (axis: OwnAxis): OwnAxis[] => ownAxes.filter((a) => a !== axis);

/** Every pick of one number from each list, in order. */
export const everyPick = (lists: readonly (readonly number[])[]): number[][] =>
  lists.reduce<number[][]>((found, list) => found.flatMap((f) => list.map((n) => [...f, n])), [[]]);
