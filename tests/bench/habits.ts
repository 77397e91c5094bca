// A problem of lengths -> what three habits of the shop pay: each piece onto the first board that still holds it, longest first.
import type { CutBoard, CutProblem } from "../../src/cutting/cut-problem.ts";

/** In money. `shortened`: each board exchanged for the cheapest that still holds its pieces. `bestLength`: the best of the lengths tried alone. */
export type Habits = { readonly longest: number; readonly shortened: number; readonly bestLength: number };

export function habitsOf(problem: CutProblem): Habits {
  const kerf = problem.kerf.valueOf();
  const long = ({ length }: CutBoard): number => length.valueOf();
  const lengths = problem.pieces
    .flatMap(({ length, count }) => Array.from({ length: count }, () => length.valueOf()))
    .sort((a, b) => b - a);
  /** How much of each board is used. */
  const firstFit = (room: number): number[] | undefined => {
    const used: number[] = [];
    for (const length of lengths) {
      if (length > room) return undefined;
      const i = used.findIndex((each) => each + kerf + length <= room + 1e-9);
      if (i < 0) used.push(length);
      else used[i] = (used[i] as number) + kerf + length;
    }
    return used;
  };
  const longest = problem.boards.reduce((a, b) => (long(b) > long(a) ? b : a));
  const onLongest = firstFit(long(longest)) ?? [];
  const cheapest = (used: number): number =>
    Math.min(...problem.boards.filter((board) => long(board) >= used - 1e-9).map(({ cost }) => cost.valueOf()));
  const alone = problem.boards.flatMap((board) => {
    const used = firstFit(long(board));
    return used ? [used.length * board.cost.valueOf()] : [];
  });
  return {
    longest: onLongest.length * longest.cost.valueOf(),
    shortened: onLongest.reduce((sum, used) => sum + cheapest(used), 0),
    bestLength: Math.min(...alone),
  };
}
