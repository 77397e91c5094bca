// Plans on boards: sums a maker can follow, every plan added up again, least costs by brute force, and what must never change a cost.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/cutting/check-plan.ts";
import type { CutPlan, CutProblem, Order } from "../../src/cutting/cut-problem.ts";
import { planCuts } from "../../src/cutting/plan-cuts.ts";
import { readCutProblem } from "../../src/cutting/read-problem.ts";
import { exact } from "../../src/units/length.ts";
import { formatMoney } from "../../src/units/money.ts";
import { leastCost, type SmallBoard, type SmallPiece } from "./brute-force.ts";
import { researchProblem, researchRows } from "./research-problem.ts";

function read(json: unknown): CutProblem {
  const { problem, faults } = readCutProblem(json);
  if (problem === undefined) throw new Error(faults.join("; "));
  return problem;
}

/** The plan, added up again. */
function planned(problem: CutProblem): CutPlan {
  const plan = planCuts(problem);
  if (plan === undefined) throw new Error("the boards are too few");
  expect(checkPlan(problem, plan)).toEqual([]);
  return plan;
}

const board = (id: string, length: number, width: number, cost: string) => ({ id, length, width, cost });
const piece = (mark: string, length: number, width: number, count: number) => ({ mark, length, width, count });

describe("a plan for boards of several lengths", () => {
  it("three of 31 7/8 and two kerfs of 1/8 fill a board of 96 with 1/8 to spare: 95 5/8 + 1/4 = 95 7/8", () => {
    const problem = read({
      kerf: 0.125,
      boards: [board("2x4x8", 96, 3.5, "4.10")],
      pieces: [piece("A", 31.875, 3.5, 3)],
    });
    expect(formatMoney(planned(problem).cost)).toBe("4.10");
  });

  it("three of 32 don't come from a board of 96: 96 + 1/4 of kerf is more", () => {
    const problem = read({ kerf: 0.125, boards: [board("2x4x8", 96, 3.5, "4.10")], pieces: [piece("A", 32, 3.5, 3)] });
    expect(planned(problem)).toMatchObject({ proven: true, boards: { length: 2 } });
  });

  it("a trim of 1 leaves 95 of 96: two of 47 1/2 need no kerf to spare and don't fit, two of 47 7/16 do", () => {
    const at = (length: number) =>
      planned(
        read({ kerf: 0.125, trim: 1, boards: [board("b", 96, 3.5, "4.10")], pieces: [piece("A", length, 3.5, 2)] }),
      );
    expect(at(47.5).boards).toHaveLength(2);
    expect(at(47.4375).boards).toHaveLength(1);
  });

  it("takes an offcut at no cost before it buys, and not more of it than there is", () => {
    const boards = [{ ...board("offcut", 30, 3.5, "0.00"), have: 1 }, board("2x4x8", 96, 3.5, "4.10")];
    const plan = planned(read({ kerf: 0.125, boards, pieces: [piece("A", 29, 3.5, 4)] }));
    expect([formatMoney(plan.cost), plan.boards.filter(({ id }) => id === "offcut").length]).toEqual(["4.10", 1]);
  });

  it("of two plans at 8.00 takes the one with fewer boards: one of 8 ft instead of two of 4 ft", () => {
    const boards = [board("4 ft", 48, 3.5, "4.00"), board("8 ft", 96, 3.5, "8.00")];
    const plan = planned(read({ kerf: 0.125, boards, pieces: [piece("A", 46, 3.5, 2)] }));
    expect([formatMoney(plan.cost), plan.boards.map(({ id }) => id)]).toEqual(["8.00", ["8 ft"]]);
  });

  it("tells where the boards in stock don't suffice", () => {
    const boards = [{ ...board("2x4x8", 96, 3.5, "4.10"), have: 1 }];
    expect(planCuts(read({ kerf: 0.125, boards, pieces: [piece("A", 60, 3.5, 2)] }))).toBeUndefined();
  });

  it("keeps to the boards a piece may come from", () => {
    const boards = [board("pine", 96, 3.5, "3.00"), board("oak", 96, 3.5, "20.00")];
    const pieces = [{ ...piece("A", 40, 3.5, 1), boards: ["oak"] }, piece("B", 40, 3.5, 1)];
    expect(formatMoney(planned(read({ kerf: 0.125, boards, pieces })).cost)).toBe("20.00");
  });
});

describe("a plan for boards that are ripped and crosscut", () => {
  it("two strips of 2 11/16 and a kerf of 1/8 are exactly a board of 5 1/2", () => {
    const problem = read({
      kerf: 0.125,
      boards: [board("1x6x6", 72, 5.5, "6.00")],
      pieces: [piece("A", 70, 2.6875, 2)],
    });
    expect(planned(problem).boards).toHaveLength(1);
  });

  it("crosscut first where two lengths want unlike widths: 40 of 5 1/2 beside two of 50 by 2 11/16", () => {
    const boards = [board("b", 96, 5.5, "6.00")];
    const pieces = [piece("A", 40, 5.5, 1), piece("B", 50, 2.6875, 2)];
    const plan = planned(read({ kerf: 0.125, boards, pieces }));
    expect(plan.boards.map(({ order }) => order)).toEqual(["crosscut"]);
    expect(planned(read({ kerf: 0.125, boards, pieces, order: "rip" })).boards).toHaveLength(2);
  });
});

const smallLine = fc.record({
  kerf: fc.integer({ min: 0, max: 3 }),
  boards: fc.array(
    fc.record({
      length: fc.integer({ min: 20, max: 60 }),
      cost: fc.integer({ min: 0, max: 900 }),
      have: fc.option(fc.integer({ min: 1, max: 3 }), { nil: undefined }),
    }),
    { minLength: 1, maxLength: 3 },
  ),
  pieces: fc.array(fc.integer({ min: 4, max: 20 }), { minLength: 1, maxLength: 8 }),
});
const smallStrips = fc.record({
  kerf: fc.integer({ min: 0, max: 2 }),
  order: fc.constantFrom<Order | "either">("rip", "crosscut", "either"),
  boards: fc.array(
    fc.record({
      length: fc.integer({ min: 12, max: 30 }),
      width: fc.integer({ min: 8, max: 16 }),
      cost: fc.integer({ min: 1, max: 900 }),
    }),
    { minLength: 1, maxLength: 2 },
  ),
  pieces: fc.array(fc.record({ length: fc.integer({ min: 3, max: 12 }), width: fc.integer({ min: 2, max: 8 }) }), {
    minLength: 1,
    maxLength: 6,
  }),
});

function small(
  boards: readonly SmallBoard[],
  pieces: readonly SmallPiece[],
  kerf: number,
  order: Order | "either",
): CutProblem {
  return read({
    kerf,
    order,
    boards: boards.map(({ length, width, cost, have }, i) => ({
      ...board(`b${i}`, length, width, (cost / 100).toFixed(2)),
      ...(have === undefined ? {} : { have }),
    })),
    pieces: pieces.map(({ length, width }, i) => piece(`p${i}`, length, width, 1)),
  });
}
const cents = (plan: CutPlan | undefined): number | undefined => plan && Math.round(plan.cost.valueOf() * 100);

/** 500 problems of a kind: the plan costs what brute force finds, its bound is no higher, and it is proven. */
describe("against brute force", () => {
  it("lengths: 500 problems of up to 8 pieces", () => {
    let [plans, proven] = [0, 0];
    fc.assert(
      fc.property(smallLine, ({ kerf, boards, pieces }) => {
        const wide = boards.map((each) => ({ ...each, width: 5 }));
        const blanks = pieces.map((length) => ({ length, width: 5 }));
        const problem = small(wide, blanks, kerf, "either");
        const plan = planCuts(problem);
        expect(cents(plan)).toBe(leastCost(wide, blanks, kerf, ["rip"]));
        if (plan === undefined) return;
        expect(checkPlan(problem, plan)).toEqual([]);
        plans++;
        if (plan.proven) proven++;
      }),
      { numRuns: 500, seed: 11 },
    );
    expect(proven).toBe(plans);
  });

  it("strips: 500 problems of up to 6 pieces, ripped first, crosscut first, or either", () => {
    let [plans, proven] = [0, 0];
    fc.assert(
      fc.property(smallStrips, ({ kerf, order, boards, pieces }) => {
        const largest = boards[0] as SmallBoard;
        const blanks = pieces.map(({ length, width }) => ({
          length: Math.min(length, largest.length),
          width: Math.min(width, largest.width),
        }));
        const problem = small(boards, blanks, kerf, order);
        const plan = planCuts(problem);
        expect(cents(plan)).toBe(leastCost(boards, blanks, kerf, order === "either" ? ["rip", "crosscut"] : [order]));
        if (plan === undefined) return;
        expect(checkPlan(problem, plan)).toEqual([]);
        plans++;
        if (plan.proven) proven++;
      }),
      { numRuns: 500, seed: 12 },
    );
    expect(proven).toBe(plans);
  });
});

describe("what never changes the wrong way", () => {
  const costOf = (problem: CutProblem): number => cents(planned(problem)) as number;
  const shop = researchRows("shop_1d")
    .slice(0, 100)
    .filter((row) => row.items.length < 10)
    .slice(0, 8);
  const rip = researchRows("shop_rip")
    .filter((row) => row.items.length < 8)
    .slice(0, 4);
  const problems = [
    ...shop.map((row) => researchProblem("shop_1d", row)),
    ...rip.map((row) => researchProblem("shop_rip", row)),
  ];

  it("one more kind of board never costs more, and one board kind fewer never less", () => {
    for (const problem of problems) {
      const [, ...others] = problem.boards;
      const fits = problem.pieces.every(({ length, width }) =>
        others.some((b) => length.compare(b.length) <= 0 && width.compare(b.width) <= 0),
      );
      if (!fits) continue;
      expect(costOf({ ...problem, boards: others })).toBeGreaterThanOrEqual(costOf(problem));
    }
  });

  it("one piece more never costs less", () => {
    for (const problem of problems) {
      const [first, ...rest] = problem.pieces;
      if (first === undefined) continue;
      expect(costOf({ ...problem, pieces: [{ ...first, count: first.count + 1 }, ...rest] })).toBeGreaterThanOrEqual(
        costOf(problem),
      );
    }
  });

  it("the order of boards and pieces changes no plan's cost, bound or boards", () => {
    for (const problem of problems) {
      const turned = planned({
        ...problem,
        boards: [...problem.boards].reverse(),
        pieces: [...problem.pieces].reverse(),
      });
      const plan = planned(problem);
      expect(turned.boards.map(({ id }) => id)).toEqual(plan.boards.map(({ id }) => id));
      expect([turned.cost.equals(plan.cost), turned.lowerBound.equals(plan.lowerBound)]).toEqual([true, true]);
    }
  });

  it("inches or millimetres, 25.4 times as many: the same plan", () => {
    const scale = exact("25.4");
    for (const problem of problems) {
      const metric = planned({
        ...problem,
        kerf: problem.kerf.mul(scale),
        boards: problem.boards.map((each) => ({
          ...each,
          length: each.length.mul(scale),
          width: each.width.mul(scale),
        })),
        pieces: problem.pieces.map((each) => ({
          ...each,
          length: each.length.mul(scale),
          width: each.width.mul(scale),
        })),
      });
      const plan = planned(problem);
      const marks = (from: CutPlan) => from.boards.map(({ pieces }) => pieces.map(({ mark }) => mark));
      expect(marks(metric)).toEqual(marks(plan));
    }
  });
});

describe("research sets with published best values", () => {
  // Best values: BPPLIB solution list (Delorme, Iori, Martello 2018).
  for (const set of ["falkenauer_u", "schwerin_1", "schwerin_2", "waescher"]) {
    it(`${set}: the published number of boards, proven`, () => {
      for (const row of researchRows(set).slice(0, 3)) {
        const plan = planned(researchProblem(set, row));
        expect([row.name, cents(plan), plan.proven]).toEqual([row.name, row.best, true]);
      }
    });
  }
});
