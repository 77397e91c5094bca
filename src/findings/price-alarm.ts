// What the prices of a thing leave over its floor -> the board prices at which it falls below.
import { type Exact, exact, zero } from "../units/length.ts";
import type { Costs } from "./cost.ts";

export type BoardAlarm = {
  readonly board: string;
  /** Each length that is bought: its price now, and the last whole cent at which the floor still holds. */
  readonly lengths: readonly {
    readonly length: NonNullable<Costs["lines"][number]["length"]>;
    readonly now: Exact;
    readonly most: Exact;
  }[];
  /** How many times dearer this board may become while all else stays. */
  readonly times: Exact;
};

export type PriceAlarm = {
  readonly boards: readonly BoardAlarm[];
  /** The same for all boards together; absent where the thing has none. */
  readonly together?: Exact;
};

/**
 * `spare` is what the price of one leaves over its floor, in the way of selling that leaves least. A dearer board costs its price
 * and the overhead on it: it may rise by spare / (1 + overhead). The boards are taken to be cut as they are now.
 */
export function alarmOf({ lines, units }: Costs, spare: Exact, overhead: Exact): PriceAlarm {
  const room = spare.div(overhead.add(1)).mul(units);
  const boards = lines.filter(({ kind }) => kind === "board");
  const times = (of: typeof boards): Exact => room.div(of.reduce((sum, { cost }) => sum.add(cost), zero)).add(1);
  return {
    boards: [...new Set(boards.map(({ name }) => name))].map((board): BoardAlarm => {
      const own = boards.filter(({ name }) => name === board);
      return {
        board,
        times: times(own),
        lengths: own.map(({ length, each }) => ({
          length: length ?? zero,
          now: each ?? zero,
          most: cents((each ?? zero).mul(times(own))),
        })),
      };
    }),
    ...(boards.length > 0 ? { together: times(boards) } : {}),
  };
}

/** Down to the whole cent. */
const cents = (money: Exact): Exact => exact(money.mul(100).floor().toFraction()).div(100);
