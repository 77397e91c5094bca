// Board prices -> which totals can occur at all, so that a bound between two of them is the upper one.

/** Totals of any number of boards at these whole prices, up to `highest`. */
export class Totals {
  readonly #step: number;
  readonly #next: Float64Array | undefined;

  constructor(prices: readonly number[], highest: number) {
    const above0 = [...new Set(prices.filter((price) => price > 0))];
    this.#step = above0.reduce(gcd, 0) || 1;
    const size = Math.floor(highest / this.#step) + 1;
    if (size > 4_000_000) return;
    const there = new Uint8Array(size + 1);
    there[0] = 1;
    for (const price of above0.map((each) => each / this.#step)) {
      for (let at = price; at <= size; at++) if (there[at - price] === 1) there[at] = 1;
    }
    this.#next = new Float64Array(size + 1).fill(Number.POSITIVE_INFINITY);
    for (let at = size, next = Number.POSITIVE_INFINITY; at >= 0; at--) {
      if (there[at] === 1) next = at;
      this.#next[at] = next;
    }
  }

  /** The least total that is no less than this. */
  atLeast(cost: number): number {
    const steps = Math.max(0, Math.ceil(cost / this.#step - 1e-9));
    if (this.#next === undefined || steps >= this.#next.length) return steps * this.#step;
    const next = this.#next[steps] as number;
    return (next === Number.POSITIVE_INFINITY ? steps : next) * this.#step;
  }

  /** The greatest total below this one that is no less than `least`; undefined where there is none. */
  below(cost: number, least: number): number | undefined {
    for (let total = cost - this.#step; total >= least; total -= this.#step) {
      if (this.atLeast(total) === total) return total;
    }
    return undefined;
  }
}

/** No plan at exactly this whole cost has fewer boards: as coins make up a sum, whatever the boards hold. At least 1. */
export function fewestBoardsAt(
  stocks: readonly { readonly cost: number; readonly most: number }[],
  cost: number,
): number {
  const prices = [...new Set(stocks.map((stock) => stock.cost).filter((price) => price > 0))];
  const step = prices.reduce(gcd, 0) || 1;
  const size = Math.round(cost / step);
  const dear = Math.max(1, ...prices);
  if (size * prices.length > 20_000_000) return Math.ceil(cost / dear);
  const fewest = new Float64Array(size + 1).fill(Number.POSITIVE_INFINITY);
  fewest[0] = 0;
  for (let at = 1; at <= size; at++) {
    for (const price of prices) {
      const before = at - price / step;
      if (before >= 0) fewest[at] = Math.min(fewest[at] as number, (fewest[before] as number) + 1);
    }
  }
  return Math.max(1, fewest[size] as number);
}

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));
