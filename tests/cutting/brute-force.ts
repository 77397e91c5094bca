// A small cutting problem -> its least cost in cents by trying every way to share out the pieces: shares nothing with the planner.
import type { Order } from "../../src/cutting/cut-problem.ts";

export type SmallBoard = {
  readonly length: number;
  readonly width: number;
  readonly cost: number;
  readonly have?: number | undefined;
};
export type SmallPiece = { readonly length: number; readonly width: number };

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
    return boards.map((board) => orders.some((order) => holds(board, held, kerf, order)));
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

/** Whether one board holds these pieces: some sharing out into strips, each as wide as its widest piece. */
function holds(board: SmallBoard, pieces: readonly SmallPiece[], kerf: number, order: Order): boolean {
  const along = (p: SmallPiece): number => (order === "rip" ? p.length : p.width);
  const across = (p: SmallPiece): number => (order === "rip" ? p.width : p.length);
  const place = (i: number, strips: { used: number; size: number }[]): boolean => {
    const piece = pieces[i];
    const wide = strips.reduce((sum, { size }) => sum + size, 0) + kerf * Math.max(0, strips.length - 1);
    if (wide > across(board)) return false;
    if (piece === undefined) return true;
    for (const strip of strips) {
      const [used, size] = [strip.used, strip.size];
      if (used + kerf + along(piece) > along(board)) continue;
      strip.used = used + kerf + along(piece);
      strip.size = Math.max(size, across(piece));
      if (place(i + 1, strips)) return true;
      strip.used = used;
      strip.size = size;
    }
    if (along(piece) > along(board)) return false;
    strips.push({ used: along(piece), size: across(piece) });
    if (place(i + 1, strips)) return true;
    strips.pop();
    return false;
  };
  return place(0, []);
}
