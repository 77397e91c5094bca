// Broken cutting problems, each with what the maker is told: the cases stand in cases/*.json.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readCutProblem } from "../../src/cutting/read-problem.ts";

type Case = { readonly title: string; readonly change: Record<string, unknown>; readonly faults: readonly string[] };

const sound = {
  name: "shelf",
  kerf: 0.125,
  boards: [{ id: "2x4x8", length: 96, width: 3.5, cost: "4.10" }],
  pieces: [{ mark: "A", length: 38, width: 3.5, count: 6 }],
};
const folder = join(import.meta.dirname, "cases");

describe("a cutting problem", () => {
  it("without faults is read", () => expect(readCutProblem(sound).faults).toEqual([]));

  for (const file of readdirSync(folder)) {
    const cases = JSON.parse(readFileSync(join(folder, file), "utf8")) as Case[];
    for (const { title, change, faults } of cases) {
      it(title, () => expect(readCutProblem({ ...sound, ...change })).toEqual({ faults }));
    }
  }
});
