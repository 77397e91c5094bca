// A read cutting problem -> the faults that show only when boards, pieces and saw are seen together.
import { type Exact, exact } from "../units/length.ts";
import type { CutBoard, CutPiece, CutProblem } from "./cut-problem.ts";
import { mayTurn, stretchesFor } from "./may-lie.ts";
import type { Told } from "./read-fields.ts";

/** Told in the problem's own numbers. */
export function checkProblem(problem: CutProblem, told: Told): void {
  const { boards, pieces } = problem;
  twice(
    boards.map(({ id }) => id),
    "boards",
    told,
  );
  twice(
    pieces.map(({ mark }) => mark),
    "pieces",
    told,
  );
  for (const board of boards) checkBoard(problem, board, told);
  for (const piece of pieces) checkPiece(problem, piece, told);
  for (const group of new Set(pieces.flatMap(({ together }) => together ?? []))) checkGroup(problem, group, told);
}

function checkBoard({ boards, pieces, kerf, trim, trimBothEnds }: CutProblem, board: CutBoard, told: Told): void {
  const name = `board "${board.id}"`;
  // Sets of lengths alone, as research has them, say 1 for every width.
  const lengthsOnly = [...boards, ...pieces].every(({ width }) => width.equals(1));
  if (!lengthsOnly && kerf.compare(board.width) >= 0)
    told(`${name}: the kerf of ${size(kerf)} is as wide as the board, ${size(board.width)}`);
  else if (kerf.compare(board.length) >= 0)
    told(`${name}: the kerf of ${size(kerf)} is as long as the board, ${size(board.length)}`);
  if (trim.mul(trimBothEnds ? 2 : 1).compare(board.length) >= 0)
    told(`${name}: the trim of ${size(trim)} takes the whole length, ${size(board.length)}`);
  for (const { from, to } of board.bad ?? []) {
    if (to.compare(board.length) > 0)
      told(
        `${name}: its bad stretch from ${size(from)} to ${size(to)} ends behind the board, ${size(board.length)} long`,
      );
  }
}

function checkPiece(problem: CutProblem, piece: CutPiece, told: Told): void {
  const name = `piece "${piece.mark}"`;
  const { boards } = problem;
  const unknown = (piece.boards ?? []).filter((id) => !boards.some((board) => board.id === id));
  for (const id of unknown)
    told(`${name}: there is no board "${id}", only ${boards.map((b) => `"${b.id}"`).join(", ")}`);
  if (unknown.length > 0) return;
  const { length, width } = piece;
  const own = boards.filter(({ id, have }) => have !== 0 && (piece.boards === undefined || piece.boards.includes(id)));
  const clear = own.filter((board) => stretchesFor(piece, board, problem).length > 0);
  const lies = mayTurn(piece) ? [[length, width] as const, [width, length] as const] : [[length, width] as const];
  const long = (board: CutBoard, [along]: readonly [Exact, Exact]): boolean =>
    stretchesFor(piece, board, problem).some(({ from, to }) => along.compare(to.sub(from)) <= 0);
  const wide = (board: CutBoard, [, across]: readonly [Exact, Exact]): boolean => across.compare(board.width) <= 0;
  const some = (fits: (board: CutBoard, lie: readonly [Exact, Exact]) => boolean): boolean =>
    clear.some((board) => lies.some((lie) => fits(board, lie)));
  const what = piece.clear ? "clear stretch of a board" : "board";
  if (own.length === 0) told(`${name}: none of its boards is there`);
  else if (clear.length === 0) told(`${name}: it must be clear, and none of its boards is`);
  else if (!some(long)) {
    const lengths = clear.flatMap((board) => stretchesFor(piece, board, problem).map(({ from, to }) => to.sub(from)));
    const longest = lengths.reduce((most, each) => (each.compare(most) > 0 ? each : most), exact(0));
    told(`${name}: at ${size(length)} it is longer than every ${what}; the longest gives ${size(longest)}`);
  } else if (!some(wide)) {
    const widest = clear.reduce((most, board) => (board.width.compare(most) > 0 ? board.width : most), exact(0));
    told(`${name}: at ${size(width)} it is wider than every board; the widest is ${size(widest)}`);
  } else if (!some((board, lie) => long(board, lie) && wide(board, lie))) {
    told(`${name}: no board is both long and wide enough for ${size(length)} by ${size(width)}`);
  }
  if (longerEdgeMissing(piece))
    told(`${name}: its ends run past each other, ${size(width)} wide and ${size(length)} long`);
}

/** What no board can hold together, by area alone: the planner finds the rest. */
function checkGroup({ boards, pieces, trim, trimBothEnds }: CutProblem, group: string, told: Told): void {
  const area = pieces
    .filter(({ together, ends }) => together === group && ends.every((end) => end === 0))
    .reduce((sum, { length, width, count }) => sum.add(length.mul(width).mul(count)), exact(0));
  const holds = boards.some(
    ({ length, width, have }) =>
      have !== 0 &&
      length
        .sub(trim.mul(trimBothEnds ? 2 : 1))
        .mul(width)
        .compare(area) >= 0,
  );
  if (!holds) told(`the pieces together in "${group}": they are more than any board holds`);
}

/** Both edges must be there: neither end may take more off an edge than its whole length. */
function longerEdgeMissing({ ends, length, width }: CutPiece): boolean {
  if (ends.every((end) => end === 0)) return false;
  const cut = ends.map((end) => Math.tan((end * Math.PI) / 180) * width.valueOf());
  const upper = cut.reduce((sum, run) => sum + Math.max(0, -run), 0);
  const lower = cut.reduce((sum, run) => sum + Math.max(0, run), 0);
  return Math.max(upper, lower) >= length.valueOf();
}

function twice(names: readonly string[], what: string, told: Told): void {
  for (const name of new Set(names.filter((each, i) => names.indexOf(each) !== i))) {
    told(`there are two ${what} called "${name}"`);
  }
}

const size = (length: Exact): string => String(length.valueOf());
