// A piece and a board -> how the piece may lie and where along the board.
import { exact } from "../units/length.ts";
import type { CutBoard, CutPiece, CutProblem, Stretch } from "./cut-problem.ts";

/** Where along a board a piece may lie: between the trims, and clear of bad stretches where it must be. */
export function stretchesFor({ clear }: CutPiece, board: CutBoard, problem: CutProblem): Stretch[] {
  const { length, knotty, bad = [] } = board;
  const [from, to] = [problem.trimBothEnds ? problem.trim : exact(0), length.sub(problem.trim)];
  if (!clear) return [{ from, to }];
  if (knotty) return [];
  const stretches: Stretch[] = [];
  let at = from;
  for (const each of [...bad].sort((a, b) => a.from.compare(b.from))) {
    if (each.from.compare(at) > 0) stretches.push({ from: at, to: each.from.compare(to) < 0 ? each.from : to });
    if (each.to.compare(at) > 0) at = each.to;
    if (at.compare(to) >= 0) return stretches;
  }
  return [...stretches, { from: at, to }];
}

/** Square pieces whose grain doesn't matter may lie across. */
export const mayTurn = ({ grain, ends }: CutPiece): boolean => grain === "any" && ends.every((end) => end === 0);
