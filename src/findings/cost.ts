// What one takes and how a batch is cut -> what the batch costs: material at dated prices, labour and overhead, and the money laid out.
import { ropeToBuy } from "../item/cord/rope-to-buy.ts";
import type { Item } from "../item/item.ts";
import { type Exact, exact, type Length, zero } from "../units/length.ts";
import type { Selling } from "../yard/shop-rates.ts";
import type { PlannedBoard } from "./board-plan.ts";
import { gluedJoins, type Hours, sandedFeet } from "./hours.ts";
import { sumOf, withOverhead } from "./price.ts";
import type { YardList } from "./yard-list.ts";

export type CostLine = {
  readonly kind: "board" | "fastener" | "finish" | "fitting" | "rope" | "abrasives" | "glue" | "sundries";
  readonly name: string;
  /** Boards, pieces, fluid ounces, inches of rope, square feet, joins, things sold: as `kind` has it. */
  readonly amount: Exact;
  /** A board's length as bought, and its price. */
  readonly length?: Length;
  readonly each?: Exact;
  /** Dollars for the batch. */
  readonly cost: Exact;
  /** The day the price was seen; what the shop file says of its own has none. */
  readonly priced?: string;
};

export type Costs = {
  readonly units: number;
  readonly lines: readonly CostLine[];
  /** Dollars for one thing sold. `boards` is part of `material`. */
  readonly boards: Exact;
  readonly material: Exact;
  readonly labour: Exact;
  readonly overhead: Exact;
  readonly whole: Exact;
  /** Dollars laid out for the batch: whole boards, packs and tins. */
  readonly laidOut: Exact;
};

/** Fluid ounces in a gallon. */
const ounces = 128;

/**
 * Boards are whole and what is left of them counts to the batch; of fasteners and finish only what is used counts, as the rest of the
 * pack serves the next batch. `list` is what one takes; `plan` and `hours` are those of the batch.
 */
export function costsOf(
  item: Item,
  list: YardList,
  plan: readonly PlannedBoard[],
  hours: Hours,
  wage: Exact,
  selling: Selling,
): Costs {
  const { units, made } = hours;
  const boards = boardLines(plan);
  const bought = [...boards, ...fittingLines(list, made), ...ropeLines(item, made)];
  const lines = [...bought, ...usedLines(list, made), ...ownLines(item, hours, selling)].filter(
    ({ amount }) => !amount.equals(0),
  );
  const material = costOf(lines).div(units);
  const labour = hours.perUnit.div(60).mul(wage);
  const whole = withOverhead(material, labour, selling.overhead);
  return {
    units,
    lines,
    boards: costOf(boards).div(units),
    material,
    labour,
    overhead: whole.sub(material).sub(labour),
    whole,
    laidOut: costOf(bought).add(wholePacks(list, made)),
  };
}

const costOf = (lines: readonly CostLine[]): Exact => sumOf(lines.map(({ cost }) => cost));

function boardLines(plan: readonly PlannedBoard[]): CostLine[] {
  const kinds = new Map(
    plan.map(({ board, stock }) => [`${board.name} ${stock.length.toFraction()}`, { board, stock }]),
  );
  return [...kinds.values()].map(({ board, stock }): CostLine => {
    const count = plan.filter((one) => one.board.name === board.name && one.stock.length.equals(stock.length)).length;
    return {
      kind: "board",
      name: board.name,
      amount: exact(count),
      length: stock.length,
      each: stock.price,
      cost: stock.price.mul(count),
      priced: stock.priced,
    };
  });
}

const fittingLines = (list: YardList, made: number): CostLine[] =>
  list.fittings.map(({ fitting, count, cost }) => ({
    kind: "fitting",
    name: fitting.name,
    amount: exact(count * made),
    cost: cost.mul(made),
    priced: fitting.priced,
  }));

/** All cords of the batch out of one run of each rope. */
function ropeLines(item: Item, made: number): CostLine[] {
  const ropes = new Map(item.cords.map(({ rope }) => [rope.name, rope]));
  return [...ropes.values()].map((rope): CostLine => {
    const one = item.cords.filter((cord) => cord.rope.name === rope.name).map(({ length }) => length);
    const { buy, cost } = ropeToBuy(rope, Array.from({ length: made }, () => one).flat());
    return { kind: "rope", name: rope.name, amount: buy, cost, priced: rope.priced };
  });
}

function usedLines(list: YardList, made: number): CostLine[] {
  return [
    ...list.fasteners.map(
      ({ fastener: { name, pack }, count }): CostLine => ({
        kind: "fastener",
        name,
        amount: exact(count * made),
        cost: pack.price.mul(count * made).div(pack.count),
        priced: pack.priced,
      }),
    ),
    ...list.finishes.map(({ finish: { name, tin }, gallons }): CostLine => {
      const used = fluidOunces(gallons).mul(made);
      return {
        kind: "finish",
        name,
        amount: used,
        cost: tin.price.mul(used).div(tin.gallons.mul(ounces)),
        priced: tin.priced,
      };
    }),
  ];
}

/** Up to the next hundredth of a fluid ounce, from where on all is exact. */
const fluidOunces = (gallons: number): Exact => exact(Math.ceil(gallons * ounces * 100 - 1e-9), 100);

/** What the shop file prices by itself. */
function ownLines(item: Item, { units, made }: Hours, { abrasives, glue, sundries }: Selling): CostLine[] {
  const feet = sandedFeet(item).mul(made);
  const joins = exact(gluedJoins(item) * made);
  return [
    { kind: "abrasives", name: "abrasives", amount: feet, cost: abrasives.mul(feet) },
    { kind: "glue", name: "glue", amount: joins, cost: glue.mul(joins) },
    { kind: "sundries", name: "sundries", amount: exact(units), cost: sundries.mul(units) },
  ];
}

function wholePacks(list: YardList, made: number): Exact {
  const packs = list.fasteners.map(({ fastener: { pack }, count }) =>
    pack.price.mul(Math.ceil((count * made) / pack.count)),
  );
  const tins = list.finishes.map(({ finish: { tin }, gallons }) =>
    tin.price.mul(fluidOunces(gallons).mul(made).div(tin.gallons.mul(ounces)).ceil()),
  );
  return [...packs, ...tins].reduce((sum, cost) => sum.add(cost), zero);
}
