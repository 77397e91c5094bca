// A plan in fillings and strips -> boards with their pieces, each with its mark and its place.
import type { CutPlan, PlacedPiece } from "./cut-problem.ts";
import type { Strip } from "./fill.ts";
import type { Job, Kind } from "./job.ts";
import type { Used } from "./plan.ts";

/** Gives out boards, strips and marks; pieces beyond those wanted are left uncut, boards without pieces are not bought. */
export function layOut(job: Job, plan: readonly Used[]): CutPlan["boards"] {
  const step = job.grid.valueOf();
  const marks = job.kinds.map(({ pieces }) =>
    pieces.flatMap(({ mark, count }) => Array.from({ length: count }, () => mark)).reverse(),
  );
  const ids = job.stocks.map(({ boards }) =>
    boards.map(({ id, have }) => ({ id, left: have ?? Number.POSITIVE_INFINITY })),
  );
  const strips = stripsBySort(job, plan);
  const planned: CutPlan["boards"][number][] = [];
  for (const { fill, times } of plan) {
    for (let i = 0; i < times && fill.stock >= 0; i++) {
      const cut = [...fill.strips, ...fill.kinds.flatMap((row, k) => given(strips.get(row), fill.counts[k] as number))];
      const pieces: PlacedPiece[] = [];
      let side = 0;
      for (const strip of cut) {
        let along = 0;
        const before = pieces.length;
        for (const { kind, turned, flipped, at: fixed } of strip.pieces) {
          const mark = marks[kind]?.pop();
          if (mark === undefined) continue;
          const { length, width } = job.kinds[kind] as Kind;
          const [at, across] = strip.fixed ? [fixed, 0] : fill.order === "rip" ? [along, side] : [side, along];
          along += (fill.order === "rip" ? length : width) + job.kerf;
          pieces.push({ mark, at: at * step, across: across * step, turned, flipped });
        }
        if (pieces.length > before) side += strip.size + job.kerf;
      }
      if (pieces.length === 0) continue;
      const from = ids[fill.stock]?.find(({ left }) => left > 0);
      if (from === undefined) throw new Error(`more boards are planned of stock ${fill.stock} than there are`);
      from.left--;
      planned.push({ id: from.id, order: fill.order, pieces });
    }
  }
  return planned;
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
