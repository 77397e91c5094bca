// Boards as they lie -> what is left over of each that is worth keeping, and the pieces of other things that it would give.
import type { Piece } from "../item/item.ts";
import { compareLengths, inches, type Length, minus } from "../units/length.ts";
import type { Saws } from "../yard/saws.ts";
import type { Board } from "../yard/yard.ts";
import type { PlannedBoard } from "./board-plan.ts";
import { leavings } from "./leavings.ts";

export type Offcut = {
  readonly number: number;
  readonly board: Board;
  readonly length: Length;
  readonly width: Length;
};

/** Longest first. */
export const offcutsOf = (plan: readonly PlannedBoard[], { keep }: Pick<Saws, "keep">): Offcut[] =>
  plan
    .flatMap((planned) =>
      leavings(planned).map(({ from, to }) => ({
        ...{ number: planned.number, board: planned.board },
        length: minus(to[0], from[0]),
        width: minus(to[1], from[1]),
      })),
    )
    .filter(({ length, width }) => compareLengths(length, keep.length) >= 0 && compareLengths(width, keep.width) >= 0)
    .sort((a, b) => compareLengths(b.length, a.length) || compareLengths(b.width, a.width) || a.number - b.number);

/** How many of a piece, one after the other or side by side, an offcut of its board gives; 0 of another board. */
export function givesOf({ board, length, width }: Offcut, piece: Piece, kerf: Length): number {
  if (piece.blanks || piece.board.name !== board.name) return 0;
  const along = (room: Length, size: Length): number =>
    Math.max(0, Math.floor((inches(room) + inches(kerf) + 1e-9) / (inches(size) + inches(kerf))));
  return along(length, piece.length) * along(width, piece.width);
}
