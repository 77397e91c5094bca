// Pieces -> whole boards with the strips ripped from each and the pieces crosscut from each strip: simple packing.
import type { Piece } from "../item/item.ts";
import { compareLengths, type Exact, inches, type Length, minus, most, zero } from "../units/length.ts";
import type { Board, BoardLength } from "../yard/yard.ts";
import { type Filled, lengthTaken, packFirstFit } from "./pack-strips.ts";

export type PlannedPiece = { readonly mark: string; readonly size: Length };

/** One strip the length of its board. `size` is its width; it is ripped unless it is as wide as the board. */
export type PlannedStrip = {
  readonly size: Length;
  readonly ripped: boolean;
  readonly planedTo?: Length;
  readonly pieces: readonly PlannedPiece[];
  /** Usable length behind the last piece, after the saw cut that parts it; 0 where the cut takes it all. */
  readonly leftLength: Length;
};

export type PlannedBoard = {
  readonly number: number;
  readonly board: Board;
  readonly stock: BoardLength;
  readonly strips: readonly PlannedStrip[];
  /** Width beside the last strip, after its saw cut. */
  readonly leftWidth: Length;
  /** What is trimmed off the end first, saw cut included. */
  readonly endLoss: Length;
};

type Strip = { readonly size: Length; readonly planedTo?: Length; readonly pieces: readonly PlannedPiece[] };

/**
 * Whole boards for all pieces, in the order of the pieces' boards, numbered from 1. Each kind of board is packed once for every length
 * that can be bought, then each board is swapped for the cheapest length that still holds it; the cheapest of these packings
 * stands (of equal ones that with fewer boards, then the shorter). It is a plan that works, not a proof that no better one exists.
 */
export function planBoards(all: readonly Piece[], kerf: Exact): PlannedBoard[] {
  const pieces = all.flatMap(sawnOf);
  const boards = [...new Map(pieces.map((piece) => [piece.board.name, piece.board])).values()];
  return boards
    .flatMap((board) =>
      planOneKind(
        board,
        pieces.filter((piece) => piece.board.name === board.name),
        kerf,
      ),
    )
    .map((planned, i) => ({ number: i + 1, ...planned }));
}

/** What is sawn from boards for a piece: the piece itself, or every board that it is glued up of, under the piece's mark. */
type Sawn = Pick<Piece, "mark" | "board" | "length" | "width" | "thickness" | "planed" | "count">;
const sawnOf = (piece: Piece): Sawn[] =>
  piece.blanks?.map((blank) => ({ ...blank, mark: piece.mark, count: blank.count * piece.count })) ?? [piece];

type Unnumbered = Omit<PlannedBoard, "number">;

function planOneKind(board: Board, pieces: readonly Sawn[], kerf: Exact): Unnumbered[] {
  const longest = pieces.reduce<Length>((sofar, piece) => most(sofar, piece.length), zero);
  const plans = board.lengths
    .filter((stock) => compareLengths(longest, stock.usable) <= 0)
    .map((stock) => planWithLength(board, pieces, stock, kerf));
  const [best] = plans.sort(
    (a, b) => priceOf(a).compare(priceOf(b)) || a.length - b.length || lengthOf(a) - lengthOf(b),
  );
  if (!best) throw new Error(`no board of ${board.name} is long enough for ${inches(longest)} in`);
  return best;
}

const priceOf = (boards: readonly Unnumbered[]): Exact => boards.reduce((sum, b) => sum.add(b.stock.price), zero);
const lengthOf = (boards: readonly Unnumbered[]): number =>
  boards.reduce((sum, b) => sum + b.stock.length.valueOf(), 0);

function planWithLength(board: Board, pieces: readonly Sawn[], stock: BoardLength, kerf: Exact): Unnumbered[] {
  const strips = stripKinds(pieces).flatMap((kind): Strip[] =>
    packFirstFit(wantedOf(kind.pieces), stock.usable, kerf).map(({ holds }) => ({
      size: kind.width,
      ...(kind.planedTo === undefined ? {} : { planedTo: kind.planedTo }),
      pieces: holds,
    })),
  );
  return packFirstFit(strips, board.width, kerf).map((filled) => {
    const shortest = cheapestThatHolds(board, filled, kerf);
    return {
      board,
      stock: shortest,
      strips: filled.holds.map((strip) => ({
        ...strip,
        ripped: compareLengths(strip.size, board.width) < 0,
        leftLength: afterCut(minus(shortest.usable, lengthTaken(strip.pieces, kerf)), kerf),
      })),
      leftWidth: afterCut(filled.left, kerf),
      endLoss: minus(shortest.length, shortest.usable),
    };
  });
}

/** What is left behind the last of n, parted from it by an nth cut; 0 where nothing more than the cut is there. */
const afterCut = (left: Length, kerf: Exact): Length => most(minus(left, kerf), zero);

const wantedOf = (pieces: readonly Sawn[]): PlannedPiece[] =>
  pieces.flatMap((piece) => Array.from({ length: piece.count }, () => ({ mark: piece.mark, size: piece.length })));

/** Pieces that can come out of one strip: of the same width and the same planed thickness. */
function stripKinds(pieces: readonly Sawn[]): { width: Length; planedTo?: Length; pieces: Sawn[] }[] {
  const kinds: { width: Length; planedTo?: Length; pieces: Sawn[] }[] = [];
  for (const piece of pieces) {
    const planedTo = piece.planed ? piece.thickness : undefined;
    const same = kinds.find(
      (kind) =>
        compareLengths(kind.width, piece.width) === 0 &&
        (planedTo === undefined || kind.planedTo === undefined
          ? kind.planedTo === planedTo
          : compareLengths(kind.planedTo, planedTo) === 0),
    );
    if (same) same.pieces.push(piece);
    else kinds.push({ width: piece.width, ...(planedTo === undefined ? {} : { planedTo }), pieces: [piece] });
  }
  return kinds;
}

function cheapestThatHolds(board: Board, filled: Filled<Strip>, kerf: Exact): BoardLength {
  const need = filled.holds.reduce<Length>((sofar, strip) => most(sofar, lengthTaken(strip.pieces, kerf)), zero);
  const [cheapest] = board.lengths
    .filter((stock) => compareLengths(need, stock.usable) <= 0)
    .sort((a, b) => a.price.compare(b.price) || a.length.compare(b.length));
  if (!cheapest) throw new Error(`no board of ${board.name} holds ${inches(need)} in`);
  return cheapest;
}
