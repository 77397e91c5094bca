// A plan in fillings and strips -> boards with their strips, then with their pieces, each with its mark and its place.
import type { CutPlan, Order, PlacedPiece } from "./cut-problem.ts";
import type { Strip } from "./fill.ts";
import type { Job, Kind } from "./job.ts";
import type { Used } from "./plan.ts";

/** One board of a plan with what is sawn from it. */
export type SawnBoard = { readonly stock: number; readonly order: Order; readonly strips: readonly Strip[] };

/** Pieces beyond those wanted are left uncut, boards without pieces are not bought. */
export function sawnBoards(job: Job, plan: readonly Used[]): SawnBoard[] {
  const left = job.kinds.map(({ count }) => count);
  const strips = stripsBySort(job, plan);
  const boards: SawnBoard[] = [];
  for (const { fill, times } of plan) {
    for (let i = 0; i < times && fill.stock >= 0; i++) {
      const cut = [...fill.strips, ...fill.kinds.flatMap((row, k) => given(strips.get(row), fill.counts[k] as number))];
      const wanted = cut.map((strip) => ({
        ...strip,
        pieces: strip.pieces.filter(({ kind }) => {
          left[kind] = (left[kind] as number) - 1;
          return (left[kind] as number) >= 0;
        }),
      }));
      const used = wanted.filter(({ pieces }) => pieces.length > 0);
      if (used.length > 0) boards.push({ stock: fill.stock, order: fill.order, strips: used });
    }
  }
  return boards;
}

/** Gives out marks, and boards of a stock in their order. */
export function layOut(job: Job, boards: readonly SawnBoard[]): CutPlan["boards"] {
  const marks = job.kinds.map(({ pieces }) =>
    pieces.flatMap(({ mark, count }) => Array.from({ length: count }, () => mark)).reverse(),
  );
  const ids = job.stocks.map(({ boards: alike }) =>
    alike.map(({ id, have }) => ({ id, left: have ?? Number.POSITIVE_INFINITY })),
  );
  return boards.map((board) => {
    const from = ids[board.stock]?.find(({ left }) => left > 0);
    if (from === undefined) throw new Error(`more boards are planned of stock ${board.stock} than there are`);
    from.left--;
    const pieces = placedPieces(job, board, (kind) => marks[kind]?.pop() as string);
    return { id: from.id, order: board.order, pieces };
  });
}

/** Strip after strip; what isn't fixed lies one after the other with the kerf between. */
export function placedPieces(
  { grid, start, kerf, kinds }: Job,
  { order, strips }: Omit<SawnBoard, "stock">,
  markOf: (kind: number) => string,
): PlacedPiece[] {
  const [step, before] = [grid.valueOf(), start.valueOf()];
  const pieces: PlacedPiece[] = [];
  let side = 0;
  for (const strip of strips) {
    let along = 0;
    for (const { kind, turned, flipped, quarter, at: fixed } of strip.pieces) {
      const { length, width, ends } = kinds[kind] as Kind;
      // As a square blank: a slanted end's lower corner may stand behind the blank's.
      const corner = strip.fixed || ends[0] <= 0 ? 0 : Math.tan((ends[0] * Math.PI) / 180) * width;
      const runs = strip.fixed ? fixed : along;
      // A fixed strip of a board that is crosscut first is the board itself.
      const [at, across] = order === "rip" ? [runs, side] : strip.fixed ? [runs, 0] : [side, runs];
      along += ((order === "rip") !== (quarter ?? false) ? length : width) + kerf;
      pieces.push({
        ...{ mark: markOf(kind), at: before + (at + corner) * step, across: across * step, turned, flipped },
        ...(quarter ? { quarter } : {}),
      });
    }
    side += strip.size + kerf;
  }
  return pieces;
}

/** The planned strips of each sort, still to be given to boards. */
function stripsBySort(job: Job, plan: readonly Used[]): Map<number, Strip[]> {
  const strips = new Map<number, Strip[]>();
  for (const { fill, times } of plan) {
    if (fill.stock >= 0) continue;
    const row = fill.kinds.find((kind) => kind >= job.kinds.length) as number;
    const list = strips.get(row) ?? [];
    for (let i = 0; i < times; i++) list.push(fill.strips[0] as Strip);
    strips.set(row, list);
  }
  return strips;
}

const given = (strips: Strip[] | undefined, count: number): Strip[] => strips?.splice(0, count) ?? [];
