// A small cutting problem -> its least cost in cents by trying every way to share out the pieces: shares nothing with the planner.
import type { Order } from "../../src/cutting/cut-problem.ts";

export type SmallBoard = {
  readonly length: number;
  readonly width: number;
  readonly cost: number;
  readonly have?: number | undefined;
  readonly bad?: readonly (readonly [number, number])[];
};
export type SmallPiece = {
  readonly length: number;
  readonly width: number;
  /** May lie a quarter turn about. */
  readonly turns?: boolean;
  readonly clear?: boolean;
  readonly group?: string | undefined;
  /** Degrees off square, positive where the upper edge is the longer one. */
  readonly ends?: readonly [number, number];
  readonly showFace?: boolean;
};

/** Undefined where the boards can't hold the pieces. Sizes and kerf are whole; every piece is one of its own. */
export function leastCost(
  boards: readonly SmallBoard[],
  pieces: readonly SmallPiece[],
  kerf: number,
  orders: readonly Order[],
): number | undefined {
  const all = 2 ** pieces.length - 1;
  /** For each set of pieces the boards that hold it together. */
  const holders = Array.from({ length: all + 1 }, (_, set) => {
    const held = pieces.filter((_, i) => (set >> i) & 1);
    const rest = pieces.filter((_, i) => !((set >> i) & 1));
    const torn = held.some(({ group }) => group !== undefined && rest.some((other) => other.group === group));
    return boards.map((board) => !torn && orders.some((order) => holds(board, held, kerf, order)));
  });
  const known = new Map<string, number>();
  const visit = (left: number, used: readonly number[]): number => {
    if (left === 0) return 0;
    const key = `${left}:${used.join()}`;
    const seen = known.get(key);
    if (seen !== undefined) return seen;
    const first = left & -left;
    let best = Number.POSITIVE_INFINITY;
    for (let set = left; set > 0; set = (set - 1) & left) {
      if ((set & first) === 0) continue;
      boards.forEach(({ cost, have }, i) => {
        if (!holders[set]?.[i] || (used[i] as number) >= (have ?? Number.POSITIVE_INFINITY)) return;
        // Only limited boards are counted.
        const next = have === undefined ? used : used.map((n, k) => (k === i ? n + 1 : n));
        best = Math.min(best, cost + visit(left & ~set, next));
      });
    }
    known.set(key, best);
    return best;
  };
  const cost = visit(
    all,
    boards.map(() => 0),
  );
  return cost === Number.POSITIVE_INFINITY ? undefined : cost;
}

type Lie = { readonly piece: SmallPiece; readonly along: number; readonly across: number };

/** Whether one board holds these pieces: some sharing out into strips, each as wide as its widest piece. */
function holds(board: SmallBoard, pieces: readonly SmallPiece[], kerf: number, order: Order): boolean {
  const lies = ({ length, width, ...more }: SmallPiece): Lie[] => {
    const upright = { piece: { length, width, ...more }, along: length, across: width };
    const both = more.turns ? [upright, { ...upright, along: width, across: length }] : [upright];
    return order === "rip" ? both : both.map((lie) => ({ ...lie, along: lie.across, across: lie.along }));
  };
  const [run, room] = order === "rip" ? [board.length, board.width] : [board.width, board.length];
  const place = (i: number, strips: readonly (readonly Lie[])[]): boolean => {
    const sizes = strips.map((strip) => Math.max(...strip.map(({ across }) => across)));
    if (sizes.reduce((sum, size) => sum + size + kerf, -kerf) > room) return false;
    if (!strips.every((strip, s) => stripHolds(board, strip, sizes[s] as number, run, kerf, order))) return false;
    const piece = pieces[i];
    if (piece === undefined) return order === "rip" || sectionsHold(board, strips, kerf);
    return lies(piece).some(
      (lie) =>
        strips.some((strip, s) => place(i + 1, strips.with(s, [...strip, lie]))) || place(i + 1, [...strips, [lie]]),
    );
  };
  return place(0, []);
}

/** Some order of the pieces, each lying in some way, that is no longer than the run. */
function stripHolds(
  board: SmallBoard,
  strip: readonly Lie[],
  size: number,
  run: number,
  kerf: number,
  order: Order,
): boolean {
  const rip = order === "rip";
  if (!rip || (strip.every(({ piece }) => !piece.ends) && !board.bad)) {
    return strip.reduce((sum, { along }) => sum + along + kerf, -kerf) <= run;
  }
  const nests = (lie: Lie): boolean =>
    lie.piece.ends !== undefined && lie.across === size && lie.along === lie.piece.length;
  const visit = (left: readonly Lie[], end: number, lean: number | undefined): boolean =>
    left.length === 0
      ? end + Math.abs(lean ?? 0) / 2 <= run + 1e-7
      : left.some((lie, i) => {
          const leans = nests(lie) ? leansOf(lie.piece, size) : [[0, 0] as const];
          const middle = lie.along - (Math.abs(leans[0]?.[0] ?? 0) + Math.abs(leans[0]?.[1] ?? 0)) / 2;
          return leans.some(([l, r]) => {
            const joint =
              lean === undefined
                ? Math.abs(l) / 2
                : Math.abs(lean - l) / 2 + kerf * Math.max(Math.hypot(1, lean / size), Math.hypot(1, l / size));
            const at = soonest(board, lie, end + joint);
            return at !== undefined && at + middle <= run + 1e-7 && visit(left.toSpliced(i, 1), at + middle, r);
          });
        });
  return visit(strip, 0, undefined);
}

/** The first place for a piece at or behind this one, clear of bad stretches where it must be. */
function soonest({ bad = [], length }: SmallBoard, { piece, along }: Lie, from: number): number | undefined {
  if (!piece.clear) return from;
  const starts = [from, ...bad.map(([, to]) => to)].filter((at) => at >= from).sort((a, b) => a - b);
  return starts.find((at) => at + along <= length && bad.every(([b, e]) => at + along <= b || at >= e));
}

/** Crosscut first: some order of the lengths in which clear pieces find clear wood. */
function sectionsHold(board: SmallBoard, sections: readonly (readonly Lie[])[], kerf: number): boolean {
  if (!board.bad) return true;
  const visit = (left: readonly (readonly Lie[])[], end: number): boolean =>
    left.length === 0 ||
    left.some((section, i) => {
      const size = Math.max(...section.map(({ across }) => across));
      const clear = section.filter(({ piece }) => piece.clear).map(({ across }) => across);
      const longest = Math.max(0, ...clear);
      const any = { piece: { length: 0, width: 0, clear: clear.length > 0 }, along: longest, across: 0 };
      const at = soonest(board, any, end);
      return at !== undefined && at + size <= board.length && visit(left.toSpliced(i, 1), at + size + kerf);
    });
  return visit(sections, 0);
}

/** Both ends' leans in every way the piece may lie. */
function leansOf({ ends, showFace }: SmallPiece, width: number): (readonly [number, number])[] {
  const [a, b] = (ends ?? [0, 0]).map((degrees, i) => Math.tan((degrees * Math.PI) / 180) * width * (i === 0 ? -1 : 1));
  const [l, r] = [a as number, b as number];
  const up = [[l, r] as const, [r, l] as const];
  return showFace ? up : [...up, [-l, -r] as const, [-r, -l] as const];
}
