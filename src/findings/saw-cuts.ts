// A board as it lies -> every cut of the saw that it takes, in the order of the work, each with its setting and its place.
import { compareLengths, type Exact, inches, type Length, minus, most, plus, zero } from "../units/length.ts";
import type { PlannedBoard, PlannedPiece, PlannedStrip } from "./board-plan.ts";

/** What the saw is set to: how far fence or stop stands from the blade, and its two angles in degrees. */
export type SawSetting = {
  readonly saw: "rip" | "crosscut";
  /** Absent of a cut that only makes a fresh end: there is nothing to measure from. */
  readonly size?: Length | undefined;
  /** Off square in the face, positive where the cut runs on along the board from its lower to its upper edge. */
  readonly mitre: number;
  /** The blade's lean, without its hand. */
  readonly bevel: number;
};

export type SawCut = SawSetting & {
  readonly board: number;
  /** Numbered from 1 on each board, in the order of the work. */
  readonly number: number;
  /** Numbers of the cuts of this board that must be done before it. */
  readonly after: readonly number[];
  /** The piece that it sets free or finishes; absent where it parts a strip or a length, or makes an end fresh. */
  readonly mark?: string;
  /** Both ends of its line, inches from the board's fresh end and lower edge, on the kept side of the blade. */
  readonly line: readonly [Point, Point];
  /** How long the longest part is that the hand may hold when the blade has run through. */
  readonly inHand: Length;
};

export type Point = readonly [Length, Length];

/** `stage`: 0 trims the end, 1 parts strips or lengths, 2 runs through one of them, 3 through one piece. */
type Staged = Omit<SawCut, "board" | "number" | "after"> & {
  readonly stage: 0 | 1 | 2 | 3;
  readonly strip?: PlannedStrip;
};

/** One cut for each end and each edge that the board doesn't have already; ends of neighbours that lean alike share one. */
export function sawCutsOf(planned: PlannedBoard, kerf: Exact): SawCut[] {
  const { width, stock, order, strips, endLoss } = planned;
  const trim: Staged[] =
    compareLengths(endLoss, zero) > 0
      ? [{ ...square("crosscut"), stage: 0, line: upright(zero, zero, width), inHand: stock.length }]
      : [];
  const cuts = [
    ...trim,
    ...strips.flatMap((strip) => partingCut(planned, strip, kerf)),
    ...strips.flatMap((strip) =>
      (order === "rip" ? cutsAlong(strip, stock.usable, kerf) : cutsAcross(strip, width)).map((cut) => ({
        ...cut,
        strip,
      })),
    ),
  ].sort((a, b) => a.stage - b.stage);
  return cuts.map(({ stage: _, strip, ...cut }, i): SawCut => {
    const after = cuts.flatMap((one, k) => (k < i && (one.stage < 2 || one.strip === strip) ? [k + 1] : []));
    return { ...cut, board: planned.number, number: i + 1, after };
  });
}

const square = (saw: SawSetting["saw"], size?: Length): SawSetting => ({
  ...{ saw, mitre: 0, bevel: 0 },
  ...(size === undefined ? {} : { size }),
});

const upright = (along: Length, low: Length, high: Length): SawCut["line"] => [
  [along, low],
  [along, high],
];
const level = (across: Length, left: Length, right: Length): SawCut["line"] => [
  [left, across],
  [right, across],
];

/** None where the strip, or length, ends with the board itself. */
function partingCut({ width, stock, order }: PlannedBoard, strip: PlannedStrip, kerf: Exact): Staged[] {
  const room = order === "rip" ? width : stock.usable;
  const end = plus(strip.from, strip.size);
  if (!strip.parted || compareLengths(end, room) === 0) return [];
  const setting = square(order, strip.size);
  return order === "rip"
    ? [{ ...setting, stage: 1, line: level(end, zero, stock.usable), inHand: stock.usable }]
    : [{ ...setting, stage: 1, line: upright(end, zero, width), inHand: longer(strip.size, room, end, kerf) }];
}

/** The piece set free, or what stays behind it. */
const longer = (size: Length, room: Length, end: Length, kerf: Exact): Length =>
  most(size, minus(minus(room, end), kerf));

/**
 * From the blade to the stop, along the edge at the fence: over all, or where both ends lean alike the length that both edges
 * have, tan of the angle times the width less than over all.
 */
export function stopOf({ length, width, mitres: [left, right], bevels }: PlannedPiece): Length {
  const isParallel = left !== 0 && Math.abs(left + right) < 1e-6 && bevels.every((bevel) => bevel === 0);
  return isParallel ? inches(length) - Math.tan((Math.abs(left) * Math.PI) / 180) * inches(width) : length;
}

/**
 * A strip is crosscut from its fresh end; pieces narrower than it are then ripped one by one. The last is cut at the stop too,
 * even where the plan leaves nothing behind it: boards are seldom to the hair as long as they are called.
 */
function cutsAlong({ pieces, size }: PlannedStrip, usable: Length, kerf: Exact): Staged[] {
  const cuts = pieces.flatMap((piece, i): Staged[] => {
    const before = pieces[i - 1];
    const fresh = before ? !sharesCut(before, piece, kerf) : !isSquare(piece, 0);
    const end = plus(piece.at, piece.length);
    return [
      ...(fresh ? [{ ...endCut(piece, 0), stage: 2 as const, inHand: minus(usable, piece.at) }] : []),
      {
        ...endCut(piece, 1),
        ...{ size: stopOf(piece), stage: 2 as const, mark: piece.mark },
        inHand: longer(piece.length, usable, end, kerf),
      },
    ];
  });
  const narrower = pieces.filter((piece) => compareLengths(piece.width, size) < 0);
  return [...cuts, ...narrower.map((piece) => ripOf(piece, 3))];
}

/** A length is ripped from its lower edge; pieces shorter than it are then crosscut, and ends that lean are sawn. */
function cutsAcross({ pieces, size }: PlannedStrip, width: Length): Staged[] {
  const rips = pieces.filter((piece) => compareLengths(plus(piece.across, piece.width), width) !== 0);
  return [
    ...rips.map((piece) => ripOf({ ...piece, length: size }, 2)),
    ...pieces.flatMap((piece) => [
      ...(isSquare(piece, 0) ? [] : [{ ...endCut(piece, 0), stage: 3 as const, inHand: size }]),
      ...(isSquare(piece, 1) && compareLengths(piece.length, size) === 0
        ? []
        : [{ ...endCut(piece, 1), size: stopOf(piece), stage: 3 as const, mark: piece.mark, inHand: piece.length }]),
    ]),
  ];
}

const ripOf = ({ at, across, length, width, mark }: PlannedPiece, stage: 2 | 3): Staged => ({
  ...square("rip", width),
  ...{ stage, mark, line: level(plus(across, width), at, plus(at, length)), inHand: length },
});

const isSquare = ({ mitres, bevels }: PlannedPiece, end: 0 | 1): boolean => mitres[end] === 0 && bevels[end] === 0;

/** Slanted pieces are planned to 1/256 in: what stands apart by less than two of these more than a kerf is one cut. */
const planned = 1 / 100;

/** Whether one cut ends a piece and begins the next: the blade upright, both ends alike and a kerf apart. */
function sharesCut(one: PlannedPiece, next: PlannedPiece, kerf: Exact): boolean {
  if (one.bevels[1] !== 0 || next.bevels[0] !== 0) return false;
  const [a, b] = [endLine(one, 1), endLine(next, 0)];
  const apart = ([left]: Point, [right]: Point): number => inches(minus(right, left));
  const slanted = inches(kerf) / Math.cos((one.mitres[1] * Math.PI) / 180);
  return [0, 1].every((i) => Math.abs(apart(a[i] as Point, b[i] as Point) - slanted) < planned);
}

const endCut = (piece: PlannedPiece, end: 0 | 1): SawSetting & Pick<SawCut, "line"> => ({
  saw: "crosscut",
  mitre: (end === 0 ? -piece.mitres[0] : piece.mitres[1]) || 0,
  bevel: piece.bevels[end],
  line: endLine(piece, end),
});

/** Where an end's face meets the board's: at the blank's end on the longer edge, further in on the other. */
function endLine({ at, across: low, length, width, mitres }: PlannedPiece, end: 0 | 1): SawCut["line"] {
  const mitre = mitres[end];
  const high = plus(low, width);
  const outer = end === 0 ? at : plus(at, length);
  if (mitre === 0) return upright(outer, low, high);
  const run = Math.tan((Math.abs(mitre) * Math.PI) / 180) * inches(width);
  const inner = end === 0 ? plus(outer, run) : minus(outer, run);
  return mitre > 0
    ? [
        [inner, low],
        [outer, high],
      ]
    : [
        [outer, low],
        [inner, high],
      ];
}
