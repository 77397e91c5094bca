// An item, how its batch is cut, and the shop's minutes -> the work of the batch: how many, how often set up, how long.
import { openAreas } from "../item/finish.ts";
import type { Item, Piece, WorkedCut } from "../item/item.ts";
import { squareFeet } from "../units/area.ts";
import { compareLengths, type Exact, exact, inches, type Length, zero } from "../units/length.ts";
import type { Rate, ShopMinutes, Timed, Work } from "../yard/shop-rates.ts";
import { works } from "../yard/shop-rates.ts";
import type { PlannedBoard, PlannedStrip } from "./board-plan.ts";
import { sawCutsOf } from "./saw-cuts.ts";
import { type SawRun, sawRunsOf } from "./saw-runs.ts";

/** How a rate came about: what the shop says, or the times that were taken: how many times, and the least and most minutes for one. */
export type Taken = { readonly n: number; readonly least: Exact; readonly most: Exact };

export type WorkLine = {
  readonly work: Work;
  /** Strips, cuts, holes, fasteners …; of sanding and of coating square feet, to a hundredth. */
  readonly count: Exact;
  readonly setUps: number;
  readonly rate: Rate;
  readonly taken?: Taken;
  /** How many times the shop's minutes it takes in this recipe, from batches that were made; `minutes` count it. */
  readonly own?: Taken & { readonly share: Exact };
  readonly minutes: Exact;
};

export type Hours = {
  /** Things sold, and things made for them: a pair is made of two. */
  readonly units: number;
  readonly made: number;
  readonly fetch: Exact;
  /** Only what there is to do, in the order of the work. */
  readonly lines: readonly WorkLine[];
  /** Minutes of the whole batch, and of one thing sold. */
  readonly minutes: Exact;
  readonly perUnit: Exact;
};

type Amount = { readonly count: Exact; readonly setUps: number };

/** How many are made for one that is sold. */
export const madeForOne = (item: Item): number => item.soldAs?.count ?? 1;

/** `plan` cuts all the pieces of the batch: a saw is set up as often as its runs say, a bit once, as is the brush for every coat. */
export function hoursOf(
  item: Item,
  units: number,
  plan: readonly PlannedBoard[],
  kerf: Exact,
  minutes: ShopMinutes,
): Hours {
  const made = units * madeForOne(item);
  const runs = sawRunsOf(plan.flatMap((board) => sawCutsOf(board, kerf)));
  const lines = works.flatMap((work): WorkLine[] => {
    const { count, setUps } = amountOf[work](item, made, plan, runs);
    if (count.equals(0)) return [];
    const { rate, taken } = rateOf(minutes, work);
    return [
      {
        work,
        count,
        setUps,
        rate,
        ...(taken ? { taken } : {}),
        minutes: count.mul(rate.each).add(rate.setUp.mul(setUps)),
      },
    ];
  });
  const whole = lines.reduce((sum, line) => sum.add(line.minutes), minutes.fetch);
  return { units, made, fetch: minutes.fetch, lines, minutes: whole, perUnit: whole.div(units) };
}

/** Times that were taken win over what the shop guessed: all their minutes over all that was done in them. */
export function rateOf(minutes: ShopMinutes, work: Work): { readonly rate: Rate; readonly taken?: Taken } {
  const times = minutes.timed[work] ?? [];
  const [first, ...others] = times.map(perOne);
  if (!first) return { rate: minutes.rates[work] };
  const sum = (of: (time: Timed) => Exact) => times.reduce((sofar, time) => sofar.add(of(time)), zero);
  return {
    rate: { ...minutes.rates[work], each: sum((time) => time.minutes).div(sum((time) => time.done)) },
    taken: {
      n: times.length,
      least: others.reduce((a, b) => (b.compare(a) < 0 ? b : a), first),
      most: others.reduce((a, b) => (b.compare(a) > 0 ? b : a), first),
    },
  };
}

const perOne = (time: Timed): Exact => time.minutes.div(time.done);

type Counting = (item: Item, made: number, plan: readonly PlannedBoard[], runs: readonly SawRun[]) => Amount;

const amountOf: Readonly<Record<Work, Counting>> = {
  rip: (_, __, ___, runs) => sawn(runs, "rip"),
  plane: (_, __, plan) => {
    const planed = plan.flatMap(({ order, strips }) => strips.flatMap((strip) => planedIn(order, strip)));
    return { count: exact(planed.length), setUps: distinct(planed.map(key)) };
  },
  crosscut: (_, __, ___, runs) => sawn(runs, "crosscut"),
  hole: (item, made) => cutsOf(item, made, (cut) => (cut.kind === "hole" ? [String(cut.across)] : [])),
  shape: (item, made) => cutsOf(item, made, shapesOf),
  outline: (item, made) => {
    const curved = item.pieces.filter((piece) => piece.outline !== undefined);
    return {
      count: total(curved, (piece) => piece.count * made),
      setUps: distinct(curved.map((piece) => piece.outline)),
    };
  },
  glue: (item, made) => ({ count: exact(gluedJoins(item) * made), setUps: gluedJoins(item) > 0 ? 1 : 0 }),
  sand: (item, made) => ({ count: sandedFeet(item).mul(made), setUps: 1 }),
  screw: (item, made) => {
    const driven = item.joins.flatMap((join) => join.driven);
    return { count: exact(driven.length * made), setUps: distinct(driven.map(({ fastener }) => fastener.name)) };
  },
  fit: (item, made) => ({
    count: total(item.fittings, ({ count }) => count * made),
    setUps: distinct(item.fittings.map(({ fitting }) => fitting.name)),
  }),
  tie: (item, made) => ({ count: exact(item.cords.length * made), setUps: item.cords.length > 0 ? 1 : 0 }),
  letter: (item, made) => ({ count: exact(item.textFields.length * made), setUps: item.textFields.length > 0 ? 1 : 0 }),
  coat: (item, made) => ({
    count: item.variant.finish.reduce((sum, { area, coats }) => sum.add(feet(area).mul(coats)), zero).mul(made),
    setUps: item.variant.finish.reduce((sum, { coats }) => sum + coats, 0),
  }),
};

/** A square foot is 144 sq in; to the nearest hundredth of a square foot, from where on all is exact. */
const feet = (squareInches: number): Exact => exact(Math.round(squareFeet(squareInches) * 100), 100);

/** Square feet of one that air reaches: all of that is sanded. */
export const sandedFeet = (item: Item): Exact =>
  feet([...openAreas(item.members, item.contacts).values()].reduce((sum, area) => sum + area, 0));

/** Joins that are glued in one, and the seams of its glued-up pieces: one fewer than their boards. */
export const gluedJoins = (item: Item): number =>
  item.joins.filter((join) => join.ways.includes("glue")).length +
  item.pieces.reduce((sum, piece) => sum + Math.max(0, boardsIn(piece) - 1) * piece.count, 0);

const boardsIn = (piece: Piece): number => piece.blanks?.reduce((sum, { count }) => sum + count, 0) ?? 1;

/** A cut that only makes an end fresh has no stop to be set. */
function sawn(runs: readonly SawRun[], saw: SawRun["saw"]): Amount {
  const own = runs.filter((run) => run.saw === saw);
  return {
    count: total(own, ({ cuts }) => cuts.length),
    setUps: own.filter(({ size }) => size !== undefined).length,
  };
}

/** A strip whose pieces all end as thick is planed while it is long; else each piece alone. */
function planedIn(order: PlannedBoard["order"], { pieces }: PlannedStrip): Length[] {
  const [first] = pieces;
  const alike = pieces.every(({ planedTo }) => planedTo !== undefined && sameThickness(planedTo, first?.planedTo));
  if (order === "rip" && alike && first?.planedTo !== undefined) return [first.planedTo];
  return pieces.flatMap(({ planedTo }) => (planedTo === undefined ? [] : [planedTo]));
}

const sameThickness = (a: Length, b: Length | undefined): boolean => b !== undefined && compareLengths(a, b) === 0;

/** Notches, laps, openings, slopes and rounded corners, by what is set up for them; arrises are eased while sanding. */
function shapesOf(cut: WorkedCut): string[] {
  if (cut.kind === "box" || cut.kind === "pocket" || cut.kind === "prism") return [cut.name];
  return cut.kind === "corners" || cut.kind === "slope" ? [cut.kind] : [];
}

/** Cuts of one sort; the set-up is told apart by the word that `of` has for it. */
function cutsOf(item: Item, made: number, of: (cut: WorkedCut) => readonly string[]): Amount {
  const found = item.pieces.map((piece) => ({ piece, words: piece.cuts.flatMap(of) }));
  return {
    count: total(found, ({ piece, words }) => piece.count * words.length * made),
    setUps: distinct(found.flatMap(({ words }) => words)),
  };
}

const total = <T>(all: readonly T[], of: (one: T) => number): Exact =>
  exact(all.reduce((sum, one) => sum + of(one), 0));
const distinct = (all: readonly unknown[]): number => new Set(all).size;
const key = (length: Length): string => inches(length).toFixed(6);
