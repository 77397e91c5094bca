// Problems with everything in them at once: whatever plan there is, it holds when it is added up again.
import fc from "fast-check";
import { expect, it } from "vitest";
import { checkPlan } from "../../src/cutting/check-plan.ts";
import { planCuts } from "../../src/cutting/plan-cuts.ts";
import { readCutProblem } from "../../src/cutting/read-problem.ts";

const size = (min: number, max: number) => fc.integer({ min, max });
const angle = fc.constantFrom(0, 0, 0, -30, 30, 45).map((mitre) => ({ mitre }));
const boards = fc.array(
  fc.record(
    {
      length: size(20, 60),
      width: size(6, 14),
      cost: size(0, 900).map((cents) => (cents / 100).toFixed(2)),
      have: size(1, 3),
      knotty: fc.boolean(),
      bad: fc.array(
        fc.tuple(size(0, 15), size(1, 4)).map(([from, long]) => ({ from, to: from + long })),
        { maxLength: 2 },
      ),
    },
    { requiredKeys: ["length", "width", "cost"] },
  ),
  { minLength: 1, maxLength: 3 },
);
const pieces = fc.array(
  fc.record(
    {
      length: size(14, 22),
      width: fc.constantFrom(3, 4, 6),
      count: size(1, 2),
      clear: fc.boolean(),
      grain: fc.constantFrom("along", "any"),
      together: fc.constantFrom("x", "y"),
      showFace: fc.boolean(),
      ends: fc.tuple(angle, angle),
    },
    { requiredKeys: ["length", "width"] },
  ),
  { minLength: 1, maxLength: 5 },
);
const made = fc.record({
  kerf: size(0, 2),
  trim: size(0, 1),
  trimBothEnds: fc.boolean(),
  useful: size(1, 10),
  order: fc.constantFrom("rip", "crosscut", "either"),
  boards,
  pieces,
});

it("400 problems with mitres, knots, groups, quarter turns and trims: no plan has a fault", () => {
  let plans = 0;
  fc.assert(
    fc.property(made, (from) => {
      const { problem } = readCutProblem({
        ...from,
        boards: from.boards.map((each, i) => ({ ...each, id: `b${i}` })),
        pieces: from.pieces.map((each, i) => ({ ...each, mark: `p${i}` })),
      });
      const plan = problem && planCuts(problem);
      if (plan === undefined) return;
      plans++;
      expect(checkPlan(problem as NonNullable<typeof problem>, plan)).toEqual([]);
    }),
    { numRuns: 400, seed: 41 },
  );
  expect(plans).toBeGreaterThan(100);
});
