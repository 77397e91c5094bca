// A problem in exact lengths -> the same in whole numbers and in one order whatever the order of its lines.
import { type Exact, exact, zero } from "../units/length.ts";
import type { CutBoard, CutPiece, CutProblem, Order } from "./cut-problem.ts";
import { mayTurn, stretchesFor } from "./may-lie.ts";

/** One kind of board. Lengths in steps of the job's grid, cost in cents; `most`: how many there may be, Infinity for any. */
export type Stock = {
  readonly length: number;
  readonly width: number;
  readonly cost: number;
  readonly most: number;
  /** Where clear pieces may lie, of a board that isn't clear all along and has clear pieces to give. */
  readonly clear?: readonly (readonly [from: number, to: number])[];
  /** The boards of the problem that are alike, in the order they are given out. */
  readonly boards: readonly CutBoard[];
};

/** One kind of piece: all pieces alike in size, ends and boards. */
export type Kind = {
  readonly length: number;
  readonly width: number;
  readonly count: number;
  readonly ends: readonly [number, number];
  readonly showFace: boolean;
  /** May lie a quarter turn about. */
  readonly turns: boolean;
  /** Stays out of bad stretches. */
  readonly clear: boolean;
  /** Which stocks it may come from, by their place in the job. */
  readonly fits: readonly boolean[];
  readonly pieces: readonly CutPiece[];
};

export type Job = {
  readonly grid: Exact;
  /** What a cost of 1 is in money. */
  readonly coin: Exact;
  /** Where the first piece begins: behind the trim, if both ends lose it. */
  readonly start: Exact;
  readonly kerf: number;
  readonly orders: readonly Order[];
  readonly stocks: readonly Stock[];
  readonly kinds: readonly Kind[];
};

/** The longest grid step of which all lengths are whole multiples: greatest common divisor of fractions. */
function gridOf(lengths: readonly Exact[]): Exact {
  const step = lengths.reduce((a, b) => (a.equals(0) ? b : b.equals(0) ? a : a.gcd(b)), zero);
  return step.equals(0) ? exact(1) : step;
}

const groupBy = <T>(things: readonly T[], key: (thing: T) => string): T[][] => {
  const groups = new Map<string, T[]>();
  for (const thing of things) groups.set(key(thing), [...(groups.get(key(thing)) ?? []), thing]);
  return [...groups.values()];
};

/** Errors: none; a problem that was read without faults has a job. */
export function jobOf(problem: CutProblem): Job {
  const { boards, pieces, kerf, trim, trimBothEnds } = problem;
  const start = trimBothEnds ? trim : zero;
  const usable = (board: CutBoard): Exact => board.length.sub(trim).sub(start);
  const looked = boards.some(({ bad, knotty }) => knotty || (bad ?? []).length > 0);
  const isClear = (piece: CutPiece): boolean => looked && piece.clear === true;
  const stretchesOf = (board: CutBoard): readonly (readonly [Exact, Exact])[] | undefined => {
    const one = pieces.find(
      (piece) => isClear(piece) && (piece.boards === undefined || piece.boards.includes(board.id)),
    );
    if (one === undefined || board.knotty || (board.bad ?? []).length === 0) return undefined;
    return stretchesFor(one, board, problem).map(({ from, to }) => [from.sub(start), to.sub(start)]);
  };
  const grid = gridOf([
    kerf,
    ...boards.flatMap((board) => [usable(board), board.width, ...(stretchesOf(board) ?? []).flat()]),
    ...pieces.flatMap((piece) => [piece.length, piece.width]),
  ]);
  const whole = (length: Exact): number => length.div(grid).valueOf();
  const coin = gridOf(boards.map(({ cost }) => cost));

  const named = (board: CutBoard): string =>
    [...new Set(pieces.flatMap((piece) => piece.boards ?? []))].includes(board.id) ? board.id : "";
  const stocks = groupBy(boards, (board) =>
    [usable(board), board.width, board.cost]
      .map((each) => each.toFraction())
      .concat(named(board), board.knotty ? "knotty" : "", (stretchesOf(board) ?? [["whole"]]).join(" "))
      .join(" "),
  )
    .map((alike) => {
      const first = alike[0] as CutBoard;
      const most = alike.reduce((sum, board) => sum + (board.have ?? Number.POSITIVE_INFINITY), 0);
      const boards = [...alike].sort((a, b) => (a.id < b.id ? -1 : 1));
      const clear = stretchesOf(first);
      return {
        length: whole(usable(first)),
        width: whole(first.width),
        cost: first.cost.div(coin).valueOf(),
        most,
        boards,
        ...(clear ? { clear: clear.map(([from, to]) => [whole(from), whole(to)] as const) } : {}),
        name: `${named(first)} ${clear?.join(" ")}`,
      };
    })
    .filter(({ most, length }) => most > 0 && length > 0)
    .sort((a, b) => a.length - b.length || a.width - b.width || a.cost - b.cost || (a.name < b.name ? -1 : 1));

  const key = (piece: CutPiece): string =>
    [
      piece.length.toFraction(),
      piece.width.toFraction(),
      ...piece.ends,
      piece.showFace && piece.ends.some((end) => end !== 0),
      mayTurn(piece),
      isClear(piece),
      ...[...(piece.boards ?? [])].sort(),
    ].join(" ");
  const kinds = groupBy(pieces, key)
    .map((alike) => {
      const first = alike[0] as CutPiece;
      const [length, width] = [whole(first.length), whole(first.width)];
      const [turns, clear] = [mayTurn(first) && length !== width, isClear(first)];
      return {
        length,
        width,
        count: alike.reduce((sum, piece) => sum + piece.count, 0),
        ends: first.ends,
        showFace: first.showFace,
        turns,
        clear,
        fits: stocks.map((stock) => {
          if (first.boards && !stock.boards.some(({ id }) => first.boards?.includes(id))) return false;
          if (clear && stock.boards[0]?.knotty) return false;
          const longest =
            clear && stock.clear ? Math.max(0, ...stock.clear.map(([from, to]) => to - from)) : stock.length;
          return (length <= longest && width <= stock.width) || (turns && width <= longest && length <= stock.width);
        }),
        pieces: [...alike].sort((a, b) => (a.mark < b.mark ? -1 : 1)),
        key: key(first),
      };
    })
    .sort((a, b) => b.length - a.length || b.width - a.width || (a.key < b.key ? -1 : 1));

  return {
    ...{ grid, coin, start },
    kerf: whole(kerf),
    orders: problem.order === "either" ? ["rip", "crosscut"] : [problem.order],
    stocks: stocks.map(({ name: _, ...stock }) => stock),
    kinds: kinds.map(({ key: _, ...kind }) => kind),
  };
}
