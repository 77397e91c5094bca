// Planned boards -> the longest offcut that is as wide as its board and worth keeping.
import type { CutBoard, CutProblem, PlannedCuts } from "./cut-problem.ts";
import { liesOn } from "./lying.ts";

/** In the problem's unit; undefined where no offcut is as long as the problem's `useful`, or nothing is. */
export function usefulOffcut(problem: CutProblem, boards: readonly PlannedCuts[]): number | undefined {
  if (problem.useful === undefined) return undefined;
  const longest = Math.max(0, ...boards.map((board) => freeEnd(problem, board)));
  return longest >= Math.max(problem.useful.valueOf(), 1e-6) - 1e-9 ? longest : undefined;
}

/** What is left behind the last piece and its kerf, without the trim. */
function freeEnd(problem: CutProblem, { id, pieces }: PlannedCuts): number {
  const board = problem.boards.find((each) => each.id === id) as CutBoard;
  const ends = pieces.map((placed) => {
    const { from, long } = liesOn(problem, placed);
    return from + long;
  });
  return board.length.sub(problem.trim).sub(problem.kerf).valueOf() - Math.max(...ends);
}
