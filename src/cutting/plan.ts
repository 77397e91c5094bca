// A plan as fillings and how often each is used; taking one more filling off what is wanted.
import { costOfFill, type Fill } from "./fill.ts";
import type { Stock } from "./job.ts";
import type { Range } from "./pricing.ts";

export type Used = { readonly fill: Fill; readonly times: number };

export const costOf = (stocks: readonly Stock[], plan: readonly Used[]): number =>
  plan.reduce((sum, { fill, times }) => sum + costOfFill(stocks, fill) * times, 0);

export const boardsOf = (plan: readonly Used[]): number =>
  plan.reduce((sum, { fill, times }) => (fill.stock < 0 ? sum : sum + times), 0);

/** What is still wanted and how many boards may still be used, while a plan grows. */
export class Rest {
  readonly want: Int32Array;
  readonly #boards: Range[];
  readonly #pieces: number;

  /** `pieces`: how many of the rows are kinds of pieces; those behind them are sorts of strips. */
  constructor(want: Int32Array, boards: readonly Range[], pieces: number) {
    this.want = want.slice();
    this.#pieces = pieces;
    this.#boards = [...boards];
  }

  get boards(): readonly Range[] {
    return this.#boards;
  }

  /** Nothing is wanted any more: neither pieces nor strips to cut them from. */
  get done(): boolean {
    return this.want.every((count) => count <= 0);
  }

  /** Whether there is such a board and all of the filling is wanted. Strips may be there before their pieces and after. */
  takes({ stock, kinds, counts }: Fill): boolean {
    if (stock >= 0 && (this.#boards[stock]?.high ?? 0) < 1) return false;
    return kinds.every((kind, k) => kind >= this.#pieces || (counts[k] as number) <= (this.want[kind] as number));
  }

  /** Whether strips have been planned that no board gives yet. */
  get linked(): boolean {
    return this.want.subarray(this.#pieces).some((count) => count > 0);
  }

  /** Uses a filling as often as all of it is wanted, at most `most` times and at least once. */
  take(fill: Fill, most = Number.POSITIVE_INFINITY): Used {
    const { low, high } = this.#boards[fill.stock] ?? { low: 0, high: Number.POSITIVE_INFINITY };
    const whole = fill.kinds.map((kind, k) =>
      kind < this.#pieces ? Math.floor((this.want[kind] as number) / (fill.counts[k] as number)) : most,
    );
    const times = Math.max(1, Math.min(...whole, high, most));
    fill.kinds.forEach((kind, k) => {
      const left = (this.want[kind] as number) - times * (fill.counts[k] as number);
      this.want[kind] = kind < this.#pieces ? Math.max(0, left) : left;
    });
    if (fill.stock >= 0) this.#boards[fill.stock] = { low: Math.max(0, low - times), high: high - times };
    return { fill, times };
  }
}
