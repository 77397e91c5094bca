// A placed piece -> the square blank that it takes up on its board.
import type { CutPiece, CutProblem, PlacedPiece } from "./cut-problem.ts";

/** `from`, `across`: where it begins along the board and from its lower edge; `long`, `wide`: how far it reaches that way. */
export type Lying = {
  readonly piece: CutPiece;
  readonly from: number;
  readonly across: number;
  readonly long: number;
  readonly wide: number;
};

/** Errors: a mark that isn't among the problem's pieces. */
export function liesOn({ pieces }: CutProblem, placed: PlacedPiece): Lying {
  const piece = pieces.find((each) => each.mark === placed.mark);
  if (piece === undefined) throw new Error(`a plan has "${placed.mark}", which its problem has not`);
  const [length, width] = [piece.length.valueOf(), piece.width.valueOf()];
  const lean = (end: number): number => Math.tan((end * Math.PI) / 180) * width;
  const left = placed.turned ? lean(piece.ends[1]) : -lean(piece.ends[0]);
  const { across, quarter } = placed;
  // `at` is the lower edge's: an end whose upper edge is longer begins before it.
  const from = placed.at + Math.min(0, placed.flipped ? -left : left);
  return { piece, from, across, long: quarter ? width : length, wide: quarter ? length : width };
}
