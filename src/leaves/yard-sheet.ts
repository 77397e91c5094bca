// Yard lists of all variants -> what to buy and what it costs, as tables.
import type { PlanProof } from "../findings/board-plan.ts";
import type { YardList } from "../findings/yard-list.ts";
import type { Item } from "../item/item.ts";
import type { Length } from "../units/length.ts";
import { formatDollars } from "../units/money.ts";
import { setFractions } from "./edition.ts";
import type { Table } from "./leaf.ts";

export type YardSheet = {
  readonly boards: Table;
  /** Boards and offcuts that lie in the shop and are used up. */
  readonly own?: Table;
  readonly fasteners?: Table;
  readonly finishes?: Table;
  readonly fittings?: Table;
  readonly ropes?: Table;
  /** Needed, but without a price in the yard. */
  readonly glues: readonly string[];
  readonly costs: Table;
  /** How the boards were packed and what the prices are worth. */
  readonly notes: readonly string[];
};

export type Bought = { readonly item: Item; readonly list: YardList };

/** The first is the standard variant; boards, fasteners and fittings are the same for all of them. */
export function yardSheet(variants: readonly [Bought, ...Bought[]], length: (inches: Length) => string): YardSheet {
  const [{ list }] = variants;
  const finishes = variants.flatMap(({ item, list: { finishes } }) =>
    finishes.map(({ finish, gallons, tins, cost }) => [
      item.variant.name,
      finish.name,
      fluidOunces(gallons),
      tins === 1 ? `1 tin of ${finish.tin.size}` : `${tins} tins of ${finish.tin.size}`,
      formatDollars(cost),
      finish.tin.priced,
    ]),
  );
  return {
    ...boughtTables(list, length),
    ...tableOf("finishes", {
      caption: "Finish by variant, whole tins",
      heads: ["Variant", "Finish", "Takes", "Buy", "Together", "Price seen"],
      rows: finishes,
    }),
    glues: list.glues,
    costs: {
      caption: "Everything above, as bought, for one",
      heads: ["Variant", "Together"],
      rows: variants.map(({ item, list: { cost } }) => [item.variant.name, formatDollars(cost)]),
    },
    notes: [
      proofWords(list.proof),
      ...tooLongWords(list, length),
      `Prices are the shop's own, seen on ${datesOf(variants)}; ask again before you buy.`,
    ],
  };
}

/** What the yard sells and the shop's vehicle can't take. */
function tooLongWords({ boards }: YardList, length: (inches: Length) => string): string[] {
  const kinds = [...new Map(boards.map(({ board }) => [board.name, board])).values()];
  const left = kinds.flatMap(({ name, tooLong = [] }) =>
    tooLong.length === 0 ? [] : [`${name} of ${tooLong.map((one) => length(one.length)).join(", ")}`],
  );
  return left.length === 0 ? [] : [`Too long for the vehicle, so left at the yard: ${left.join("; ")}.`];
}

type BoughtTables = Pick<YardSheet, "boards" | "own" | "fasteners" | "fittings" | "ropes">;

/** All but the finishes: boards, what lies in the shop, fasteners, fittings and rope. */
export const boughtTables = (list: YardList, length: (inches: Length) => string): BoughtTables => ({
  boards: {
    caption: "Boards to buy, whole; sizes in inches",
    heads: ["Board", "True section", "Wood", "Length", "Number", "Each", "Together", "Price seen"],
    rows: list.boards.map(({ board, stock, count, cost }) => [
      board.name,
      `${length(board.thickness)} × ${length(board.width)}`,
      board.treatment === "none" ? board.species.name : `${board.species.name}, treated`,
      length(stock.length),
      String(count),
      formatDollars(stock.price),
      formatDollars(cost),
      stock.priced,
    ]),
  },
  ...tableOf("own", {
    caption: "Already in the shop, not bought; sizes in inches",
    heads: ["Board", "Length", "Width", "Number"],
    rows: list.own.map(({ board, length: long, width, count }) => [
      board.name,
      length(long),
      length(width),
      String(count),
    ]),
  }),
  ...tableOf("fasteners", fastenersTable(list)),
  ...tableOf("fittings", fittingsTable(list)),
  ...tableOf("ropes", ropesTable(list, length)),
});

/** Whether the boards are known to be the cheapest, or how far they may be from it. */
export const proofWords = ({ cost, lowerBound, proven }: PlanProof): string =>
  proven
    ? "The boards are the cheapest that give all the pieces: no other choice of boards and cuts costs less."
    : `The boards are the cheapest that were found: no others cost less than ${formatDollars(lowerBound)}, so at most ${formatDollars(cost.sub(lowerBound))} could still be saved.`;

function tableOf<K extends string>(key: K, table: Table): { [P in K]?: Table } {
  return table.rows.length === 0 ? {} : ({ [key]: table } as { [P in K]?: Table });
}

const fastenersTable = (list: YardList): Table => ({
  caption: "Fasteners, whole packs",
  heads: ["Fastener", "Takes", "Buy", "Together", "Price seen"],
  rows: list.fasteners.map(({ fastener, count, packs, cost }) => [
    setFractions(fastener.name),
    String(count),
    `${packs === 1 ? "1 pack" : `${packs} packs`} of ${fastener.pack.count}`,
    formatDollars(cost),
    fastener.pack.priced,
  ]),
});

const fittingsTable = (list: YardList): Table => ({
  caption: "Fittings",
  heads: ["Fitting", "Number", "Together", "Price seen"],
  rows: list.fittings.map(({ fitting, count, cost }) => [
    fitting.name,
    String(count),
    formatDollars(cost),
    fitting.priced,
  ]),
});

const ropesTable = (list: YardList, length: (inches: Length) => string): Table => ({
  caption: "Rope, as it is sold",
  heads: ["Rope", "Takes", "Buy", "Together", "Price seen"],
  rows: list.ropes.map(({ rope, takes, buy, cost }) => [
    setFractions(rope.name),
    length(takes),
    length(buy),
    formatDollars(cost),
    rope.priced,
  ]),
});

const datesOf = (variants: readonly Bought[]): string =>
  [...new Set(variants.flatMap(({ list }) => list.priced))].sort().join(", ");

/** 1 gal = 128 fl oz; up to the next whole ounce, so that a tin is never short. */
export const fluidOunces = (gallons: number): string => `${Math.ceil(gallons * 128 - 1e-9)} fl oz`;
