// Sheet goods, clear pieces, pieces of one board, mitres in strips: sums a maker can follow, and least costs by brute force.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/cutting/check-plan.ts";
import type { CutPlan, CutProblem, Order } from "../../src/cutting/cut-problem.ts";
import { planCuts } from "../../src/cutting/plan-cuts.ts";
import { readCutProblem } from "../../src/cutting/read-problem.ts";
import { formatMoney } from "../../src/units/money.ts";
import { leastCost, type SmallBoard, type SmallPiece } from "./brute-force.ts";

function read(json: unknown): CutProblem {
  const { problem, faults } = readCutProblem(json);
  if (problem === undefined) throw new Error(faults.join("; "));
  return problem;
}
function planned(json: unknown): CutPlan {
  const problem = read(json);
  const plan = planCuts(problem);
  if (plan === undefined) throw new Error("the boards are too few");
  expect(checkPlan(problem, plan)).toEqual([]);
  return plan;
}
const board = (id: string, length: number, width: number, cost: string) => ({ id, length, width, cost });
const piece = (mark: string, length: number, width: number, count: number) => ({ mark, length, width, count });

describe("sheet goods", () => {
  const sheet = board("ply", 96, 48, "60.00");
  it("eight of 24 by 47 3/4 need the sheet's whole 96 across turned: 2 x 47 3/4 + 1/8 = 95 5/8 along, 2 x 24 across is a kerf too wide", () => {
    const pieces = [{ ...piece("A", 47.75, 23.9, 4), grain: "any" }];
    expect(planned({ kerf: 0.125, boards: [sheet], pieces }).boards).toHaveLength(1);
  });

  it("two of 30 by 90 with the grain along go on two sheets, 2 x 30 being more than 48; where it may turn, 90 is more than 48 too", () => {
    for (const grain of ["along", "any"]) {
      expect(
        planned({ kerf: 0.125, boards: [sheet], pieces: [{ ...piece("A", 90, 30, 2), grain }] }).boards,
      ).toHaveLength(2);
    }
  });

  it("three of 47 by 31 turn: 3 x 31 + 2 kerfs = 93 1/4 of 96 with 47 across; along the grain only two", () => {
    const count = (grain: string) =>
      planned({ kerf: 0.125, boards: [sheet], pieces: [{ ...piece("A", 47, 31, 3), grain }] }).boards.length;
    expect([count("any"), count("along")]).toEqual([1, 2]);
  });
});

describe("clear pieces", () => {
  const own = { ...board("own", 96, 3.5, "0.00"), have: 1, bad: [{ from: 40, to: 46 }] };
  const bought = board("2x4x8", 96, 3.5, "4.10");
  it("40 clear before a knot at 40, 50 behind it at 46: two clear pieces of 40 and 49 7/8 from the own board", () => {
    const pieces = [piece("A", 40, 3.5, 1), piece("B", 49.875, 3.5, 1)].map((each) => ({ ...each, clear: true }));
    expect(formatMoney(planned({ kerf: 0.125, boards: [own, bought], pieces }).cost)).toBe("0.00");
  });
  it("one of 51 that must be clear is bought, one that may have knots is not", () => {
    const cost = (clear: boolean) =>
      formatMoney(planned({ kerf: 0.125, boards: [own, bought], pieces: [{ ...piece("A", 51, 3.5, 1), clear }] }).cost);
    expect([cost(true), cost(false)]).toEqual(["4.10", "0.00"]);
  });
  it("none comes from a knotty board, however cheap", () => {
    const boards = [{ ...bought, knotty: true }, board("select", 96, 3.5, "9.00")];
    const pieces = [{ ...piece("A", 40, 3.5, 1), clear: true }, piece("B", 90, 3.5, 1)];
    expect(formatMoney(planned({ kerf: 0.125, boards, pieces }).cost)).toBe("13.10");
  });
});

describe("pieces of one board", () => {
  const boards = [board("4 ft", 48, 3.5, "2.00"), board("8 ft", 96, 3.5, "5.00")];
  it("two of 46 are cheapest from two of 4 ft, 4.00; marked together they come from one of 8 ft, 5.00", () => {
    const cost = (more: object) =>
      formatMoney(planned({ kerf: 0.125, boards, pieces: [{ ...piece("A", 46, 3.5, 2), ...more }] }).cost);
    expect([cost({}), cost({ together: "doors" })]).toEqual(["4.00", "5.00"]);
  });
  it("more than any board holds is no plan", () => {
    expect(planCuts(read({ kerf: 0.125, boards, pieces: [{ ...piece("A", 32, 3.5, 3), together: "doors" }] }))).toBe(
      undefined,
    );
  });
});

describe("trim and mitres", () => {
  it("1/2 off both ends of 96 leaves 95: two of 47 7/16 and a kerf of 1/8, the first at 1/2", () => {
    const at = (length: number) =>
      planned({
        kerf: 0.125,
        trim: 0.5,
        trimBothEnds: true,
        boards: [board("b", 96, 3.5, "4.10")],
        pieces: [piece("A", length, 3.5, 2)],
      });
    expect(at(47.4375).boards.map(({ pieces }) => pieces.map((each) => each.at))).toEqual([[0.5, 48.0625]]);
    expect(at(47.44).boards).toHaveLength(2);
  });

  it("four braces of 60 at 45, 5 wide, from a board 10 1/8 wide and 115 1/4 long: ripped in two, each strip 60 + 55 + 0.18", () => {
    const pieces = [{ ...piece("A", 60, 5, 4), ends: [{ mitre: -45 }, { mitre: 45 }] }];
    const boards = (length: number) =>
      planned({ kerf: 0.125, boards: [board("b", length, 10.125, "4.00")], pieces }).boards;
    expect(boards(115.25)).toHaveLength(1);
    expect(boards(115.17)).toHaveLength(2);
  });
});

const cents = (plan: CutPlan | undefined): number | undefined => plan && Math.round(plan.cost.valueOf() * 100);

/** The plan costs what brute force finds where it is proven, else no less, and its bound is no higher. Answers whether it was proven. */
function compare(
  boards: readonly SmallBoard[],
  pieces: readonly SmallPiece[],
  kerf: number,
  order: Order | "either",
): boolean {
  const { problem } = readCutProblem({
    kerf,
    order,
    boards: boards.map(({ length, width, cost, have, bad }, i) => ({
      ...board(`b${i}`, length, width, (cost / 100).toFixed(2)),
      ...(have === undefined ? {} : { have }),
      ...(bad === undefined ? {} : { bad: bad.map(([from, to]) => ({ from, to })) }),
    })),
    pieces: pieces.map(({ length, width, turns, clear, group, ends, showFace }, i) => ({
      ...piece(`p${i}`, length, width, 1),
      ...(turns ? { grain: "any" } : {}),
      ...(clear ? { clear } : {}),
      ...(group ? { together: group } : {}),
      ...(ends ? { ends: ends.map((mitre) => ({ mitre })), showFace } : {}),
    })),
  });
  const least = leastCost(boards, pieces, kerf, order === "either" ? ["rip", "crosscut"] : [order]);
  if (problem === undefined) {
    expect(least).toBe(undefined);
    return true;
  }
  const plan = planCuts(problem);
  if (plan === undefined) {
    // Of groups it can't be told for certain.
    if (!pieces.some(({ group }) => group)) expect(least).toBe(undefined);
    return least === undefined;
  }
  expect(checkPlan(problem, plan)).toEqual([]);
  const bound = Math.round(plan.lowerBound.valueOf() * 100);
  if (plan.proven) expect(cents(plan)).toBe(least);
  expect(bound).toBeLessThanOrEqual(least as number);
  expect(cents(plan)).toBeGreaterThanOrEqual(least as number);
  return cents(plan) === least;
}

const order = fc.constantFrom<Order | "either">("rip", "crosscut", "either");
const size = (min: number, max: number) => fc.integer({ min, max });
const kerf = size(0, 2);
const sheets = fc.array(fc.record({ length: size(12, 30), width: size(8, 16), cost: size(1, 900) }), {
  minLength: 1,
  maxLength: 2,
});
const within = (boards: readonly SmallBoard[], pieces: readonly SmallPiece[]): SmallPiece[] =>
  pieces.map((each) => ({
    ...each,
    length: Math.min(each.length, boards[0]?.length ?? 0),
    width: Math.min(each.width, boards[0]?.width ?? 0),
  }));
const several = <T>(one: fc.Arbitrary<T>, maxLength: number) => fc.array(one, { minLength: 1, maxLength });

describe("against brute force", () => {
  const run = (numRuns: number, seed: number, from: fc.Arbitrary<readonly [boolean]>): [number, number] => {
    let [all, best] = [0, 0];
    fc.assert(
      fc.property(from, ([same]) => {
        all++;
        if (same) best++;
      }),
      { numRuns, seed, endOnFailure: true },
    );
    return [all, best];
  };

  it("sheets: 500 problems of up to 5 pieces that may turn or not", () => {
    const one = fc.record({ length: size(3, 14), width: size(2, 10), turns: fc.boolean() });
    const [all, best] = run(
      500,
      21,
      fc
        .tuple(sheets, several(one, 5), kerf, order)
        .map(([boards, pieces, k, o]) => [compare(boards, within(boards, pieces), k, o)]),
    );
    expect(best).toBe(all);
  });

  it("mitres in strips: 500 problems of up to 5 pieces of two widths, ripped first", () => {
    const one = fc.record({
      length: size(14, 22),
      width: fc.constantFrom(4, 6),
      ends: fc.tuple(fc.constantFrom(-30, 0, 30, 45), fc.constantFrom(-30, 0, 30, 45)),
      showFace: fc.boolean(),
    });
    const strips = several(fc.record({ length: size(20, 50), width: size(6, 14), cost: size(1, 900) }), 2);
    const [all, best] = run(
      500,
      22,
      fc
        .tuple(strips, several(one, 5), kerf, fc.constant<Order>("rip"))
        .map(([boards, pieces, k, o]) => [compare(boards, pieces, k, o)]),
    );
    expect(best).toBe(all);
  });

  it("clear pieces: 500 problems of up to 6 pieces in line, a bad stretch or two in an own board", () => {
    const one = fc.record({ length: size(4, 20), width: fc.constant(5), clear: fc.boolean() });
    const bad = fc.array(fc.tuple(size(0, 40), size(1, 8)), { minLength: 1, maxLength: 2 });
    const [all, best] = run(
      500,
      23,
      fc
        .tuple(bad, size(30, 60), size(20, 60), size(100, 900), several(one, 6), kerf)
        .map(([stretches, own, length, cost, pieces, k]) => {
          const cut = stretches.map(([from, long]) => [Math.min(from, own - 2), Math.min(from + long, own)] as const);
          const boards = [
            { length: own, width: 5, cost: 0, have: 1, bad: cut },
            { length, width: 5, cost },
          ];
          return [compare(boards, pieces, k, "either")];
        }),
    );
    expect(best).toBe(all);
  });

  it("pieces of one board: 300 problems in line, 300 in strips; of the latter nearly all at the least cost", () => {
    const group = fc.constantFrom(undefined, undefined, "a", "b");
    const line = fc.record({ length: size(4, 20), width: fc.constant(5), group });
    const lines = several(fc.record({ length: size(20, 60), width: fc.constant(5), cost: size(1, 900) }), 3);
    const inLine = run(
      300,
      24,
      fc.tuple(lines, several(line, 6), kerf).map(([boards, pieces, k]) => [compare(boards, pieces, k, "either")]),
    );
    expect(inLine[1]).toBe(inLine[0]);
    const strip = fc.record({ length: size(3, 12), width: size(2, 8), group });
    const inStrips = run(
      300,
      25,
      fc
        .tuple(sheets, several(strip, 5), kerf, order)
        .map(([boards, pieces, k, o]) => [compare(boards, within(boards, pieces), k, o)]),
    );
    expect(inStrips[1]).toBeGreaterThanOrEqual(0.95 * inStrips[0]);
  });
});
