// Fillings -> how often each is used at least cost where parts of boards are allowed: the linear program and its duals.
import type { Model } from "highs";
import { costOfFill, type Fill } from "./fill.ts";
import type { Stock } from "./job.ts";
import type { Range } from "./pricing.ts";
import { sameEverywhere, solver } from "./solver.ts";

/** Of one solved program: its cost, how often each filling is used, what a piece of each kind and a board of each stock is worth. */
export type Solved = {
  readonly value: number;
  readonly uses: Float64Array;
  readonly worths: Float64Array;
  /** What one more board of a stock would cost (above 0, where too few are wanted) or save (below 0, where it is limited). */
  readonly limits: Float64Array;
  /** How much of stand-ins is used: above 0 where these fillings and boards don't suffice. */
  readonly missing: number;
};

/** The primal simplex goes on from the last solution when fillings are added. */
const usual = { presolve: "off", simplex_strategy: 4 } as const;

/** Rows: one a kind (of pieces, then of strips), at least its demand; one a stock, its boards in their range. */
export class Master {
  readonly fills: Fill[] = [];
  readonly #model: Model;
  readonly #stocks: readonly Stock[];
  readonly #kinds: number;
  readonly #standIns: number;
  readonly #pieces: number;
  readonly #known = new Map<string, number>();
  readonly #uppers: number[] = [];

  constructor(stocks: readonly Stock[], demand: Int32Array, pieces: number, standIn: number) {
    this.#pieces = pieces;
    this.#stocks = stocks;
    this.#kinds = demand.length;
    this.#model = solver.createModel();
    this.#model.options.set({ ...sameEverywhere, solver: "simplex", ...usual });
    const none = { indices: [], values: [] };
    for (const count of demand) this.#model.addRow(count, solver.infinity, none);
    for (const { most } of stocks) {
      this.#model.addRow(0, most === Number.POSITIVE_INFINITY ? solver.infinity : most, none);
    }
    // A stand-in for every row keeps the program solvable, whatever fillings there are yet.
    this.#standIns = this.#kinds + stocks.length;
    for (let row = 0; row < this.#standIns; row++) {
      this.#model.addCol(standIn, 0, solver.infinity, { indices: [row], values: [1] });
    }
  }

  /** Adds fillings that aren't there yet; answers how many. */
  add(fills: readonly Fill[]): number {
    let added = 0;
    for (const fill of fills) {
      const key = `${fill.stock}:${fill.kinds.join()}:${fill.counts.join()}`;
      if (this.#known.has(key)) continue;
      this.#known.set(key, this.fills.length);
      this.fills.push(fill);
      this.#uppers.push(solver.infinity);
      added++;
      this.#model.addCol(costOfFill(this.#stocks, fill), 0, solver.infinity, {
        indices: fill.stock < 0 ? fill.kinds : [...fill.kinds, this.#kinds + fill.stock],
        values: fill.stock < 0 ? fill.counts : [...fill.counts, 1],
      });
    }
    return added;
  }

  /** What is still wanted and how many boards there may be; fillings that hold more of a kind than is wanted are laid aside. */
  want(demand: Int32Array, ranges: readonly Range[]): void {
    for (let kind = 0; kind < this.#kinds; kind++) {
      this.#model.changeRowBounds(kind, demand[kind] as number, solver.infinity);
    }
    ranges.forEach(({ low, high }, i) => {
      this.#model.changeRowBounds(this.#kinds + i, low, high === Number.POSITIVE_INFINITY ? solver.infinity : high);
    });
    this.fills.forEach(({ kinds, counts }, i) => {
      const fits = kinds.every((kind, k) => kind >= this.#pieces || (counts[k] as number) <= (demand[kind] as number));
      const upper = fits ? solver.infinity : 0;
      if (this.#uppers[i] === upper) return;
      this.#uppers[i] = upper;
      this.#model.changeColBounds(this.#standIns + i, 0, upper);
    });
  }

  solve(): Solved {
    this.#model.run();
    // Where the primal simplex loses its way, the dual begins afresh, the second time with the program made smaller first.
    for (const again of [{ simplex_strategy: 1 }, { simplex_strategy: 1, presolve: "on" }]) {
      if (this.#model.getModelStatus() === solver.constants.modelStatus.optimal) break;
      this.#model.clearSolver();
      this.#model.options.set(again);
      this.#model.run();
    }
    this.#model.options.set(usual);
    if (this.#model.getModelStatus() !== solver.constants.modelStatus.optimal) {
      throw new Error(`the linear program ended with status ${this.#model.getModelStatus()}`);
    }
    const { colValue, rowDual } = this.#model.getSolution();
    return {
      value: this.#model.getObjectiveValue(),
      uses: colValue.slice(this.#standIns),
      worths: rowDual.slice(0, this.#kinds).map((worth) => Math.max(0, worth)),
      limits: rowDual.slice(this.#kinds),
      missing: colValue.slice(0, this.#standIns).reduce((sum, value) => sum + value, 0),
    };
  }

  dispose(): void {
    this.#model.dispose();
  }
}
