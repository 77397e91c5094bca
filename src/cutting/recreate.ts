// A plan -> a cheaper one: some boards are taken out of it and their pieces laid again, piece by piece, many times over.
import type { Order } from "./cut-problem.ts";
import { type Fill, fillOf, type Laid, type Strip } from "./fill.ts";
import type { Incumbent } from "./incumbent.ts";
import type { Job, Kind, Stock } from "./job.ts";
import { isMitred } from "./mitre-line.ts";
import type { Used } from "./plan.ts";

/** A kind as it may lie on a board that is sawn in an order. */
type Side = { readonly kind: number; readonly along: number; readonly across: number; readonly quarter: boolean };

/** Boards of one stock sawn in one order: run along a strip, room for strips across. */
type Way = {
  readonly stock: number;
  readonly order: Order;
  readonly cost: number;
  readonly run: number;
  readonly room: number;
  readonly sides: readonly (readonly Side[])[];
};

type Open = { readonly size: number; used: number; readonly sides: Side[] };
type Board = { readonly way: Way; readonly strips: readonly Open[]; readonly counts: Int32Array };

/**
 * Keeps what betters the incumbent, and offers it every new filling. Slanted pieces are laid as square blanks, and only where boards are
 * crosscut first; clear ones on boards without bad stretches. `rounds` of taking out and laying again; the same numbers are drawn every time.
 */
export function recreate(job: Job, incumbent: Incumbent, rounds: number): void {
  const ways = waysOf(job);
  const draw = numbers();
  const areas = job.kinds.map(({ length, width }) => (length + job.kerf) * (width + job.kerf));
  const dear = Math.max(1, ...ways.map(({ cost }) => cost));
  const left = job.stocks.map(({ most }) => most);

  /** One board after the other, each the one that takes the most worth for its cost. */
  const lay = (want: Int32Array, noise: number, favour: number, limit: number): Board[] | undefined => {
    const boards: Board[] = [];
    const rank = areas.map((area) => area * (1 + noise * (draw() - 0.5)));
    const byRank = areas.map((_, kind) => kind).sort((a, b) => (rank[b] as number) - (rank[a] as number) || a - b);
    const worth = areas.map(
      (area, kind) => ((area / (areas[byRank[0] as number] as number)) ** favour * (rank[kind] as number)) / area,
    );
    const wanted = want.slice();
    let pieces = wanted.reduce((sum, count) => sum + count, 0);
    let spent = 0;
    while (pieces > 0) {
      let best: Board | undefined;
      let most = -1;
      for (const way of ways) {
        if ((left[way.stock] as number) < 1) continue;
        const board = fillOne(way, byRank, wanted, job.kerf);
        let [gain, held] = [0, 0];
        board.counts.forEach((count, kind) => {
          gain += count * (worth[kind] as number);
          held += count;
        });
        if (held === 0) continue;
        // What takes all the rest is the last board: only its cost counts.
        const rate =
          held === pieces
            ? 1e6 * (dear / (way.cost + 1e-3))
            : (gain / (way.cost + 1e-3 * dear)) * (1 + noise * 0.2 * (draw() - 0.5));
        if (rate > most) [best, most] = [board, rate];
      }
      if (best === undefined) break;
      boards.push(best);
      spent += best.way.cost;
      left[best.way.stock] = (left[best.way.stock] as number) - 1;
      best.counts.forEach((count, kind) => {
        wanted[kind] = (wanted[kind] as number) - count;
        pieces -= count;
      });
      if (spent > limit) break;
    }
    if (pieces === 0 && spent <= limit) return boards;
    giveBack(boards);
    return undefined;
  };
  const giveBack = (boards: readonly Board[]): void => {
    for (const { way } of boards) left[way.stock] = (left[way.stock] as number) + 1;
  };
  const costOf = (boards: readonly Board[]): number => boards.reduce((sum, { way }) => sum + way.cost, 0);
  const keep = (boards: readonly Board[]): void => incumbent.keep(boards.map(usedOf));

  const all = Int32Array.from(job.kinds, ({ count }) => count);
  let current: Board[] | undefined;
  for (const favour of [1, 1.1, 1.25, 0.95]) {
    for (const noise of [0, 0.3]) {
      const boards = lay(all, noise, favour, Number.POSITIVE_INFINITY);
      if (boards === undefined) continue;
      keep(boards);
      giveBack(boards);
      if (current === undefined || costOf(boards) < costOf(current)) current = boards;
    }
  }
  if (current === undefined) return;
  for (const { way } of current) left[way.stock] = (left[way.stock] as number) - 1;
  for (let round = 0; round < rounds && !incumbent.closed; round++) {
    const count = Math.min(current.length, 1 + Math.floor(draw() * Math.min(5, current.length)));
    const out = new Set<number>();
    while (out.size < count) out.add(Math.floor(draw() * current.length));
    const taken = current.filter((_, i) => out.has(i));
    const want = new Int32Array(all.length);
    for (const { counts } of taken)
      counts.forEach((n, kind) => {
        want[kind] = (want[kind] as number) + n;
      });
    giveBack(taken);
    // Equal cost is taken too: another sharing of the same pieces is where the next gain comes from.
    const laid = lay(want, draw(), 0.9 + 0.4 * draw(), costOf(taken));
    if (laid === undefined) {
      for (const { way } of taken) left[way.stock] = (left[way.stock] as number) - 1;
      continue;
    }
    const gains = costOf(laid) < costOf(taken);
    current = [...current.filter((_, i) => !out.has(i)), ...laid];
    incumbent.offer(laid.map((board) => usedOf(board).fill));
    if (gains) keep(current);
  }
}

function waysOf(job: Job): Way[] {
  return job.stocks.flatMap((stock, i) =>
    job.orders.map((order): Way => {
      const { length, width, cost, clear } = stock as Stock;
      const [run, room] = order === "rip" ? [length, width] : [width, length];
      const sides = job.kinds.map((kind, k) =>
        sidesOf(kind, k, order).filter(
          ({ along, across }) =>
            kind.fits[i] === true &&
            !(kind.clear && clear) &&
            !(order === "rip" && isMitred(kind)) &&
            along <= run &&
            across <= room,
        ),
      );
      return { stock: i, order, cost, run, room, sides };
    }),
  );
}

function sidesOf({ length, width, turns }: Kind, kind: number, order: Order): Side[] {
  const [along, across] = order === "rip" ? [length, width] : [width, length];
  const upright = { kind, along, across, quarter: false };
  return turns ? [upright, { kind, along: across, across: along, quarter: true }] : [upright];
}

/** Each piece in the strip where it leaves the least, or in a new one while there is room. */
function fillOne({ run, room, sides, ...way }: Way, byRank: readonly number[], want: Int32Array, kerf: number): Board {
  const strips: Open[] = [];
  const counts = new Int32Array(want.length);
  let taken = 0;
  for (const kind of byRank) {
    const lies = sides[kind] as readonly Side[];
    if (lies.length === 0) continue;
    for (let n = want[kind] as number; n > 0; n--) {
      let [best, side, waste] = [undefined as Open | undefined, lies[0] as Side, Number.POSITIVE_INFINITY];
      for (const lie of lies) {
        for (const strip of strips) {
          if (lie.across > strip.size || strip.used + lie.along > run) continue;
          const lost = (strip.size - lie.across) * lie.along + 0.1 * (run - strip.used - lie.along);
          if (lost < waste) [best, side, waste] = [strip, lie, lost];
        }
      }
      if (best === undefined) {
        const fitting = lies.filter(({ across }) => taken + across <= room);
        if (fitting.length === 0) break;
        side = fitting.reduce((a, b) => (b.across < a.across ? b : a));
        best = { size: side.across, used: 0, sides: [] };
        strips.push(best);
        taken += side.across + kerf;
      }
      best.used += side.along + kerf;
      best.sides.push(side);
      counts[kind] = (counts[kind] as number) + 1;
    }
  }
  return { way: { run, room, sides, ...way }, strips, counts };
}

function usedOf({ way, strips }: Board): Used & { readonly fill: Fill } {
  const sawn = strips.map(({ size, sides }): Strip => {
    const pieces = sides.map(
      ({ kind, quarter }): Laid => ({ kind, turned: false, flipped: false, ...(quarter ? { quarter } : {}), at: 0 }),
    );
    return { size, pieces };
  });
  return { fill: fillOf(way.stock, way.order, sawn), times: 1 };
}

/** Numbers from 0 to 1 that look drawn by lot and are the same every time: x := 48271 x mod (2^31 - 1), Park and Miller 1993. */
function numbers(): () => number {
  let state = 20_011;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}
