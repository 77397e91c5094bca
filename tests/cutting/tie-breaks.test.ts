// Of plans at one cost: fewest boards, then fewest settings of the saw, then the longest offcut; and a checker that lets nothing through.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/cutting/check-plan.ts";
import type { CutPlan, CutProblem, PlacedPiece } from "../../src/cutting/cut-problem.ts";
import { planCuts } from "../../src/cutting/plan-cuts.ts";
import { readCutProblem } from "../../src/cutting/read-problem.ts";
import { sawSettings } from "../../src/cutting/saw-settings.ts";
import { usefulOffcut } from "../../src/cutting/useful-offcut.ts";
import { exact } from "../../src/units/length.ts";
import { researchProblem, researchRows } from "./research-problem.ts";

function read(json: unknown): CutProblem {
  const { problem, faults } = readCutProblem(json);
  if (problem === undefined) throw new Error(faults.join("; "));
  return problem;
}
function planned(problem: CutProblem): CutPlan {
  const plan = planCuts(problem);
  if (plan === undefined) throw new Error("the boards are too few");
  expect(checkPlan(problem, plan)).toEqual([]);
  return plan;
}
const board = (id: string, length: number, width: number, cost: string) => ({ id, length, width, cost });
const piece = (mark: string, length: number, width: number, count: number) => ({ mark, length, width, count });
const lengths = [board("4 ft", 48, 3.5, "4.00"), board("8 ft", 96, 3.5, "8.00")];

describe("fewest boards at the least cost", () => {
  it("two of 46: one of 8 ft at 8.00, and 8.00 can't be less than one board", () => {
    expect(planned(read({ kerf: 0.125, boards: lengths, pieces: [piece("A", 46, 3.5, 2)] }))).toMatchObject({
      fewest: true,
      boards: [{ id: "8 ft" }],
    });
  });

  it("two of 48: with a kerf between them 96 1/8, so two of 4 ft at 8.00, and one of 8 ft is ruled out", () => {
    expect(planned(read({ kerf: 0.125, boards: lengths, pieces: [piece("A", 48, 3.5, 2)] }))).toMatchObject({
      fewest: true,
      boards: [{ id: "4 ft" }, { id: "4 ft" }],
    });
  });
});

describe("settings of the saw", () => {
  const wide = [board("b", 96, 5.5, "6.00")];
  it("a second board that could be ripped first is crosscut to the stop that the first one has: stops 50 and 40, fence 2 11/16", () => {
    const problem = read({ kerf: 0.125, boards: wide, pieces: [piece("A", 40, 5.5, 1), piece("B", 50, 2.6875, 3)] });
    const plan = planned(problem);
    expect(plan.boards.map(({ order }) => order)).toEqual(["crosscut", "crosscut"]);
    expect(plan.settings).toBe(3);
    expect(sawSettings(problem, plan.boards)).toEqual([
      { pass: 1, tool: "stop", size: 50, runs: 2 },
      { pass: 1, tool: "stop", size: 40, runs: 1 },
      { pass: 2, tool: "fence", size: 2.6875, runs: 2 },
    ]);
  });

  it("a mitre is one setting whichever way it leans: 45 at four ends, a stop at 20", () => {
    const ends = [{ mitre: 45 }, { mitre: 45 }];
    const problem = read({
      kerf: 0.125,
      boards: [board("b", 48, 1.5, "2.00")],
      pieces: [{ ...piece("A", 20, 1.5, 2), ends }],
    });
    expect(sawSettings(problem, planned(problem).boards)).toEqual([
      { pass: 3, tool: "stop", size: 20, runs: 2 },
      { pass: 3, tool: "mitre", size: 45, runs: 4 },
    ]);
  });

  it("a piece as long as its board needs no stop, one as wide no fence", () => {
    const problem = read({ kerf: 0.125, boards: wide, pieces: [piece("A", 96, 5.5, 1)] });
    expect(planned(problem).settings).toBe(0);
  });
});

describe("the longest useful offcut", () => {
  const pieces = [50, 30, 20, 16].map((length, i) => piece(`${i}`, length, 3.5, 1));
  it("50 + 30 + 16 fill a board of 96, so that 20 leaves 76", () => {
    const plan = planned(read({ kerf: 0, useful: 24, boards: [board("b", 96, 3.5, "6.00")], pieces }));
    expect([plan.boards.length, plan.offcut]).toEqual([2, 76]);
  });
  it("is not told where none is as long as asked, or nothing is asked", () => {
    const boards = [board("b", 60, 3.5, "6.00")];
    expect(planned(read({ useful: 55, boards, pieces })).offcut).toBe(undefined);
    expect(planned(read({ boards, pieces })).offcut).toBe(undefined);
  });
  it("changes neither money nor boards, asks no more settings, and is no shorter than without asking", () => {
    for (const set of ["shop_1d", "shop_rip"]) {
      for (const row of researchRows(set)
        .filter(({ items }) => items.length < 8)
        .slice(0, 6)) {
        const problem = researchProblem(set, row);
        const asked = { ...problem, useful: exact(1) };
        const [plain, plan] = [planned(problem), planned(asked)];
        expect([plan.cost.equals(plain.cost), plan.boards.length]).toEqual([true, plain.boards.length]);
        expect(plan.settings).toBeLessThanOrEqual(plain.settings);
        if (plan.settings === plain.settings)
          expect(plan.offcut ?? 0).toBeGreaterThanOrEqual(usefulOffcut(asked, plain.boards) ?? 0);
      }
    }
  });
});

describe("what never changes the wrong way, with clear pieces, groups and pieces that turn", () => {
  const size = (min: number, max: number) => fc.integer({ min, max });
  const one = fc.record({
    length: size(4, 14),
    width: size(2, 5),
    clear: fc.boolean(),
    grain: fc.constantFrom("along", "any"),
  });
  const made = fc.record({
    kerf: size(0, 1),
    boards: fc.array(fc.record({ length: size(16, 40), width: size(5, 9), cost: size(100, 900) }), {
      minLength: 1,
      maxLength: 2,
    }),
    pieces: fc.array(one, { minLength: 1, maxLength: 6 }),
    from: size(2, 14),
  });
  const problemOf = ({
    kerf,
    boards,
    pieces,
    from,
  }: {
    kerf: number;
    boards: { length: number; width: number; cost: number }[];
    pieces: object[];
    from: number;
  }): CutProblem =>
    read({
      kerf,
      boards: [
        ...boards.map(({ cost, ...each }, i) => ({ ...each, id: `b${i}`, cost: (cost / 100).toFixed(2) })),
        { id: "own", length: 30, width: 6, cost: "0.00", have: 1, bad: [{ from, to: from + 3 }] },
      ],
      pieces: pieces.map((each, i) => ({ ...each, mark: `p${i}` })),
    });
  const cost = (problem: CutProblem): number => planned(problem).cost.valueOf();

  it("150 problems: one more own board never costs more, one piece more never less, order and unit change nothing", () => {
    fc.assert(
      fc.property(made, (from) => {
        const problem = problemOf(from);
        const plan = planned(problem);
        if (!plan.proven) return;
        const now = plan.cost.valueOf();
        const [first, ...rest] = problem.pieces as [CutProblem["pieces"][number], ...CutProblem["pieces"][number][]];
        const twoOwn = problem.boards.map((each) => (each.id === "own" ? { ...each, have: 2 } : each));
        expect(planned({ ...problem, boards: twoOwn }).lowerBound.valueOf()).toBeLessThanOrEqual(now);
        expect(cost({ ...problem, pieces: [{ ...first, count: 2 }, ...rest] })).toBeGreaterThanOrEqual(now);
        const turned = { ...problem, boards: [...problem.boards].reverse(), pieces: [...problem.pieces].reverse() };
        expect(cost(turned)).toBe(now);
        const metric = exact("25.4");
        const scaled = {
          ...problem,
          kerf: problem.kerf.mul(metric),
          boards: problem.boards.map((each) => ({
            ...each,
            length: each.length.mul(metric),
            width: each.width.mul(metric),
            ...(each.bad
              ? { bad: each.bad.map(({ from: a, to: b }) => ({ from: a.mul(metric), to: b.mul(metric) })) }
              : {}),
          })),
          pieces: problem.pieces.map((each) => ({
            ...each,
            length: each.length.mul(metric),
            width: each.width.mul(metric),
          })),
        };
        expect(cost(scaled)).toBe(now);
      }),
      { numRuns: 150, seed: 31 },
    );
  });
});

describe("the checker", () => {
  const problem = read({
    kerf: 0.125,
    boards: [{ ...board("b", 96, 5.5, "6.00"), bad: [{ from: 90, to: 96 }] }],
    pieces: [
      { ...piece("A", 40, 2.6875, 4), clear: true },
      { ...piece("B", 20, 2.6875, 2), together: "pair", showFace: true, ends: [{ mitre: 45 }, { mitre: -45 }] },
    ],
  });
  const plan = planned(problem);
  const changed = (change: (piece: PlacedPiece, i: number) => PlacedPiece): CutPlan => ({
    ...plan,
    boards: plan.boards.map((each) => ({ ...each, pieces: each.pieces.map(change) })),
  });

  it("finds a piece before the board, off its edge, over a bad stretch, or turned over", () => {
    const seen = (change: (piece: PlacedPiece, i: number) => PlacedPiece): boolean =>
      checkPlan(problem, changed(change)).length > 0;
    expect(seen((each) => ({ ...each, at: each.at - 1 }))).toBe(true);
    expect(seen((each) => ({ ...each, across: each.across + 0.5 }))).toBe(true);
    expect(seen((each) => (each.mark === "A" ? { ...each, at: each.at + 12 } : each))).toBe(true);
    expect(seen((each) => (each.mark === "B" ? { ...each, flipped: true } : each))).toBe(true);
    expect(seen((each) => ({ ...each, quarter: true }))).toBe(true);
    expect(seen((each) => each)).toBe(false);
  });

  it("finds a piece too few, a cost that isn't the boards', a bound above it, a group torn apart", () => {
    const less = {
      ...plan,
      boards: plan.boards.map((each, i) => (i === 0 ? { ...each, pieces: each.pieces.slice(1) } : each)),
    };
    expect(checkPlan(problem, less)).toHaveLength(1);
    expect(checkPlan(problem, { ...plan, cost: exact(1), lowerBound: exact(1) })).toHaveLength(1);
    expect(checkPlan(problem, { ...plan, lowerBound: plan.cost.add(1) })).not.toEqual([]);
    const apart = plan.boards.flatMap((each) => each.pieces.map((one) => ({ ...each, pieces: [one] })));
    expect(checkPlan(problem, { ...plan, boards: apart }).join()).toContain('together in "pair" come from 2 boards');
  });

  it("finds a piece half a kerf too near the one before it: 40.0625 where 40 + 1/8 is the soonest", () => {
    const two = read({ kerf: 0.125, boards: [board("b", 96, 3.5, "6.00")], pieces: [piece("A", 40, 3.5, 2)] });
    const own = planned(two);
    const near = own.boards.map((each) => ({
      ...each,
      pieces: each.pieces.map((one, i) => (i === 1 ? { ...one, at: 40.0625 } : one)),
    }));
    expect(checkPlan(two, { ...own, boards: near })).toHaveLength(1);
  });

  it("finds nested ends a hair nearer than the kerf", () => {
    const nested = read({
      kerf: 0.125,
      boards: [board("b", 120, 10, "6.00")],
      pieces: [{ ...piece("A", 60, 10, 2), ends: [{ mitre: -45 }, { mitre: 45 }] }],
    });
    const own = planned(nested);
    expect(own.boards).toHaveLength(1);
    const nearer = own.boards.map((each) => ({
      ...each,
      pieces: each.pieces.map((one, i) => (i === 1 ? { ...one, at: one.at - 0.001 } : one)),
    }));
    expect(checkPlan(nested, { ...own, boards: nearer })).toHaveLength(1);
  });
});
