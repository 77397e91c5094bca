// Fillings and a target cost -> a plan of whole boards at that cost or less, or the proof that these fillings give none.
import { costOfFill, type Fill } from "./fill.ts";
import type { Stock } from "./job.ts";
import type { Used } from "./plan.ts";
import type { Range } from "./pricing.ts";
import { sameEverywhere, solver } from "./solver.ts";

export type Searched = { readonly plan?: readonly Used[]; readonly none: boolean; readonly used: number };

/** `target` is a whole cost; of plans at that cost or less the one with the least money is looked for, or, of those with at most `mostBoards`, the one with the fewest boards. Ends after `iterations` steps of the linear programs inside, however fast the machine is. */
export function searchWhole(
  stocks: readonly Stock[],
  fills: readonly Fill[],
  demand: Int32Array,
  ranges: readonly Range[],
  target: number,
  iterations: number,
  mostBoards?: number,
): Searched {
  if (fills.length === 0) return { none: true, used: 0 };
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  const costRow = demand.length + stocks.length;
  const rows = costRow + (mostBoards === undefined ? 1 : 2);
  for (const { kinds, counts, stock } of fills) {
    kinds.forEach((kind, k) => {
      indices.push(kind);
      values.push(counts[k] as number);
    });
    if (stock >= 0) {
      indices.push(demand.length + stock);
      values.push(1);
    }
    const cost = stocks[stock]?.cost ?? 0;
    if (cost > 0) {
      indices.push(costRow);
      values.push(cost);
    }
    if (stock >= 0 && mostBoards !== undefined) {
      indices.push(costRow + 1);
      values.push(1);
    }
    starts.push(indices.length);
  }
  const model = solver.createModel({
    numCols: fills.length,
    numRows: rows,
    colCost: fills.map((fill) => (mostBoards === undefined ? costOfFill(stocks, fill) : fill.stock < 0 ? 0 : 1)),
    colLower: fills.map(() => 0),
    colUpper: fills.map(({ stock, kinds, counts }) => {
      const useful = kinds.map((kind, k) => Math.ceil((demand[kind] as number) / Math.abs(counts[k] as number)));
      return stock >= 0 && useful.every((times) => times === 0) ? (ranges[stock]?.high ?? 0) : Math.max(...useful);
    }),
    rowLower: [...demand, ...ranges.map(({ low }) => low), -solver.infinity, ...(mostBoards === undefined ? [] : [0])],
    rowUpper: [
      ...Array.from(demand, () => solver.infinity),
      ...ranges.map(({ high }) => (high === Number.POSITIVE_INFINITY ? solver.infinity : high)),
      target,
      ...(mostBoards === undefined ? [] : [mostBoards]),
    ],
    matrix: { format: "csc", numRows: rows, numCols: fills.length, starts, indices, values },
    integrality: fills.map(() => solver.constants.variableType.integer),
  });
  try {
    model.options.set({ ...sameEverywhere, mip_rel_gap: 0, mip_abs_gap: 0.5 });
    let used = 0;
    model.run({
      [solver.constants.callbackType.mipInterrupt]: (event) => {
        used = Number(event.data.mip_total_lp_iterations ?? 0);
        if (used > iterations) event.interrupt();
        return undefined;
      },
    });
    const status = model.getModelStatus();
    if (status === solver.constants.modelStatus.infeasible) return { none: true, used };
    // 2: a solution is there that keeps to all rows.
    if (model.info.get("primal_solution_status") !== 2) return { none: false, used };
    const { colValue } = model.getSolution();
    const plan = fills
      .map((fill, i) => ({ fill, times: Math.round(colValue[i] ?? 0) }))
      .filter(({ times }) => times > 0);
    return { none: false, used, ...(isPlan(plan, stocks, demand, ranges, target) ? { plan } : {}) };
  } finally {
    model.dispose();
  }
}

/** Counted again in whole numbers: the solver's own arithmetic is in doubles. */
function isPlan(
  plan: readonly Used[],
  stocks: readonly Stock[],
  demand: Int32Array,
  ranges: readonly Range[],
  target: number,
): boolean {
  const got = new Int32Array(demand.length);
  const boards = stocks.map(() => 0);
  let cost = 0;
  for (const { fill, times } of plan) {
    fill.kinds.forEach((kind, k) => {
      got[kind] = (got[kind] as number) + times * (fill.counts[k] as number);
    });
    if (fill.stock >= 0) boards[fill.stock] = (boards[fill.stock] as number) + times;
    cost += times * costOfFill(stocks, fill);
  }
  return (
    plan.length > 0 &&
    cost <= target &&
    got.every((count, kind) => count >= (demand[kind] as number)) &&
    boards.every((count, i) => count <= (ranges[i]?.high ?? 0))
  );
}
