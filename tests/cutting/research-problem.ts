// A row of a research set -> a cutting problem as the handle `cut` takes it.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { CutProblem } from "../../src/cutting/cut-problem.ts";
import { readCutProblem } from "../../src/cutting/read-problem.ts";

type Item = {
  readonly n: number;
  readonly w?: number;
  readonly l?: number;
  readonly c?: number;
  readonly a?: number;
  readonly b?: number;
  readonly face?: boolean;
};
type Size = { readonly L: number; readonly W?: number; readonly cost: number };

export type ResearchRow = {
  readonly name: string;
  readonly capacity?: number;
  readonly stock?: readonly Size[];
  readonly boards?: readonly Size[];
  readonly stripWidth?: number;
  readonly kerf?: number;
  readonly items: readonly Item[];
  readonly best: number | null;
  readonly lb?: number;
  readonly ub?: number;
};

export const researchRows = (set: string): ResearchRow[] =>
  JSON.parse(readFileSync(join(import.meta.dirname, "../reference/cutting", `${set}.json`), "utf8"));

/** Costs are whole cents; one length costs a cent a board. Two-stage research sets are ripped first, shop problems either way. */
export function researchProblem(set: string, row: ResearchRow): CutProblem {
  const sizes = row.boards ?? row.stock ?? [{ L: row.capacity as number, cost: 1 }];
  const width = row.stripWidth ?? 1;
  const { problem, faults } = readCutProblem({
    name: row.name,
    kerf: row.kerf ?? 0,
    order: set.startsWith("two_") ? "rip" : "either",
    boards: sizes.map(({ L, W, cost }, i) => ({
      id: `board ${i + 1}`,
      length: L,
      width: W ?? width,
      cost: (cost / 100).toFixed(2),
    })),
    pieces: row.items.map((item, i) => ({ mark: `${i + 1}`, count: item.n, ...sizeOf(set, item, width) })),
  });
  if (problem === undefined) throw new Error(`${row.name}: ${faults.join("; ")}`);
  return problem;
}

function sizeOf(set: string, { w, l, c, a = 0, b = 0, face = false }: Item, width: number): Record<string, unknown> {
  if (c !== undefined) {
    const degrees = (lean: number): number => (Math.atan2(lean, width) * 180) / Math.PI;
    // Mid-line length and leans -> the square blank, and degrees positive where the upper edge is the longer one.
    return {
      length: c + (Math.abs(a) + Math.abs(b)) / 2,
      width,
      showFace: face,
      ends: [{ mitre: -degrees(a) }, { mitre: degrees(b) }],
    };
  }
  if (l !== undefined) return { length: l, width: w };
  if (w === undefined) throw new Error(`an item of ${set} has no size`);
  return { length: w, width };
}
