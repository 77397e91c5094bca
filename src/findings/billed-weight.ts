// A thing sold, packed -> its parcel: size, actual weight and the weight that is billed.
import type { Item } from "../item/item.ts";
import { type Exact, exact, inches } from "../units/length.ts";
import type { Selling } from "../yard/shop-rates.ts";
import { madeForOne } from "./hours.ts";

export type Parcel = {
  /** Whole inches, longest first; whole pounds. */
  readonly sizes: readonly [number, number, number];
  readonly actual: number;
  readonly bySize: number;
  readonly billed: number;
  /** Dollars; absent where it is too heavy to be posted. */
  readonly postage?: Exact;
};

/** The greater of the actual weight and length x width x height over the divisor, each up to the next whole pound. Common practice, no source. */
export const billedWeight = (pounds: number, cubicInches: number, divisor: number): number =>
  Math.max(wholeUp(pounds), wholeUp(cubicInches / divisor));

/** Up to a whole one, but not for the last bits of a double. */
const wholeUp = (value: number): number => Math.ceil(value - 1e-9);

/** What is sold as several lies side by side along its least side; every side has room for padding. */
export function parcelOf(item: Item, { packing, postage }: Selling): Parcel {
  const { width, depth, height } = item.overall;
  const [least = 0, ...others] = [width, depth, height].map(inches).sort((a, b) => a - b);
  const [long = 0, middle = 0, short = 0] = [least * madeForOne(item), ...others]
    .map((size) => wholeUp(size + 2 * packing.room.valueOf()))
    .sort((a, b) => b - a);
  const actual = (item.soldAs?.weight ?? item.weight) + packing.weight.valueOf();
  const volume = long * middle * short;
  const billed = billedWeight(actual, volume, postage.divisor.valueOf());
  return {
    sizes: [long, middle, short],
    actual: wholeUp(actual),
    bySize: wholeUp(volume / postage.divisor.valueOf()),
    billed,
    ...(exact(billed).compare(postage.most) <= 0 ? { postage: postage.base.add(postage.pound.mul(billed)) } : {}),
  };
}
