// A variant, its pricing and the shop -> the one price that the buyer is shown, and what own words cost on top of it.
import type { Item } from "../item/item.ts";
import type { Exact } from "../units/length.ts";
import { zero } from "../units/length.ts";
import type { Channel, ChannelName } from "../yard/shop-rates.ts";
import type { Shop } from "../yard/yard.ts";
import { madeForOne } from "./hours.ts";
import { steppedPrice, withOverhead, withProfit } from "./price.ts";
import { isPriced, type PricedShop, type Pricing, storePrice } from "./pricing.ts";

/** All of it may be shown in the store; what it was found from may not. Dollars for one as it is sold (a pair, a set). */
export type ShownPrice = {
  /** The slug of its variant. */
  readonly variant: string;
  readonly amount: Exact;
  /** Typed in the recipe, or worked out. */
  readonly from: "asked" | "target";
  /** The way of selling it holds for, where the shop has named its ways; posted, the postage is in it. */
  readonly sold?: {
    readonly by: ChannelName;
    /** Whether the sales tax is in it or is added to it. */
    readonly tax: "in" | "out";
  };
  /** What words of the buyer's own cost on top; absent where it has no rows of letters or the shop doesn't offer it. */
  readonly ownWords?: Exact;
};

/**
 * The price in the store: what the maker asks, else the target of the way of selling that the store stands for: posted, else local, else at
 * the stall. Undefined where nothing is asked and none can be worked out. `pricing` is that of the same variant; a shop that has
 * said neither minutes nor selling has none.
 */
export function shownPrice(item: Item, shop: Shop, pricing: Pricing | undefined): ShownPrice | undefined {
  const store = pricing && storePrice(pricing);
  const amount = item.asked?.shown ?? store?.target;
  if (!amount) return undefined;
  const more = pricing && store && isPriced(shop) ? ownWords(item, store.channel, shop) : undefined;
  return {
    variant: item.variant.slug,
    amount,
    from: item.asked ? "asked" : "target",
    ...(store ? { sold: { by: store.channel.name, tax: store.channel.tax } } : {}),
    ...(more ? { ownWords: more } : {}),
  };
}

/** Of all variants in their order; `pricings` are theirs, in the same order. */
export const shownPrices = (
  variants: readonly Item[],
  shop: Shop,
  pricings: readonly Pricing[] | undefined,
): readonly (ShownPrice | undefined)[] => variants.map((item, i) => shownPrice(item, shop, pricings?.[i]));

/** What one variant costs more than another, or less where it is below 0: the surcharge for its finish where both are of one form. */
export const surchargeOver = (other: ShownPrice, standard: ShownPrice): Exact => other.amount.sub(standard.amount);

/**
 * Material and minutes of every row of letters, with overhead, profit and fee as for the whole, up to the step; the fixed fee is taken
 * once for a sale and is in the price already.
 */
export function ownWords(item: Item, channel: Channel, { selling, wage }: PricedShop): Exact | undefined {
  const rows = item.textFields.length * madeForOne(item);
  if (rows === 0 || !selling.personalising) return undefined;
  const { material, minutes } = selling.personalising;
  const { overhead, profit, profitAs, salesTax } = selling;
  const cost = withOverhead(material.mul(rows), minutes.mul(rows).div(60).mul(wage), overhead);
  return steppedPrice(withProfit(cost, profit, profitAs), { ...channel, fixed: zero }, salesTax);
}
