// A recipe and its yard -> single sizes that, changed a little, save boards or money; each re-worked and planned anew.

import type { Item, Piece } from "../item/item.ts";
import { workVariants } from "../item/variants/work-variants.ts";
import { workBodies } from "../item/work-out.ts";
import type { Place } from "../problems/place.ts";
import { recipeFor } from "../recipe/choices-recipe-for.ts";
import { variantsOf } from "../recipe/choices-variants.ts";
import type { Recipe } from "../recipe/recipe.ts";
import type { Division } from "../units/division.ts";
import { type Exact, exact } from "../units/length.ts";
import type { Yard } from "../yard/yard.ts";
import { proofOf } from "./board-plan.ts";
import { cutProblems, planBoardsCheapest, roughlySpent, type Spent } from "./cutting-plan.ts";
import { type NudgeSize, nudgeSizes } from "./nudge-sizes.ts";

export type Nudge = {
  readonly name: string;
  readonly at: Place;
  readonly from: Exact;
  readonly to: Exact;
  /** Dollars and boards fewer; boards may be dearer or cheaper ones, so either may be 0 or below while the other saves. */
  readonly saves: Spent;
  /** The overall sizes of the thing as it would be. */
  readonly overall: Item["overall"];
};

/**
 * The least change of each size, up or down by at most `most`, that saves what its greatest does: in whole divisions of the tape.
 * Ranked by money, then boards, then the smaller change. Only what all variants of the recipe work out with, without a problem.
 */
export function findNudges(recipe: Recipe, yard: Yard, kerf: Exact, most: Exact, division: Division): Nudge[] {
  const step = division.unit === "mm" ? exact(5, 127) : exact(1, division.per);
  const steps = most.div(step).floor().valueOf();
  const [standard] = variantsOf(recipe);
  const rough = (changed: Recipe): Spent | undefined => {
    const { standing, problems } = workBodies(standard ? recipeFor(changed, standard) : changed, yard);
    return standing && problems.length === 0 ? roughly(soldPieces(standing.pieces, recipe), kerf) : undefined;
  };
  const now = rough(recipe);
  if (!now) return [];
  const before = workVariants(recipe, yard, division).items[0];
  if (!before) return [];
  const spent = spentOn(before, kerf);
  return nudgeSizes(recipe)
    .flatMap((size) => [1, -1].flatMap((sign) => leastStep(size, sign, steps, step, now, rough)))
    .flatMap(({ size, to }) => confirmed(size, to, spent, { yard, kerf, division }))
    .sort(
      (a, b) =>
        b.saves.cost.compare(a.saves.cost) ||
        b.saves.boards - a.saves.boards ||
        a.to.sub(a.from).abs().compare(b.to.sub(b.from).abs()),
    );
}

const soldPieces = (pieces: readonly Piece[], { soldAs }: { readonly soldAs?: { readonly count: number } }): Piece[] =>
  pieces.map((piece) => ({ ...piece, count: piece.count * (soldAs?.count ?? 1) }));

const roughly = (pieces: readonly Piece[], kerf: Exact): Spent | undefined =>
  roughlySpent(cutProblems(pieces, kerf, "bought"));

/** Cheaper, or as cheap with fewer boards. */
const isLess = (a: Spent, b: Spent): boolean =>
  a.cost.compare(b.cost) < 0 || (a.cost.equals(b.cost) && a.boards < b.boards);

type Step = { readonly size: NudgeSize; readonly to: Exact };

/** The whole, half and quarter of the greatest change are tried; of what saves most, the least change that saves as much. */
function leastStep(
  size: NudgeSize,
  sign: number,
  steps: number,
  step: Exact,
  now: Spent,
  rough: (recipe: Recipe) => Spent | undefined,
): Step[] {
  const tried = new Map<number, Spent | undefined>();
  const at = (count: number): Exact => size.value.add(step.mul(count * sign));
  const spent = (count: number): Spent | undefined => {
    if (!tried.has(count)) tried.set(count, at(count).compare(0) > 0 ? rough(size.with(at(count))) : undefined);
    return tried.get(count);
  };
  const probes = [...new Set([steps, Math.ceil(steps / 2), Math.ceil(steps / 4)])].filter((count) => count > 0);
  const good = probes.filter((count) => {
    const each = spent(count);
    return each && isLess(each, now);
  });
  if (good.length === 0) return [];
  const [best] = good.sort((a, b) =>
    isLess(spent(a) as Spent, spent(b) as Spent) ? -1 : isLess(spent(b) as Spent, spent(a) as Spent) ? 1 : a - b,
  );
  let [low, high] = [0, best as number];
  const goal = spent(high) as Spent;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    const each = spent(middle);
    if (each && !isLess(goal, each)) high = middle;
    else low = middle;
  }
  return [{ size, to: at(high) }];
}

const spentOn = (item: Item, kerf: Exact): Spent => {
  const plans = planBoardsCheapest(soldPieces(item.pieces, item), kerf, "bought");
  return { cost: proofOf(plans).cost, boards: plans.reduce((sum, { plan }) => sum + plan.boards.length, 0) };
};

function confirmed(
  size: NudgeSize,
  to: Exact,
  before: Spent,
  { yard, kerf, division }: { readonly yard: Yard; readonly kerf: Exact; readonly division: Division },
): Nudge[] {
  const { items, problems } = workVariants(size.with(to), yard, division);
  const [item] = items;
  if (!item || problems.length > 0) return [];
  const after = spentOn(item, kerf);
  if (!isLess(after, before)) return [];
  const saves = { cost: before.cost.sub(after.cost), boards: before.boards - after.boards };
  return [{ name: size.name, at: size.at, from: size.value, to, saves, overall: item.overall }];
}
