// A cutting problem with pieces that must come from one board -> its plan: one way of filling that board at a time, then all the rest.
import { type Exact, zero } from "../units/length.ts";
import type { CutBoard, CutPiece, CutPlan, CutProblem, PlacedPiece, PlannedCuts } from "./cut-problem.ts";
import { mayTurn } from "./may-lie.ts";

/** A plan before its settings and its offcut are told. */
export type Planned = Omit<CutPlan, "settings" | "offcut">;
type Plan = (problem: CutProblem) => Planned | undefined;

/** Parts of the work budget for the plans that are only compared. */
const lessEffort = 0.25;

/** `plan` plans a problem whose pieces all go as they like. Undefined where the boards don't suffice, as far as could be told. */
export function planTogether(problem: CutProblem, plan: Plan): Planned | undefined {
  const groups = groupsOf(problem);
  if (groups.length === 0) return plan(problem);
  if (inLineOnly(problem)) return planInLine(problem, groups, plan);
  const loose = plan(apart(problem));
  if (loose === undefined || groups.every((group) => isTogether(loose, group))) return loose;
  const kept = planGroups(problem, groups, plan);
  if (kept === undefined) return undefined;
  const cost = costOf(problem, kept);
  const proven = loose.lowerBound.compare(cost) >= 0;
  return { cost, lowerBound: proven ? cost : loose.lowerBound, proven, fewest: false, boards: kept };
}

/** Groups of two pieces or more. */
const groupsOf = ({ pieces }: CutProblem): CutPiece[][] =>
  [...new Set(pieces.flatMap(({ together }) => together ?? []))]
    .sort()
    .map((name) => pieces.filter(({ together }) => together === name))
    .filter((group) => group.length > 1 || (group[0]?.count ?? 0) > 1);

const apart = (problem: CutProblem): CutProblem => ({
  ...problem,
  pieces: problem.pieces.map(({ together: _, ...piece }) => piece),
});

function isTogether({ boards }: Planned, group: readonly CutPiece[]): boolean {
  const marks = new Set(group.map(({ mark }) => mark));
  return boards.filter(({ pieces }) => pieces.some(({ mark }) => marks.has(mark))).length <= 1;
}

const costOf = ({ boards }: CutProblem, planned: readonly PlannedCuts[]): Exact =>
  planned.reduce((sum, { id }) => sum.add((boards.find((board) => board.id === id) as CutBoard).cost), zero);

/** Square pieces of which no two go side by side on any board, and all wood clear. */
const inLineOnly = ({ boards, pieces, kerf }: CutProblem): boolean =>
  pieces.every((piece) => piece.ends.every((end) => end === 0) && !mayTurn(piece)) &&
  boards.every(
    (board) =>
      (board.bad ?? []).length === 0 &&
      pieces.every(({ width }) => width.compare(board.width) > 0 || width.mul(2).add(kerf).compare(board.width) > 0),
  );

/** A group in line is one long piece with kerfs in it: nothing is lost by leaving its pieces beside each other. */
function planInLine(problem: CutProblem, groups: readonly CutPiece[][], plan: Plan): Planned | undefined {
  const whole = groups.map((group, i): CutPiece => {
    const count = group.reduce((sum, piece) => sum + piece.count, 0);
    const ids = problem.boards
      .map(({ id }) => id)
      .filter((id) => group.every(({ boards }) => boards?.includes(id) ?? true));
    return {
      mark: `${i} ${group.map(({ mark }) => mark).join(" ")}`,
      length: group.reduce((sum, piece) => sum.add(piece.length.mul(piece.count)), problem.kerf.mul(count - 1)),
      width: group.reduce((most, { width }) => (width.compare(most) > 0 ? width : most), zero),
      count: 1,
      ends: [0, 0],
      showFace: false,
      boards: ids,
      clear: group.some(({ clear }) => clear === true),
    };
  });
  const grouped = new Set(groups.flat());
  const planned = plan({ ...problem, pieces: [...problem.pieces.filter((piece) => !grouped.has(piece)), ...whole] });
  if (planned === undefined) return undefined;
  const boards = planned.boards.map((board) => ({
    ...board,
    pieces: board.pieces.flatMap((placed) => {
      const i = whole.findIndex(({ mark }) => mark === placed.mark);
      return i < 0 ? [placed] : inTurn(problem, groups[i] as CutPiece[], placed);
    }),
  }));
  return { ...planned, boards };
}

function inTurn({ kerf }: CutProblem, group: readonly CutPiece[], placed: PlacedPiece): PlacedPiece[] {
  let at = placed.at;
  return group.flatMap(({ mark, length, count }) =>
    Array.from({ length: count }, () => {
      const piece = { ...placed, mark, at };
      at += length.add(kerf).valueOf();
      return piece;
    }),
  );
}

/** One group after the other gets the board that leaves the least to pay for all pieces that are left. */
function planGroups(problem: CutProblem, groups: readonly CutPiece[][], plan: Plan): PlannedCuts[] | undefined {
  const kept: PlannedCuts[] = [];
  let left = problem;
  for (const group of groups) {
    let best: { readonly board: PlannedCuts; readonly cost: Exact; readonly rest: CutProblem } | undefined;
    for (const board of left.boards.filter(({ have }) => have !== 0)) {
      for (const board1 of boardsWith(left, group, board, plan)) {
        const rest = without(left, board1);
        const after =
          rest.pieces.length === 0 ? [] : plan({ ...apart(rest), effort: problem.effort * lessEffort })?.boards;
        if (after === undefined) continue;
        const cost = costOf(problem, [board1, ...after]);
        if (best === undefined || cost.compare(best.cost) < 0) best = { board: board1, cost, rest };
      }
    }
    if (best === undefined) return undefined;
    kept.push(best.board);
    left = best.rest;
  }
  const rest = left.pieces.length === 0 ? [] : plan(apart(left))?.boards;
  return rest && [...kept, ...rest];
}

/** This board with the group alone, and with as much else as goes onto it. */
function boardsWith(problem: CutProblem, group: readonly CutPiece[], board: CutBoard, plan: Plan): PlannedCuts[] {
  if (group.some(({ boards }) => boards && !boards.includes(board.id))) return [];
  const names = new Set(group.map(({ together }) => together));
  const one = (pieces: readonly CutPiece[]): PlannedCuts | undefined => {
    const tried = { ...problem, boards: [{ ...board, have: 1 }], pieces: pieces.map((each) => ({ ...each })) };
    const found = plan({ ...apart(tried), effort: problem.effort * lessEffort });
    return found?.boards[0];
  };
  const alone = one(group);
  if (alone === undefined) return [];
  // Other groups get boards of their own.
  const others = problem.pieces
    .filter((piece) => !names.has(piece.together) && piece.together === undefined)
    .filter(({ boards }) => boards === undefined || boards.includes(board.id))
    .sort((a, b) => b.length.mul(b.width).compare(a.length.mul(a.width)) || (a.mark < b.mark ? -1 : 1));
  const found = [alone];
  let filled = [...group];
  for (const other of others) {
    for (let count = 1; count <= other.count; count++) {
      const more = [...filled.filter((piece) => piece.mark !== other.mark), { ...other, count }];
      if (area(more).compare(board.length.mul(board.width)) > 0) break;
      const planned = one(more);
      if (planned === undefined) break;
      filled = more;
      found.push(planned);
    }
  }
  const last = found.at(-1) as PlannedCuts;
  return last === alone ? [alone] : [alone, last];
}

const area = (pieces: readonly CutPiece[]): Exact =>
  pieces.reduce((sum, { length, width, count, ends }) => {
    return ends.every((end) => end === 0) ? sum.add(length.mul(width).mul(count)) : sum;
  }, zero);

/** What is still wanted and there when this board is cut. */
function without(problem: CutProblem, { id, pieces: cut }: PlannedCuts): CutProblem {
  const pieces = problem.pieces
    .map((piece) => ({ ...piece, count: piece.count - cut.filter(({ mark }) => mark === piece.mark).length }))
    .filter(({ count }) => count > 0);
  const boards = problem.boards.map((board) =>
    board.id === id && board.have !== undefined ? { ...board, have: board.have - 1 } : board,
  );
  return { ...problem, boards: boards.filter(({ have }) => have !== 0), pieces };
}
