// Cheapest plans of all kinds of board -> boards as they lie on the saw: strips or lengths, the pieces of each, what is left.
import type { PlacedPiece, PlannedCuts } from "../cutting/cut-problem.ts";
import type { Piece } from "../item/item.ts";
import { compareLengths, type Exact, inches, type Length, minus, most, plus, zero } from "../units/length.ts";
import type { Board, BoardLength } from "../yard/yard.ts";
import {
  boardId,
  type CuttingPlan,
  isBevelled,
  ownBoardId,
  planBoardsCheapest,
  type SawnPiece,
  type Source,
} from "./cutting-plan.ts";

/** A piece on its board. Places are those of its square blank. */
export type PlannedPiece = {
  readonly mark: string;
  /** Over all along the board, and across it. */
  readonly length: Length;
  readonly width: Length;
  readonly planedTo?: Length;
  /** From the board's fresh end, and from its lower edge. */
  readonly at: Length;
  readonly across: Length;
  /** Degrees off square left and right as it lies, positive where the upper edge is the longer one at that end. */
  readonly mitres: readonly [number, number];
  /** The blade's lean at both ends. */
  readonly bevels: readonly [number, number];
  readonly turned: boolean;
  readonly flipped: boolean;
};

/** What the first cuts make of a board: a strip as long as the board, or a length as wide as it. */
export type PlannedStrip = {
  /** A strip's width, a length's length; and how far from the board's lower edge, or its fresh end, it begins. */
  readonly size: Length;
  readonly from: Length;
  /** False of one strip as wide as its board. */
  readonly parted: boolean;
  readonly pieces: readonly PlannedPiece[];
  /** Behind the last piece, after the saw cut that parts it: a strip's length, a length's width; 0 where the cut takes it all. */
  readonly left: Length;
};

export type PlannedBoard = {
  readonly number: number;
  readonly board: Board;
  /** What is bought; of a board or offcut that lies in the shop its own length, at no price and without a day. */
  readonly stock: BoardLength;
  readonly own: boolean;
  /** The board's own, or that of an offcut. */
  readonly width: Exact;
  /** Whether its first cuts run along it (strips) or across it (lengths). */
  readonly order: "rip" | "crosscut";
  readonly strips: readonly PlannedStrip[];
  /** Beside the last strip, or behind the last length, after its saw cut. */
  readonly left: Length;
  /** What is trimmed off the end first, saw cut included. */
  readonly endLoss: Length;
};

/** What all boards cost, and the least that any plan could cost: the same where it is proven. */
export type PlanProof = { readonly cost: Exact; readonly lowerBound: Exact; readonly proven: boolean };

/** Whole boards for all pieces at the least money, in the order of the pieces' boards, numbered from 1. */
export const planBoards = (pieces: readonly Piece[], kerf: Exact, source: Source = "bought"): PlannedBoard[] =>
  boardsAsTheyLie(planBoardsCheapest(pieces, kerf, source), kerf);

export const proofOf = (plans: readonly CuttingPlan[]): PlanProof => ({
  cost: plans.reduce((sum, { plan }) => sum.add(plan.cost), zero),
  lowerBound: plans.reduce((sum, { plan }) => sum.add(plan.lowerBound), zero),
  proven: plans.every(({ plan }) => plan.proven),
});

/** Of each kind what lies in the shop first, then long before short. */
export const boardsAsTheyLie = (plans: readonly CuttingPlan[], kerf: Exact): PlannedBoard[] =>
  plans
    .flatMap((each) =>
      each.plan.boards
        .map((cuts) => boardAsItLies(each, cuts, kerf))
        .sort((a, b) => Number(b.own) - Number(a.own) || b.stock.length.compare(a.stock.length)),
    )
    .map((planned, i) => ({ number: i + 1, ...planned }));

type Lying = { readonly placed: PlacedPiece; readonly sawn: SawnPiece };

function boardAsItLies(
  { board, sawn }: CuttingPlan,
  { id, order, pieces }: PlannedCuts,
  kerf: Exact,
): Omit<PlannedBoard, "number"> {
  const bought = board.lengths.find(({ length }) => boardId(length) === id);
  const own = board.own?.find((each) => ownBoardId(each) === id);
  const stock = bought ?? (own && { length: own.length, usable: own.usable, price: zero, priced: "" });
  if (!stock) throw new Error(`no ${board.name} is ${id} long`);
  const width = own?.width ?? board.width;
  const lying = pieces.map((placed): Lying => {
    const found = sawn.find(({ mark }) => mark === placed.mark);
    if (!found) throw new Error(`no piece has the mark ${placed.mark}`);
    return { placed, sawn: found };
  });
  // One row of pieces: ripped once while the board is long, whatever the plan calls it.
  const row = pieces.every(({ across }) => across === 0);
  const first = row ? "rip" : order;
  const groups = row ? [lying] : groupBy(lying, (one) => (first === "rip" ? one.placed.across : blankAt(one)));
  const [room, other] = first === "rip" ? [width, stock.usable] : [stock.usable, width];
  const strips: PlannedStrip[] = [];
  let from: Length = zero;
  for (const { size, group } of groups
    .map((group) => ({ group, size: sizeOf(group, first === "rip" ? "width" : "length") }))
    .sort((a, b) => compareLengths(a.size, b.size))) {
    const nested = first === "rip" && group.some(isMitred);
    const laid = nested ? nestedPieces(group, from) : piecesInTurn(group, first, from, kerf);
    const end = laid.reduce<Length>((sofar, piece) => most(sofar, endOf(piece, first)), zero);
    strips.push({
      ...{ size, from, pieces: laid },
      parted: first === "crosscut" || compareLengths(size, room) < 0,
      left: afterCut(minus(other, end), kerf),
    });
    from = plus(plus(from, size), kerf);
  }
  return {
    ...{ board, stock, own: bought === undefined, width, order: first, strips },
    left: afterCut(minus(room, minus(from, kerf)), kerf),
    endLoss: minus(stock.length, stock.usable),
  };
}

const isMitred = ({ sawn }: Lying): boolean => !isBevelled(sawn) && sawn.mitres.some((mitre) => mitre !== 0);

/** What is left behind the last of n, parted from it by an nth cut; 0 where nothing more than the cut is there. */
const afterCut = (left: Length, kerf: Exact): Length => most(minus(left, kerf), zero);

const sizeOf = (group: readonly Lying[], of: "length" | "width"): Length =>
  group.reduce<Length>((sofar, { sawn }) => most(sofar, sawn[of]), zero);

const endOf = ({ at, across, length, width }: PlannedPiece, order: PlannedBoard["order"]): Length =>
  order === "rip" ? plus(at, length) : plus(across, width);

/** Square blanks one after the other, the shortest (or narrowest) first, so that what stays in the hand is as long as can be. */
function piecesInTurn(
  group: readonly Lying[],
  order: PlannedBoard["order"],
  from: Length,
  kerf: Exact,
): PlannedPiece[] {
  const along = order === "rip" ? "length" : "width";
  let at: Length = zero;
  return [...group]
    .sort((a, b) => compareLengths(a.sawn[along], b.sawn[along]) || (a.sawn.mark < b.sawn.mark ? -1 : 1))
    .map((lying) => {
      const [start, across] = order === "rip" ? [at, from] : [from, at];
      at = plus(plus(at, lying.sawn[along]), kerf);
      return pieceAt(lying, start, across);
    });
}

/** Mitred pieces that nest keep the order and the places that they were planned in. */
const nestedPieces = (group: readonly Lying[], across: Length): PlannedPiece[] =>
  [...group]
    .map((lying) => pieceAt(lying, blankAt(lying), across))
    .sort((a, b) => compareLengths(plus(a.at, a.at), plus(b.at, b.at)));

/** Where the square blank begins: the lower edge begins further in where the upper one is the longer. */
function blankAt(lying: Lying): number {
  const [left] = isMitred(lying) ? mitresAsItLies(lying) : [0];
  return lying.placed.at - Math.max(0, Math.tan((left * Math.PI) / 180)) * inches(lying.sawn.width);
}

/** Half a turn changes the ends about and mirrors each; turning over mirrors both where they are. */
function mitresAsItLies({ placed: { turned, flipped }, sawn: { mitres } }: Lying): readonly [number, number] {
  const [left, right] = turned ? [mitres[1], mitres[0]] : mitres;
  return turned !== flipped ? [-left || 0, -right || 0] : [left, right];
}

const pieceAt = (lying: Lying, at: Length, across: Length): PlannedPiece => {
  const { says, length, width, planedTo, bevels } = lying.sawn;
  const { turned, flipped } = lying.placed;
  return {
    ...{ mark: says, length, width, at, across, turned, flipped },
    ...(planedTo === undefined ? {} : { planedTo }),
    mitres: mitresAsItLies(lying),
    bevels: turned ? [bevels[1], bevels[0]] : bevels,
  };
};

/** Things whose numbers are the same to a millionth. */
function groupBy<T>(things: readonly T[], numberOf: (thing: T) => number): T[][] {
  const groups = new Map<string, T[]>();
  for (const thing of things) {
    const key = numberOf(thing).toFixed(6);
    groups.set(key, [...(groups.get(key) ?? []), thing]);
  }
  return [...groups.values()];
}
