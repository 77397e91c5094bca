// A worked-out item and its yard's numbers of boards -> a problem for each board there are too few of to make one.
import type { Item } from "../item/item.ts";
import { type Problem, problem } from "../problems/problem.ts";
import type { Exact } from "../units/length.ts";
import type { Board } from "../yard/yard.ts";
import { tooFewBoards } from "./cutting-plan.ts";

/** At the board's place in the yard. Nothing is asked of boards whose number isn't said. */
export const findShortages = ({ title, pieces }: Item, kerf: Exact): Problem[] =>
  tooFewBoards(pieces, kerf).map((board) =>
    problem("too-few-boards", board.at, { title: title.toLowerCase(), board: board.name, there: thereOf(board) }),
  );

const thereOf = ({ lengths, own = [] }: Board): string =>
  [
    ...lengths.map(({ length, most }) => `${most ?? "any number"} of ${length.toFraction(true)} in`),
    ...own.map(
      ({ length, width, count }) => `${count} of ${length.toFraction(true)} x ${width.toFraction(true)} in the shop`,
    ),
  ].join(", ");
