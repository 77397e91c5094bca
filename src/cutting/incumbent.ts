// The best plan so far and the best bound so far: what every part of the search reads and betters.
import { Totals } from "./costs.ts";
import type { Fill } from "./fill.ts";
import type { Stock } from "./job.ts";
import { boardsOf, costOf, type Used } from "./plan.ts";
import type { Range } from "./pricing.ts";

/** Fillings that are kept on the way. */
const mostOffered = 1500;

export class Incumbent {
  readonly #stocks: readonly Stock[];
  readonly #pieces: number;
  #totals: Totals;
  #plan: readonly Used[] | undefined;
  #cost = Number.POSITIVE_INFINITY;
  #bound = 0;
  readonly #offered = new Map<string, Fill>();

  constructor(stocks: readonly Stock[], pieces: number) {
    this.#stocks = stocks;
    this.#pieces = pieces;
    this.#totals = new Totals(
      stocks.map(({ cost }) => cost),
      0,
    );
  }

  get plan(): readonly Used[] | undefined {
    return this.#plan;
  }
  get cost(): number {
    return this.#cost;
  }
  get bound(): number {
    return this.#bound;
  }
  get closed(): boolean {
    return this.#bound >= this.#cost;
  }

  /** Whole fillings that were found on the way, each once: what a search over given fillings may use. */
  get offered(): Fill[] {
    return [...this.#offered.values()];
  }

  offer(fills: readonly Fill[]): void {
    for (const fill of fills) {
      if (fill.stock < 0 || fill.strips.length === 0 || this.#offered.size >= mostOffered) continue;
      const key = `${fill.stock}:${fill.kinds.join()}:${fill.counts.join()}`;
      if (!this.#offered.has(key)) this.#offered.set(key, fill);
    }
  }

  keep(plan: readonly Used[] | undefined): void {
    if (plan === undefined) return;
    this.offer(plan.map(({ fill }) => fill));
    const cost = costOf(this.#stocks, plan);
    if (cost >= this.#cost) return;
    if (this.#plan === undefined)
      this.#totals = new Totals(
        this.#stocks.map((stock) => stock.cost),
        cost,
      );
    this.#plan = plan;
    this.#cost = cost;
  }

  /** Another plan at the same cost, if it has fewer boards. */
  keepFewer(plan: readonly Used[] | undefined): void {
    if (plan === undefined || this.#plan === undefined || costOf(this.#stocks, plan) !== this.#cost) return;
    if (boardsOf(plan) < boardsOf(this.#plan)) this.#plan = plan;
  }

  /** No plan costs less than this whole cost. */
  raise(bound: number): void {
    this.#bound = Math.max(this.#bound, Math.min(bound, this.#cost));
  }

  /** The least total of board prices that is no less than this; a hair below a total counts as the total. */
  total(cost: number): number {
    return this.#totals.atLeast(cost);
  }

  /** The dearest total that would be a cheaper plan; undefined where the bound leaves none. */
  get target(): number | undefined {
    return this.#totals.below(this.#cost, this.#bound);
  }

  /** How many boards of each stock a plan may have that is no dearer than the best so far. */
  ranges(): Range[] {
    return this.#stocks.map(({ cost, most }) => ({
      low: 0,
      high: Math.min(
        most,
        this.#pieces,
        cost > 0 && this.#cost < Number.POSITIVE_INFINITY ? Math.floor(this.#cost / cost) : this.#pieces,
      ),
    }));
  }
}
