// The things of a line, so many of each -> one plan for all their boards, one yard list, and the work with fetching and saws shared.
import type { Item, Piece } from "../item/item.ts";
import { type Exact, exact, zero } from "../units/length.ts";
import type { ShopMinutes } from "../yard/shop-rates.ts";
import type { Shop } from "../yard/yard.ts";
import { boardsAsTheyLie, type PlanProof, proofOf } from "./board-plan.ts";
import { type CuttingPlan, planBoardsCheapest } from "./cutting-plan.ts";
import { type Hours, hoursOf, madeForOne, rateOf } from "./hours.ts";
import { sawCutsOf } from "./saw-cuts.ts";
import { type SawRun, sawRunsOf } from "./saw-runs.ts";
import { type YardList, yardListOf } from "./yard-list.ts";

/** The things of one line in their order: pieces of the second are marked "2A", "2B". */
export type Line = readonly [Item, ...Item[]];

/** One thing of the line, planned by itself. */
export type Alone = { readonly item: Item; readonly boards: number; readonly proof: PlanProof; readonly hours?: Hours };

export type LineBatch = {
  /** Of each thing sold. */
  readonly units: number;
  readonly list: YardList;
  readonly runs: readonly SawRun[];
  readonly alone: readonly Alone[];
  /** Minutes for all units of all things: each made by itself, and all together. Only where the shop has said its minutes. */
  readonly minutes?: { readonly apart: Exact; readonly together: Exact };
};

/**
 * Boards are bought as many as are wanted, none are taken from the shop's own. The plan is the one that costs least, the work at the
 * saws with it where the shop has said its minutes.
 */
export function lineBatch(line: Line, units: number, shop: Pick<Shop, "kerf" | "minutes" | "wage">): LineBatch {
  const { kerf, minutes } = shop;
  const things = line.map((item) => ({ item, made: units * madeForOne(item) }));
  const plans = things.map(({ item, made }) => planBoardsCheapest(times(item.pieces, made), kerf, "bought"));
  const alone = things.map(({ item }, i): Alone => {
    const boards = boardsAsTheyLie(plans[i] ?? [], kerf);
    const hours = minutes && hoursOf(item, units, boards, kerf, minutes);
    return { item, boards: boards.length, proof: proofOf(plans[i] ?? []), ...(hours ? { hours } : {}) };
  });
  const work = alone.flatMap(({ hours }) => hours ?? []);
  const [best] = listsTogether(things, plans, kerf)
    .map((list) => {
      const runs = sawRunsOf(list.plan.flatMap((board) => sawCutsOf(board, kerf)));
      const spent = shop.minutes && minutesOf(work, runs, shop.minutes);
      const dollars = spent ? list.proof.cost.add(spent.together.div(60).mul(shop.wage)) : list.proof.cost;
      return { list, runs, dollars, ...(spent ? { minutes: spent } : {}) };
    })
    .sort((a, b) => a.dollars.compare(b.dollars));
  if (!best) throw new Error("no plan for a line");
  const { dollars: _, ...chosen } = best;
  return { units, alone, ...chosen };
}

const times = (pieces: readonly Piece[], made: number): Piece[] =>
  pieces.map((piece) => ({ ...piece, count: piece.count * made }));

type Thing = { readonly item: Item; readonly made: number };

/** All planned together, and each alone: boards saved may cost more in saw cuts. Of all of these none is under the first's bound. */
function listsTogether(things: readonly Thing[], plans: readonly CuttingPlan[][], kerf: Exact): YardList[] {
  if (things.length === 1) return [yardListOf(things, plans.flat(), kerf)];
  const alone = plans.flatMap((own, i) => own.map((plan) => remarked(plan, String(i + 1))));
  const pieces = things.flatMap(({ item, made }, i) =>
    times(item.pieces, made).map((piece) => ({
      ...{ ...piece, mark: `${i + 1}${piece.mark}` },
      ...(piece.matched === undefined ? {} : { matched: `${i + 1} ${piece.matched}` }),
    })),
  );
  const together = planBoardsCheapest(pieces, kerf, "bought");
  const { lowerBound } = proofOf(together);
  const { cost } = proofOf(alone);
  return [
    yardListOf(things, together, kerf),
    { ...yardListOf(things, alone, kerf), proof: { cost, lowerBound, proven: lowerBound.equals(cost) } },
  ];
}

function remarked({ board, sawn, problem, plan }: CuttingPlan, prefix: string): CuttingPlan {
  const named = <T extends { readonly mark: string }>(one: T): T => ({ ...one, mark: `${prefix}${one.mark}` });
  return {
    board,
    sawn: sawn.map((one) => ({ ...named(one), says: `${prefix}${one.says}` })),
    problem: { ...problem, pieces: problem.pieces.map(named) },
    plan: { ...plan, boards: plan.boards.map((cuts) => ({ ...cuts, pieces: cuts.pieces.map(named) })) },
  };
}

/** Together, boards are fetched once and the saws are set for all; all other work is each thing's own. */
function minutesOf(
  alone: readonly Hours[],
  runs: readonly SawRun[],
  minutes: ShopMinutes,
): { readonly apart: Exact; readonly together: Exact } {
  const apart = alone.reduce((sum, hours) => sum.add(hours.minutes), zero);
  const own = alone.reduce(
    (sum, { lines }) =>
      lines
        .filter(({ work }) => work !== "rip" && work !== "crosscut")
        .reduce((all, line) => all.add(line.minutes), sum),
    zero,
  );
  const sawn = (["rip", "crosscut"] as const).reduce((sum, saw) => {
    const { rate } = rateOf(minutes, saw);
    const mine = runs.filter((run) => run.saw === saw);
    const cuts = mine.reduce((count, run) => count + run.cuts.length, 0);
    const setUps = mine.filter(({ size }) => size !== undefined).length;
    return sum.add(rate.each.mul(exact(cuts))).add(rate.setUp.mul(exact(setUps)));
  }, zero);
  return { apart, together: minutes.fetch.add(own).add(sawn) };
}
