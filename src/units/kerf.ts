// A board, a piece and the saw's kerf -> how many such pieces the board gives and what is left.
import type { Exact } from "./length.ts";

/** The most pieces with n lengths and n - 1 kerfs within the usable length. */
export const piecesPerBoard = (usable: Exact, length: Exact, kerf: Exact): number =>
  Math.max(0, usable.add(kerf).div(length.add(kerf)).floor().valueOf());

/** What is left after `count` pieces, each cut off with a kerf; 0 where the last cut has nothing to cut off. */
export function offcut(usable: Exact, length: Exact, count: number, kerf: Exact): Exact {
  const left = usable.sub(length.add(kerf).mul(count));
  return left.compare(0) > 0 ? left : kerf.mul(0);
}
