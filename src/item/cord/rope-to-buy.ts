// Lengths of one rope -> what of it is bought: whole units as it is sold.
import { type Exact, exact } from "../../units/length.ts";
import type { Rope } from "../../yard/yard.ts";

export type RopeBought = {
  readonly rope: Rope;
  /** Inches that are cut, and inches that are bought. */
  readonly takes: number;
  readonly buy: Exact;
  readonly cost: Exact;
};

/** All the lengths are cut from one run. A length that came through an angle counts as the whole unit it is within 1e-9 in of. */
export function ropeToBuy(rope: Rope, lengths: readonly number[]): RopeBought {
  const takes = lengths.reduce((sum, length) => sum + length, 0);
  const buy = rope.sold.mul(exact(Math.ceil(takes / rope.sold.valueOf() - 1e-9)));
  return { rope, takes, buy, cost: rope.pricePerFoot.mul(buy).div(12) };
}
