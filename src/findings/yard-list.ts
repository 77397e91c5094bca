// Worked-out item -> what to buy: whole boards, packs of fasteners, tins of finish and fittings, with dated prices.
import { type RopeBought, ropeToBuy } from "../item/cord/rope-to-buy.ts";
import type { Item } from "../item/item.ts";
import { type Exact, exact, zero } from "../units/length.ts";
import type { Board, BoardLength, Fastener, Finish, Fitting } from "../yard/yard.ts";
import { boardsAsTheyLie, type PlannedBoard, type PlanProof, proofOf } from "./board-plan.ts";
import { type CuttingPlan, planBoardsCheapest } from "./cutting-plan.ts";

export type YardList = {
  /** Boards to buy, like ones together; and which pieces come out of which board. */
  readonly boards: readonly {
    readonly board: Board;
    readonly stock: BoardLength;
    readonly count: number;
    readonly cost: Exact;
  }[];
  /** What lies in the shop already and is used, like ones together. */
  readonly own: readonly {
    readonly board: Board;
    readonly length: Exact;
    readonly width: Exact;
    readonly count: number;
  }[];
  readonly plan: readonly PlannedBoard[];
  readonly proof: PlanProof;
  /** Packs are whole; `count` is what the item takes. */
  readonly fasteners: readonly {
    readonly fastener: Fastener;
    readonly count: number;
    readonly packs: number;
    readonly cost: Exact;
  }[];
  /** Tins are whole; `gallons` is what all the coats take. */
  readonly finishes: readonly {
    readonly finish: Finish;
    readonly coats: number;
    readonly gallons: number;
    readonly tins: number;
    readonly cost: Exact;
  }[];
  readonly fittings: readonly { readonly fitting: Fitting; readonly count: number; readonly cost: Exact }[];
  /** Each rope cut from one run, bought in the units it is sold by. */
  readonly ropes: readonly RopeBought[];
  /** Names of the glues used; the yard has no price for them. An unnamed one is "wood glue". */
  readonly glues: readonly string[];
  /** Dollars for all of the above as bought, whole boards, packs and tins. */
  readonly cost: Exact;
  /** Every date on which one of these prices was seen, oldest first. */
  readonly priced: readonly string[];
};

/** A thing in one variant, and how many of it are made. */
export type Made = { readonly item: Item; readonly made: number };

/** What this variant of the item takes, bought for one of it, with what lies in the shop. */
export const yardList = (item: Item, kerf: Exact): YardList =>
  yardListOf([{ item, made: 1 }], planBoardsCheapest(item.pieces, kerf, "in hand"), kerf);

/** What all these take together; `plans` cut the pieces of all of them. */
export function yardListOf(things: readonly Made[], plans: readonly CuttingPlan[], kerf: Exact): YardList {
  const plan = boardsAsTheyLie(plans, kerf);
  const boards = groupBoards(plan.filter(({ own }) => !own));
  const fasteners = countFasteners(things);
  const finishes = countTins(things);
  const fittings = countFittings(things);
  const ropes = countRopes(things);
  const lines = [...boards, ...fasteners, ...finishes, ...fittings, ...ropes];
  const dates = [
    ...boards.map(({ stock }) => stock.priced),
    ...fasteners.map(({ fastener }) => fastener.pack.priced),
    ...finishes.map(({ finish }) => finish.tin.priced),
    ...fittings.map(({ fitting }) => fitting.priced),
    ...ropes.map(({ rope }) => rope.priced),
  ];
  return {
    boards,
    own: groupOwn(plan.filter(({ own }) => own)),
    plan,
    proof: proofOf(plans),
    fasteners,
    finishes,
    fittings,
    ropes,
    glues: [...new Set(things.flatMap(({ item }) => gluesOf(item)))].sort(),
    cost: lines.reduce((sum, line) => sum.add(line.cost), zero),
    priced: [...new Set(dates)].sort(),
  };
}

const gluesOf = ({ joins }: Item): string[] =>
  joins.filter((join) => join.ways.includes("glue")).map((join) => join.glue ?? "wood glue");

function groupBoards(plan: readonly PlannedBoard[]): YardList["boards"] {
  const lines = new Map<string, YardList["boards"][number]>();
  for (const { board, stock } of plan) {
    const key = `${board.name} ${stock.length.toFraction()}`;
    const count = (lines.get(key)?.count ?? 0) + 1;
    lines.set(key, { board, stock, count, cost: stock.price.mul(count) });
  }
  return [...lines.values()];
}

function groupOwn(plan: readonly PlannedBoard[]): YardList["own"] {
  const lines = new Map<string, YardList["own"][number]>();
  for (const { board, stock, width } of plan) {
    const key = `${board.name} ${stock.length.toFraction()} ${width.toFraction()}`;
    lines.set(key, { board, length: stock.length, width, count: (lines.get(key)?.count ?? 0) + 1 });
  }
  return [...lines.values()];
}

function countFasteners(things: readonly Made[]): YardList["fasteners"] {
  const counts = new Map<string, { fastener: Fastener; count: number }>();
  for (const { item, made } of things) {
    for (const { fastener } of item.joins.flatMap((join) => join.driven)) {
      counts.set(fastener.name, { fastener, count: (counts.get(fastener.name)?.count ?? 0) + made });
    }
  }
  return [...counts.values()].map(({ fastener, count }) => {
    const packs = Math.ceil(count / fastener.pack.count);
    return { fastener, count, packs, cost: fastener.pack.price.mul(packs) };
  });
}

function countTins(things: readonly Made[]): YardList["finishes"] {
  const needs = new Map<string, { finish: Finish; coats: number; gallons: number }>();
  for (const { item, made } of things) {
    for (const { finish, coats, gallons } of item.variant.finish) {
      const sofar = needs.get(finish.name);
      needs.set(finish.name, {
        finish,
        coats: Math.max(coats, sofar?.coats ?? 0),
        gallons: gallons * made + (sofar?.gallons ?? 0),
      });
    }
  }
  return [...needs.values()].map((need) => {
    const tins = Math.ceil(need.gallons / need.finish.tin.gallons.valueOf());
    return { ...need, tins, cost: need.finish.tin.price.mul(tins) };
  });
}

function countFittings(things: readonly Made[]): YardList["fittings"] {
  const counts = new Map<string, { fitting: Fitting; count: number }>();
  for (const { item, made } of things) {
    for (const { fitting, count } of item.fittings) {
      counts.set(fitting.name, { fitting, count: (counts.get(fitting.name)?.count ?? 0) + count * made });
    }
  }
  return [...counts.values()].map(({ fitting, count }) => ({ fitting, count, cost: fitting.price.mul(exact(count)) }));
}

/** All cords of one rope out of one run. */
function countRopes(things: readonly Made[]): YardList["ropes"] {
  const cords = things.flatMap(({ item, made }) => Array.from({ length: made }, () => item.cords).flat());
  const ropes = new Map(cords.map(({ rope }) => [rope.name, rope]));
  return [...ropes.values()].map((rope) => {
    const lengths = cords.filter((cord) => cord.rope.name === rope.name).map(({ length }) => length);
    return ropeToBuy(rope, lengths);
  });
}
