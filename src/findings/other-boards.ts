// A recipe, its item and the yard -> the same thing out of other lengths and other boards: what they would cost, what changes.
import type { Item, Piece } from "../item/item.ts";
import type { PlacedMember } from "../item/placed.ts";
import { placeMembers } from "../item/places/place-members.ts";
import { recipeFor } from "../recipe/choices-recipe-for.ts";
import { variantsOf } from "../recipe/choices-variants.ts";
import type { PieceKind, Recipe } from "../recipe/recipe.ts";
import { compareLengths, type Exact, exact, type Length, minus, most, zero } from "../units/length.ts";
import type { Board, BoardLength, Yard } from "../yard/yard.ts";
import { cutProblemsOf, roughlySpent, type SawnPiece, type Spent, sawnOf } from "./cutting-plan.ts";

/** All pieces of one board out of boards of this length alone. `fits`: whether the shop's vehicle takes it. */
export type OtherLength = {
  readonly board: Board;
  readonly stock: BoardLength;
  readonly fits: boolean;
  readonly spent: Spent;
};

/** Lengths that are too short for some piece, or sold as the only one, are left out. */
export function otherLengths({ pieces }: Item, kerf: Exact): OtherLength[] {
  const all = pieces.flatMap(sawnOf);
  return boardsIn(all).flatMap((board) => {
    const own = all.filter((sawn) => sawn.board.name === board.name);
    const lengths = [...board.lengths, ...(board.tooLong ?? [])];
    if (lengths.length < 2) return [];
    return lengths.flatMap((stock): OtherLength[] => {
      const only = own.map((sawn) => ({ ...sawn, board: { ...board, lengths: [stock] } }));
      const spent = longestOf(only, stock.usable) ? roughlySpent(cutProblemsOf(only, kerf, "bought")) : undefined;
      return spent ? [{ board, stock, fits: board.lengths.includes(stock), spent }] : [];
    });
  });
}

/** Another board instead of one that the recipe names. */
export type OtherBoard = {
  readonly from: Board;
  readonly to: Board;
  /** Of all pieces that were of the one board. */
  readonly spent: Spent;
  /** Marks of pieces that were as wide as their board and are ripped to that width now. */
  readonly ripped: readonly string[];
  /** How much more the overall width, depth and height are; all 0 where the boards are as thick. */
  readonly grows: readonly [Length, Length, Length];
};

/** Boards thinner or thicker by more than this make another thing of it (inches). */
const mostThicker = exact(1, 4);
/** So many are told of each board, the cheapest. */
const mostTold = 6;

/** Boards that take every piece and make a thing without a problem, as wide as it was: cheapest first for each board. */
export function otherBoards(recipe: Recipe, item: Item, yard: Yard, kerf: Exact): OtherBoard[] {
  const all = item.pieces.flatMap(sawnOf);
  return boardsIn(all).flatMap((from) => {
    const own = all.filter((sawn) => sawn.board.name === from.name);
    const widest = own.reduce<Length>((sofar, { width }) => most(sofar, width), zero);
    return yard.boards
      .filter((to) => to.name !== from.name && to.treatment === from.treatment && compareLengths(widest, to.width) <= 0)
      .filter((to) => to.thickness.sub(from.thickness).abs().compare(mostThicker) <= 0)
      .flatMap((to) => instead(recipe, item, yard, kerf, own, from, to))
      .sort((a, b) => a.spent.cost.compare(b.spent.cost))
      .slice(0, mostTold);
  });
}

const boardsIn = (all: readonly SawnPiece[]): Board[] => [
  ...new Map(all.map(({ board }) => [board.name, board])).values(),
];

const longestOf = (all: readonly SawnPiece[], room: Length): boolean =>
  all.every(({ length }) => compareLengths(length, room) <= 0);

function instead(
  recipe: Recipe,
  item: Item,
  yard: Yard,
  kerf: Exact,
  own: readonly SawnPiece[],
  from: Board,
  to: Board,
): OtherBoard[] {
  const alike = to.thickness.equals(from.thickness);
  const placed = alike ? undefined : placedWith(recipe, yard, from, to);
  if (!alike && !placed) return [];
  const kinds = recipe.pieces.filter(({ board }) => board.text === from.name).map(({ name }) => name.text);
  const sawn = placed
    ? sawnFrom(
        placed.members.filter(({ pieceKind }) => kinds.includes(pieceKind)),
        to,
      )
    : own.map((one) => ({ ...one, board: to }));
  const longest = to.lengths.reduce<Length>((sofar, { usable }) => most(sofar, usable), zero);
  const spent = longestOf(sawn, longest) ? roughlySpent(cutProblemsOf(sawn, kerf, "bought")) : undefined;
  if (!spent) return [];
  const wider = to.width.compare(from.width) > 0;
  const whole = item.pieces.filter((piece) => isWhole(piece, from));
  const grows = (["width", "depth", "height"] as const).map((side) =>
    placed ? minus(placed.overall[side], item.overall[side]) : zero,
  ) as [Length, Length, Length];
  return [{ from, to, spent, ripped: wider ? whole.map(({ mark }) => mark) : [], grows }];
}

const isWhole = (piece: Piece, board: Board): boolean =>
  piece.board.name === board.name && !piece.ripped && piece.blanks === undefined;

/** Only of square work, whose members are what is sawn; pieces stay as wide as they were. */
function placedWith(recipe: Recipe, yard: Yard, from: Board, to: Board) {
  const [standard] = variantsOf(recipe);
  const other = {
    ...recipe,
    pieces: recipe.pieces.map((piece): PieceKind => {
      if (piece.board.text !== from.name) return piece;
      const { at } = piece;
      const ripped = piece.ripped ?? { kind: "length", at, value: from.width, bare: true };
      return { ...piece, board: { ...piece.board, text: to.name }, ripped };
    }),
  };
  const { placing, problems } = placeMembers(standard ? recipeFor(other, standard) : other, yard);
  if (!placing || problems.length > 0) return undefined;
  const isSquare = placing.members.every(({ slant, outline, blanks }) => !slant && !outline && !blanks);
  return isSquare ? placing : undefined;
}

const sawnFrom = (members: readonly PlacedMember[], board: Board): SawnPiece[] =>
  members.map(({ id, length, width }) => ({
    ...{ mark: id, says: id, board, count: 1, length, width },
    mitres: [0, 0],
    bevels: [0, 0],
  }));
