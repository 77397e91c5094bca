// A cutting problem -> the plan with its proof, piece by piece, or that the boards don't suffice.
import { exact } from "../units/length.ts";
import { fewestBoardsAt } from "./costs.ts";
import { cover } from "./cover.ts";
import type { CutPlan, CutProblem } from "./cut-problem.ts";
import type { Filler } from "./fill.ts";
import { type Job, jobOf, type Stock } from "./job.ts";
import { layOut } from "./lay-out.ts";
import { lineFiller } from "./line-filler.ts";
import { isMitred, looseFiller, looseJob } from "./loose-filler.ts";
import { mitreFiller } from "./mitre-filler.ts";
import { sawSettings } from "./saw-settings.ts";
import { stripFiller } from "./strip-filler.ts";
import { usefulOffcut } from "./useful-offcut.ts";

/** Undefined where there are too few boards for the pieces, as far as the work budget could tell. */
export function planCuts(problem: CutProblem): CutPlan | undefined {
  const job = jobOf(problem);
  const { fillers, rows } = fillersFor(job);
  const sizes = Float64Array.from(job.kinds, ({ length, width }) => (length + job.kerf) * (width + job.kerf));
  const demand = new Int32Array(rows);
  job.kinds.forEach(({ count }, kind) => {
    demand[kind] = count;
  });
  const { plan, cost, bound } = cover(job.stocks, fillers, sizes, demand, problem.effort);
  if (plan === undefined) return undefined;
  const boards = layOut(job, plan);
  const offcut = usefulOffcut(problem, boards);
  return {
    cost: exact(cost, 100),
    lowerBound: exact(bound, 100),
    proven: bound >= cost,
    fewest: bound >= cost && fewestBoardsAt(job.stocks, cost) >= boards.length,
    settings: sawSettings(problem, boards).length,
    ...(offcut === undefined ? {} : { offcut }),
    boards,
  };
}

/** Stocks that take the same kinds are filled together: those that give one strip only by lines, the others in each order. */
function fillersFor(job: Job): { fillers: Filler[]; rows: number } {
  const groups = new Map<string, number[]>();
  job.stocks.forEach((stock, i) => {
    const takes = job.kinds.map(({ fits, length, width }) => fits[i] || length > stock.length || width > stock.width);
    const key = `${isLine(job, stock, i)}:${takes.join()}`;
    groups.set(key, [...(groups.get(key) ?? []), i]);
  });
  const fillers: Filler[] = [];
  let rows = job.kinds.length;
  for (const stocks of groups.values()) {
    const first = stocks[0] as number;
    const taken = job.kinds.filter(({ fits }) => stocks.some((stock) => fits[stock]));
    const mitred = taken.some(isMitred);
    const { width } = job.stocks[first] as Stock;
    if (mitred && taken.every((kind) => kind.width === width) && stocks.every((i) => job.stocks[i]?.width === width)) {
      const nested = mitreFiller(job, stocks);
      if (nested) {
        fillers.push(nested);
        continue;
      }
    }
    const loose = looseJob(job);
    if (isLine(job, job.stocks[first] as Stock, first)) {
      fillers.push(mitred ? looseFiller(lineFiller(job, stocks), lineFiller(loose, stocks)) : lineFiller(job, stocks));
      continue;
    }
    for (const order of job.orders) {
      const filler = stripFiller(job, stocks, order, rows);
      fillers.push(mitred ? looseFiller(filler, stripFiller(loose, stocks, order, rows)) : filler);
      rows += filler.rows;
    }
  }
  return { fillers, rows };
}

/** Whether no two of the pieces a board takes go side by side. */
function isLine(job: Job, { width }: Stock, stock: number): boolean {
  const narrowest = job.kinds.filter(({ fits }) => fits[stock]).map((kind) => kind.width);
  return narrowest.every((each) => 2 * each + job.kerf > width);
}
