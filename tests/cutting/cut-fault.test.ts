// What is told of a cutting problem that makes no sense: the code cut-fault for each of its faults.
import { expect, test } from "vitest";
import { problem } from "../../src/problems/problem.ts";

test("says what is wrong in the problem, and to mend it there", () => {
  const told = problem(
    "cut-fault",
    { file: "p.json", line: 1, column: 1 },
    { fault: "the kerf is wider than a board" },
  );
  expect(told.says).toBe("In this cutting problem, the kerf is wider than a board.");
  expect(told.mend).toBe("Mend the problem there.");
});
