// Mitred pieces: what a shared cut and a nest save, and least lengths by trying every order and every way to lie.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/cutting/check-plan.ts";
import { planCuts } from "../../src/cutting/plan-cuts.ts";
import { readCutProblem } from "../../src/cutting/read-problem.ts";
import { researchProblem, researchRows } from "./research-problem.ts";

type Ends = readonly [number, number];
type Small = { readonly length: number; readonly ends: Ends; readonly showFace: boolean };

function boardsFor(length: number, kerf: number, pieces: readonly Small[]): { boards: number; proven: boolean } {
  const { problem, faults } = readCutProblem({
    kerf,
    boards: [{ id: "b", length, width: 10, cost: "1.00" }],
    pieces: pieces.map((piece, i) => ({
      mark: `p${i}`,
      length: piece.length,
      width: 10,
      count: 1,
      showFace: piece.showFace,
      ends: piece.ends.map((mitre) => ({ mitre })),
    })),
  });
  if (problem === undefined) throw new Error(faults.join("; "));
  const plan = planCuts(problem);
  if (plan === undefined) throw new Error("the boards are too few");
  expect(checkPlan(problem, plan)).toEqual([]);
  return { boards: plan.boards.length, proven: plan.proven };
}

describe("mitred pieces on one board", () => {
  const braces = (ends: Ends, showFace = false): Small[] => [0, 1].map(() => ({ length: 60, ends, showFace }));

  it("two of 60 with parallel ends at 45 on a board 10 wide take 60 + 50 = 110, as the second begins 10 sooner", () => {
    expect(boardsFor(110, 0, braces([-45, 45]))).toEqual({ boards: 1, proven: true });
    expect(boardsFor(109.9, 0, braces([-45, 45]))).toEqual({ boards: 2, proven: true });
  });

  it("two trapezoids of 60 nest in 110 when one is turned half about, face still up", () => {
    expect(boardsFor(110, 0, braces([45, 45], true))).toEqual({ boards: 1, proven: true });
  });

  it("two braces that lean unlike ways nest when one is turned over: 110, or 60 + 60 = 120 with the face to show", () => {
    const pair = (showFace: boolean): Small[] => [
      ...braces([-45, 45], showFace).slice(1),
      ...braces([45, -45], showFace).slice(1),
    ];
    expect(boardsFor(110, 0, pair(false))).toEqual({ boards: 1, proven: true });
    expect(boardsFor(119.9, 0, pair(true))).toEqual({ boards: 2, proven: true });
    expect(boardsFor(120, 0, pair(true))).toEqual({ boards: 1, proven: true });
  });

  it("a kerf of 1 at 45 takes 1.414 along the board: 110 + 1.414", () => {
    expect(boardsFor(111.42, 1, braces([-45, 45]))).toEqual({ boards: 1, proven: true });
    expect(boardsFor(111.41, 1, braces([-45, 45]))).toEqual({ boards: 2, proven: true });
  });
});

/** The least length that holds all of them, in any order, each in every way it may lie. */
function leastLength(pieces: readonly Small[], kerf: number): number {
  const lean = (degrees: number): number => Math.tan((degrees * Math.PI) / 180) * 10;
  const visit = (left: readonly Small[], before: number | undefined): number => {
    if (left.length === 0) return Math.abs(before ?? 0) / 2;
    let least = Number.POSITIVE_INFINITY;
    left.forEach(({ length, ends, showFace }, i) => {
      const [a, b] = [-lean(ends[0]), lean(ends[1])];
      const lies: Ends[] = [
        [a, b],
        [b, a],
        ...(showFace
          ? []
          : ([
              [-a, -b],
              [-b, -a],
            ] as Ends[])),
      ];
      for (const [l, r] of lies) {
        const joint =
          before === undefined
            ? Math.abs(l) / 2
            : Math.abs(before - l) / 2 + kerf * Math.max(Math.hypot(1, before / 10), Math.hypot(1, l / 10));
        const middle = length - (Math.abs(a) + Math.abs(b)) / 2;
        least = Math.min(least, joint + middle + visit(left.toSpliced(i, 1), r));
      }
    });
    return least;
  };
  return visit(pieces, undefined);
}

describe("against brute force", () => {
  const one = fc.record({
    length: fc.integer({ min: 30, max: 60 }),
    ends: fc.tuple(fc.constantFrom(-30, 0, 15, 30, 45), fc.constantFrom(-30, 0, 15, 30, 45)),
    showFace: fc.boolean(),
  });

  it("250 sets of up to 4 pieces, two boards tried for each: the least length that holds them all gives one board, a hair less gives two", () => {
    fc.assert(
      fc.property(fc.array(one, { minLength: 2, maxLength: 4 }), fc.integer({ min: 0, max: 3 }), (pieces, kerf) => {
        const least = leastLength(pieces, kerf);
        expect(boardsFor(Number((least + 1e-4).toFixed(5)), kerf, pieces).boards).toBe(1);
        expect(boardsFor(Number((least - 1e-3).toFixed(5)), kerf, pieces).boards).toBeGreaterThan(1);
      }),
      { numRuns: 250, seed: 13 },
    );
  });
});

describe("shop problems with mitres", () => {
  it("cost no more than an earlier solver found, and are proven", () => {
    for (const row of researchRows("shop_mitre").slice(0, 5)) {
      const problem = researchProblem("shop_mitre", row);
      const plan = planCuts(problem);
      if (plan === undefined) throw new Error("the boards are too few");
      expect(checkPlan(problem, plan)).toEqual([]);
      expect([row.name, Math.round(plan.cost.valueOf() * 100), plan.proven]).toEqual([row.name, row.best, true]);
    }
  });
});
