// Worked-out pieces -> for each kind of board the cutting problem that buys it, and its plan, added up again.
import { checkPlan } from "../cutting/check-plan.ts";
import type { CutBoard, CutPiece, CutPlan, CutProblem } from "../cutting/cut-problem.ts";
import { planCuts } from "../cutting/plan-cuts.ts";
import type { Piece } from "../item/item.ts";
import { compareLengths, type Exact, exact, isExact, type Length, zero } from "../units/length.ts";
import type { Board, OwnBoard } from "../yard/yard.ts";
import { isTwoWay, rippedFirst } from "./rip-first.ts";

/** What is sawn from boards under one mark of a problem: a piece, or each sort of board that a piece is glued up of. */
export type SawnPiece = {
  /** In the problem: "A", or "A 1", "A 2" for the boards of a piece that is glued up. */
  readonly mark: string;
  /** On the sheet: the piece's own where all that is sawn for it is alike. */
  readonly says: string;
  readonly board: Board;
  readonly count: number;
  readonly length: Length;
  readonly width: Length;
  /** Where it is planed: how thick it is then. */
  readonly planedTo?: Length;
  /** All that name the same come from one board. */
  readonly together?: string;
  /** Degrees off square left and right, positive where the upper edge is the longer one at that end; 0 where the blade leans too. */
  readonly mitres: readonly [number, number];
  /** Of both ends, without their hand: the blade's lean. */
  readonly bevels: readonly [number, number];
};

export type CuttingPlan = {
  readonly board: Board;
  readonly sawn: readonly SawnPiece[];
  readonly problem: CutProblem;
  readonly plan: CutPlan;
};

export type CuttingProblem = Omit<CuttingPlan, "plan">;

/** A size that came through an angle is planned to the next 1/256 in, finer than a saw cuts; what just fits a board still does. */
function sawnSize(size: Length, most: Exact): Exact {
  if (isExact(size)) return size;
  const next = exact(Math.ceil(size * 256 - 1e-4), 256);
  return next.compare(most) > 0 && compareLengths(size, most) <= 0 ? most : next;
}

/** Matched pieces of a batch stand apart, those of each thing under marks of their own: "A", "A of 2", "A of 3". */
export function sawnOf(piece: Piece): SawnPiece[] {
  const { matched, members, count } = piece;
  if (matched === undefined) return sawnAlike(piece);
  return Array.from({ length: count / members.length }, (_, i) =>
    sawnAlike({ ...piece, count: members.length }).map((sawn) => ({
      ...sawn,
      mark: i === 0 ? sawn.mark : `${sawn.mark} of ${i + 1}`,
      together: `${matched} ${i + 1}`,
    })),
  ).flat();
}

function sawnAlike(piece: Piece): SawnPiece[] {
  const { mark, count, board, length, width, thickness, planed, ends, blanks } = piece;
  if (blanks) {
    return blanks.map((blank, i) => ({
      mark: `${mark} ${i + 1}`,
      says: blanks.length === 1 ? mark : `${mark} ${i + 1}`,
      board: blank.board,
      count: count * blank.count,
      length: blank.length,
      width: blank.width,
      ...(blank.planed ? { planedTo: blank.thickness } : {}),
      mitres: [0, 0],
      bevels: [0, 0],
    }));
  }
  return [
    {
      ...{ mark, says: mark, board, count, length, width },
      ...(planed ? { planedTo: thickness } : {}),
      // Equal signs of an item's ends are parallel cuts; a problem's are positive where the upper edge is longer.
      mitres: [-ends[0].mitre || 0, ends[1].mitre],
      bevels: [Math.abs(ends[0].bevel), Math.abs(ends[1].bevel)],
    },
  ];
}

/** A slanted blade nests nothing: a bevelled piece takes its square blank. */
export const isBevelled = ({ bevels }: SawnPiece): boolean => bevels.some((bevel) => bevel !== 0);

const cutPiece = (sawn: SawnPiece): CutPiece => ({
  mark: sawn.mark,
  count: sawn.count,
  length: sawnSize(
    sawn.length,
    sawn.board.lengths.reduce((most, { usable }) => (usable.compare(most) > 0 ? usable : most), zero),
  ),
  width: sawnSize(sawn.width, sawn.board.width),
  ends: isBevelled(sawn) ? [0, 0] : sawn.mitres,
  showFace: sawn.board.showSides === 1,
  ...(sawn.together === undefined ? {} : { together: sawn.together }),
});

/**
 * Where boards come from. What a thing costs holds for the next one too: it is planned of boards that are bought, as many as are
 * wanted. What is fetched and sawn now counts on what lies in the shop, and on no more than the seller has.
 */
export type Source = "bought" | "in hand";

/** The id of a board in a problem: its length as bought in inches, or that it is the shop's own, with both its sizes. */
export const boardId = (length: Exact): string => length.toFraction();
export const ownBoardId = ({ length, width }: OwnBoard): string => `own ${length.toFraction()} x ${width.toFraction()}`;

const boardsFrom = ({ lengths, width, own = [] }: Board, source: Source): CutBoard[] => [
  ...lengths.map(({ length, usable, price, most }) => ({
    ...{ id: boardId(length), length: usable, width, cost: price },
    ...(source === "in hand" && most !== undefined ? { have: most } : {}),
  })),
  ...(source === "bought" ? [] : own).map((each) => ({
    ...{ id: ownBoardId(each), length: each.usable, width: each.width, cost: zero, have: each.count },
  })),
];

/** One problem for each kind of board, in the order of the pieces. */
export const cutProblems = (pieces: readonly Piece[], kerf: Exact, source: Source): readonly CuttingProblem[] =>
  cutProblemsOf(pieces.flatMap(sawnOf), kerf, source);

export function cutProblemsOf(all: readonly SawnPiece[], kerf: Exact, source: Source): readonly CuttingProblem[] {
  const boards = [...new Map(all.map(({ board }) => [board.name, board])).values()];
  return boards.map((board) => {
    const sawn = all.filter((each) => each.board.name === board.name);
    return {
      board,
      sawn,
      problem: {
        name: board.name,
        kerf,
        trim: exact(0),
        boards: boardsFrom(board, source),
        pieces: sawn.map(cutPiece),
        order: "either",
        effort: quickEffort,
      },
    };
  });
}

/**
 * Errors: pieces that no board holds, which the item stage refuses, and boards in hand that are too few, which findShortages tells,
 * are our bug; so is a plan that doesn't add up.
 */
export function planBoardsCheapest(pieces: readonly Piece[], kerf: Exact, source: Source): CuttingPlan[] {
  return cutProblems(pieces, kerf, source).map((asked) => {
    const { board, problem } = asked;
    const plan = plannedBefore(problem);
    if (plan === undefined) throw new Error(`no boards of ${board.name} hold the pieces`);
    return { ...asked, plan };
  });
}

/** Boards that the seller has too few of for all these pieces, and those of which no single one holds pieces that come from one. */
export function missingBoards(
  pieces: readonly Piece[],
  kerf: Exact,
): { readonly tooFew: readonly Board[]; readonly tooSmall: readonly { board: Board; kind: string }[] } {
  const asked = cutProblems(pieces, kerf, "in hand");
  const limited = asked.filter(({ problem }) =>
    problem.boards.some(({ have, cost }) => have !== undefined && !cost.equals(0)),
  );
  const tooSmall = cutProblems(pieces, kerf, "bought").flatMap(({ board, sawn, problem }) =>
    [...new Set(sawn.flatMap(({ together }) => together ?? []))].flatMap((together) => {
      const own = problem.pieces
        .filter((piece) => piece.together === together)
        .map(({ together: _, ...piece }) => piece);
      const holds = problem.boards.some(
        (each) => plannedBefore({ ...problem, pieces: own, boards: [{ ...each, have: 1 }] }) !== undefined,
      );
      return holds ? [] : [{ board, kind: together.replace(/ \d+$/, "") }];
    }),
  );
  if (tooSmall.length > 0) return { tooFew: [], tooSmall };
  return {
    tooFew: limited.filter(({ problem }) => plannedBefore(problem) === undefined).map(({ board }) => board),
    tooSmall,
  };
}

/** A tenth of the usual work proves nearly every plan of a shop's recipes. */
const quickEffort = 0.1;

/** Dollars and boards of quick plans of these problems, proven or not; undefined where boards don't suffice. */
export type Spent = { readonly cost: Exact; readonly boards: number };

export const roughlySpent = (problems: readonly CuttingProblem[]): Spent | undefined =>
  problems.reduce<Spent | undefined>(
    (sum, { problem }) => {
      const plan = sum && planCuts(problem);
      return plan && { cost: sum.cost.add(plan.cost), boards: sum.boards + plan.boards.length };
    },
    { cost: zero, boards: 0 },
  );

const known = new Map<string, CutPlan | undefined>();

/** Plans kept at most: what a shop's recipes ask for many times over, in several batches. */
const mostKnown = 2000;

/** The whole work budget is spent where a tenth of it proves nothing; a third where there are more pieces than this, as in a batch. */
const manyPieces = 60;

/** The plan of a problem, solved and added up once for as long as it is remembered; the oldest is let go first. */
function plannedBefore(problem: CutProblem): CutPlan | undefined {
  const key = JSON.stringify(problem, (_, value) =>
    typeof value === "object" && value !== null && "toFraction" in value ? (value as Exact).toFraction() : value,
  );
  if (known.has(key)) return known.get(key);
  const plan = ripFirstWhereAsCheap(problem);
  const faults = plan ? checkPlan(problem, plan) : [];
  if (faults.length > 0) throw new Error(`a cutting plan does not add up: ${faults.join("; ")}`);
  if (known.size >= mostKnown) known.delete(known.keys().next().value as string);
  known.set(key, plan);
  return plan;
}

/** A plan that is crosscut first only where that saves money: it takes more cuts, and short pieces are ripped. */
function ripFirstWhereAsCheap(problem: CutProblem): CutPlan | undefined {
  const quick = planCuts(problem);
  const count = problem.pieces.reduce((sum, piece) => sum + piece.count, 0);
  const plan = quick?.proven ? quick : planCuts({ ...problem, effort: count > manyPieces ? 0.3 : 1 });
  if (plan === undefined) return undefined;
  const boards = plan.boards.map((board) => rippedFirst(problem, board));
  if (boards.every((board) => board.order === "rip" || !isTwoWay(board))) return { ...plan, boards };
  const ripped = planCuts({ ...problem, order: "rip" });
  return ripped && ripped.cost.compare(plan.cost) <= 0 && ripped.boards.length <= boards.length
    ? { ...ripped, lowerBound: plan.lowerBound, proven: plan.proven }
    : { ...plan, boards };
}
