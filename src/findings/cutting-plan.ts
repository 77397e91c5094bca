// Worked-out pieces -> for each kind of board the cutting problem that buys it, and its plan.
import type { CutPiece, CutPlan, CutProblem } from "../cutting/cut-problem.ts";
import { planCuts } from "../cutting/plan-cuts.ts";
import type { Piece } from "../item/item.ts";
import { type Exact, exact, inches, isExact, type Length } from "../units/length.ts";
import type { Board } from "../yard/yard.ts";

export type CuttingPlan = { readonly board: Board; readonly problem: CutProblem; readonly plan: CutPlan };

/** A length that came through an angle is sawn to the next 1/10000 in. */
const sawn = (length: Length): Exact =>
  isExact(length) ? length : exact(Math.ceil(inches(length) * 1e4 - 1e-6), 10_000);

/** What is sawn from boards: a piece, or each blank of a piece that is glued up, called "A 1", "A 2" after its piece. */
type Sawn = Omit<CutPiece, "showFace"> & { readonly board: Board };

function sawnOf({ mark, count, board, length, width, ends, blanks }: Piece): Sawn[] {
  if (blanks) {
    return blanks.map((blank, i) => ({
      mark: `${mark} ${i + 1}`,
      count: count * blank.count,
      board: blank.board,
      length: sawn(blank.length),
      width: sawn(blank.width),
      ends: [0, 0],
    }));
  }
  // A slanted blade nests nothing: a bevelled piece takes its square blank. Equal signs of an item's ends are parallel cuts; a
  // problem's are positive where the upper edge is longer.
  const square = ends.some(({ bevel }) => bevel !== 0);
  const mitres = square ? ([0, 0] as const) : ([-ends[0].mitre || 0, ends[1].mitre] as const);
  return [{ mark, count, board, length: sawn(length), width: sawn(width), ends: mitres }];
}

/** One problem for each kind of board, in the order of the pieces. */
export function cutProblems(
  pieces: readonly Piece[],
  kerf: Exact,
): { readonly board: Board; readonly problem: CutProblem }[] {
  const all = pieces.flatMap(sawnOf);
  const boards = [...new Map(all.map(({ board }) => [board.name, board])).values()];
  return boards.map((board) => ({
    board,
    problem: {
      name: board.name,
      kerf,
      trim: exact(0),
      boards: board.lengths.map(({ length, usable, price }) => ({
        id: length.toFraction(),
        length: usable,
        width: board.width,
        cost: price,
      })),
      pieces: all
        .filter((each) => each.board.name === board.name)
        .map(({ board: from, ...each }) => ({ ...each, showFace: from.showSides === 1 })),
      order: "either",
      effort: 1,
    },
  }));
}

/** Errors: pieces that no board holds, which the item stage refuses, are our bug. */
export function planBoardsCheapest(pieces: readonly Piece[], kerf: Exact): CuttingPlan[] {
  return cutProblems(pieces, kerf).map(({ board, problem }) => {
    const plan = planCuts(problem);
    if (plan === undefined) throw new Error(`no boards of ${board.name} hold the pieces`);
    return { board, problem, plan };
  });
}
