// A worked-out item and its yard's numbers of boards -> a problem for each board there are too few of to make one.
import type { Item } from "../item/item.ts";
import { type Problem, problem } from "../problems/problem.ts";
import type { Exact } from "../units/length.ts";
import type { Board } from "../yard/yard.ts";
import { missingBoards } from "./cutting-plan.ts";

/** At the board's place in the yard. Nothing is asked of boards whose number isn't said, nor of pieces that come from any board. */
export function findShortages({ title, pieces }: Item, kerf: Exact): Problem[] {
  const { tooFew, tooSmall } = missingBoards(pieces, kerf);
  const name = title.toLowerCase();
  return [
    ...tooSmall.map(({ board, kind }) =>
      problem("one-board-too-small", board.at, { title: name, board: board.name, kind }),
    ),
    ...tooFew.map((board) =>
      problem("too-few-boards", board.at, { title: name, board: board.name, there: thereOf(board) }),
    ),
  ];
}

const thereOf = ({ lengths, own = [] }: Board): string =>
  [
    ...lengths.map(({ length, most }) => `${most ?? "any number"} of ${length.toFraction(true)} in`),
    ...own.map(
      ({ length, width, count }) => `${count} of ${length.toFraction(true)} x ${width.toFraction(true)} in the shop`,
    ),
  ].join(", ");
