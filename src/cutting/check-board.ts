// One planned board -> everything that is wrong with how it is cut, from its pieces as polygons alone.
import type { CutBoard, CutPiece, CutProblem, PlacedPiece, PlannedCuts } from "./cut-problem.ts";

type Point = readonly [along: number, across: number];

/** A piece as it lies: the box around it, and its corners lower left, upper left, upper right, lower right. */
type Lying = {
  readonly mark: string;
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
  readonly corners: readonly [Point, Point, Point, Point];
};

const slack = 1e-6;

/** Faults in plain words. Positions may be off by 1e-6 of the problem's unit. */
export function checkBoard(problem: CutProblem, planned: PlannedCuts, board: CutBoard): string[] {
  const faults: string[] = [];
  const lying: Lying[] = [];
  const trim = problem.trim.valueOf();
  const [start, end] = [problem.trimBothEnds ? trim : 0, board.length.valueOf() - trim];
  for (const placed of planned.pieces) {
    const piece = problem.pieces.find(({ mark }) => mark === placed.mark);
    if (piece === undefined) continue;
    const it = `"${piece.mark}"`;
    if (piece.boards && !piece.boards.includes(board.id)) faults.push(`${it} may not come from it`);
    if (piece.showFace && placed.flipped) faults.push(`${it} is turned over, yet its face must show`);
    if (placed.quarter && (piece.grain !== "any" || piece.ends.some((degrees) => degrees !== 0))) {
      faults.push(`${it} lies a quarter turn about, yet its grain must run along`);
    }
    const lies = lieOf(piece, placed);
    const { from, to, low, high } = lies;
    if (from < start - slack || to > end + slack)
      faults.push(`${it} lies from ${from} to ${to}, not in ${start} to ${end}`);
    if (low < -slack || high > board.width.valueOf() + slack) faults.push(`${it} lies across ${low} to ${high}`);
    if (piece.clear && board.knotty) faults.push(`${it} must be clear, the board is knotty`);
    for (const bad of piece.clear ? (board.bad ?? []) : []) {
      if (from < bad.to.valueOf() - slack && to > bad.from.valueOf() + slack) {
        faults.push(`${it} must be clear, and lies from ${from} to ${to} over a bad stretch`);
      }
    }
    lying.push(lies);
  }
  return [...faults, ...checkCuts(planned, lying, problem.kerf.valueOf(), board.width.valueOf())];
}

/** The lower edge's left end is at `at`; half a turn changes the ends about, turning over mirrors both. */
function lieOf(piece: CutPiece, { mark, at, across, turned, flipped, quarter }: PlacedPiece): Lying {
  const [length, width] = [piece.length.valueOf(), piece.width.valueOf()];
  const [long, wide] = quarter ? [width, length] : [length, width];
  const lean = (degrees: number): number => Math.tan((degrees * Math.PI) / 180) * width;
  let [left, right] = [-lean(piece.ends[0]), lean(piece.ends[1])];
  if (turned) [left, right] = [right, left];
  if (flipped) [left, right] = [-left, -right];
  const from = at + Math.min(0, left);
  const to = from + long;
  const high = across + wide;
  const lowerRight = to - Math.max(0, right);
  const corners: Lying["corners"] = [
    [at, across],
    [at + left, high],
    [lowerRight + right, high],
    [lowerRight, across],
  ];
  return { mark, from, to, low: across, high, corners };
}

/** First cuts run through the whole board, second cuts through one strip: strips first, then the pieces of each. */
function checkCuts({ order }: PlannedCuts, lying: readonly Lying[], kerf: number, width: number): string[] {
  // Crosscut first and nothing side by side: the slanted ends are the first cuts.
  if (order === "rip" || lying.every(({ low }) => low < slack)) {
    const strips = stripsOf(lying, ({ low }) => low);
    return [
      ...apart(
        strips,
        ({ low }) => low,
        ({ high }) => high,
        kerf,
      ),
      ...strips.flatMap((strip, i) => {
        const next = strips[i + 1]?.[0];
        // Lengths that are crosscut first may all be square blanks before their ends are mitred.
        const room = order === "rip" ? (next ? next.low - kerf : width) : Number.POSITIVE_INFINITY;
        return sawnApart(strip, kerf, room);
      }),
    ];
  }
  const strips = stripsOf(lying, ({ from }) => from);
  const across = (strip: readonly Lying[]): string[] =>
    apart(
      [...strip].sort((a, b) => a.low - b.low).map((piece) => [piece]),
      ({ low }) => low,
      ({ high }) => high,
      kerf,
    );
  return [
    ...apart(
      strips,
      ({ from }) => from,
      ({ to }) => to,
      kerf,
    ),
    ...strips.flatMap(across),
  ];
}

/** Pieces that begin at the same place. */
function stripsOf(lying: readonly Lying[], start: (piece: Lying) => number): Lying[][] {
  const strips: Lying[][] = [];
  for (const piece of [...lying].sort((a, b) => start(a) - start(b) || a.from - b.from || a.low - b.low)) {
    const strip = strips.at(-1);
    if (strip && start(piece) - start(strip[0] as Lying) <= slack) strip.push(piece);
    else strips.push([piece]);
  }
  return strips;
}

/** Each begins a kerf behind the end of the one before. */
function apart(
  strips: readonly (readonly Lying[])[],
  start: (piece: Lying) => number,
  end: (piece: Lying) => number,
  kerf: number,
): string[] {
  return strips.flatMap((strip, i) => {
    const next = strips[i + 1]?.[0];
    const widest = Math.max(...strip.map(end));
    return next && start(next) < widest + kerf - slack
      ? [`"${next.mark}" starts at ${start(next)}, within ${widest} of "${strip[0]?.mark}" and a kerf`]
      : [];
  });
}

/**
 * The cut along an end runs on straight through the whole strip: all corners of the pieces beyond it lie a kerf or more from its line, at
 * right angles to it. A piece narrower than its strip may be sawn off square first. `room`: how far up the strip may reach.
 */
function sawnApart(strip: readonly Lying[], kerf: number, room: number): string[] {
  const middle = ({ from, to }: Lying): number => from + to;
  const high = Math.max(...strip.map((piece) => piece.high));
  const line = [...strip]
    .sort((a, b) => middle(a) - middle(b))
    .map((piece) => (piece.high > high - slack ? piece : { ...piece, corners: box(piece) }));
  return line.slice(1).flatMap((next, i) => {
    const [before, after] = [line.slice(0, i + 1), line.slice(i + 1)];
    const piece = line[i] as Lying;
    const [, , upperRight, lowerRight] = piece.corners;
    const [lowerLeft, upperLeft] = next.corners;
    const slanted = (below: Point, above: Point): boolean => Math.abs(above[0] - below[0]) > slack;
    const squareFirst =
      (piece.high < room - slack || !slanted(lowerRight, upperRight)) &&
      (next.high < room - slack || !slanted(lowerLeft, upperLeft));
    const end = Math.max(...before.map(({ to }) => to));
    if (squareFirst && Math.min(...after.map(({ from }) => from)) >= end + kerf - slack) return [];
    const clears = (others: readonly Lying[], from: Point, to: Point): boolean =>
      others.every(({ corners }) => corners.every((corner) => beside(corner, from, to) >= kerf - slack));
    return clears(after, lowerRight, upperRight) && clears(before, upperLeft, lowerLeft)
      ? []
      : [`"${next.mark}" has less than a kerf to "${piece.mark}"`];
  });
}

const box = ({ from, to, low, high }: Lying): Lying["corners"] => [
  [from, low],
  [from, high],
  [to, high],
  [to, low],
];

/** How far a point lies to the right of the line from one point to another. */
function beside([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  const [dx, dy] = [bx - ax, by - ay];
  return ((x - ax) * dy - (y - ay) * dx) / Math.hypot(dx, dy);
}
