// `shopleaf cut` from outside: a plan as JSON, every fault of a broken problem, and the exit codes.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { newFolder, shopleaf } from "../whole/demo.ts";

function cut(problem: unknown): ReturnType<typeof shopleaf> {
  const file = join(newFolder(), "problem.json");
  writeFileSync(file, typeof problem === "string" ? problem : JSON.stringify(problem));
  return shopleaf(["cut", file]);
}
const boards = [{ id: "2x4x8", length: 96, width: 3.5, cost: "4.10", have: 12 }];

describe("shopleaf cut", () => {
  it("six of 38 are two to a board of 96: 3 boards, 12.30, proven", () => {
    const { code, out } = cut({ kerf: 0.125, boards, pieces: [{ mark: "A", length: 38, width: 3.5, count: 6 }] });
    const plan = JSON.parse(out);
    expect([code, plan.cost, plan.lowerBound, plan.proven, plan.boards.length]).toEqual([0, "12.30", "12.30", true, 3]);
    expect(plan.boards[0].pieces[1]).toEqual({ mark: "A", at: 38.125, across: 0, turned: false, flipped: false });
  });

  it("tells every fault and exits 1", () => {
    const { code, out, err } = cut({ kerf: -1, boards, pieces: [{ mark: "A", length: 0, width: 3.5 }] });
    expect([code, out]).toEqual([1, ""]);
    expect(err).toContain("the kerf should be above 0, found -1");
    expect(err).toContain('piece "A": the length should be above 0, found 0');
  });

  it("tells what is no JSON, and where the boards are too few", () => {
    expect(cut("{").err).toContain("this is not JSON");
    const few = cut({ boards: [{ ...boards[0], have: 1 }], pieces: [{ mark: "A", length: 60, width: 3.5, count: 2 }] });
    expect([few.code, few.err]).toEqual([1, expect.stringContaining("these boards are too few for all the pieces")]);
  });

  it("without a file is a wrong call", () => expect(shopleaf(["cut"]).code).toBe(2));
});
