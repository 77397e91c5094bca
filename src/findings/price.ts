// What a sale has to bring -> the price that brings it, and back again. All exact; rounded only where a price is set or printed.
import { type Exact, exact, zero } from "../units/length.ts";
import type { Channel, Selling } from "../yard/shop-rates.ts";

/** (material + labour) (1 + overhead). Common practice, no source. */
export const withOverhead = (material: Exact, labour: Exact, overhead: Exact): Exact =>
  material.add(labour).mul(overhead.add(1));

/** Markup: cost (1 + profit). Margin: cost / (1 - profit), so that the profit is that share of what comes in. Common practice, no source. */
export const withProfit = (cost: Exact, profit: Exact, as: Selling["profitAs"]): Exact =>
  as === "markup" ? cost.mul(profit.add(1)) : cost.div(exact(1).sub(profit));

/**
 * The price before sales tax that leaves `net` after the fee: (net + fixed) / (1 - fee (1 + tax)). The fee is taken from
 * all that the buyer pays, tax with it; without tax this is the usual (net + fixed) / (1 - fee).
 */
export const priceThatNets = (net: Exact, { fee, fixed }: Pick<Channel, "fee" | "fixed">, salesTax: Exact): Exact =>
  net.add(fixed).div(exact(1).sub(fee.mul(salesTax.add(1))));

/** What is left of a price before tax when the fee is taken. */
export const netOf = (beforeTax: Exact, { fee, fixed }: Pick<Channel, "fee" | "fixed">, salesTax: Exact): Exact =>
  beforeTax.sub(beforeTax.mul(salesTax.add(1)).mul(fee)).sub(fixed);

/** The least multiple of `step` that is not below. */
export const upTo = (amount: Exact, step: Exact): Exact => amount.div(step).ceil().mul(step);

/** The shown price, up to the channel's step, that leaves at least `net`. */
export function steppedPrice(net: Exact, channel: Channel, salesTax: Exact): Exact {
  const beforeTax = priceThatNets(net, channel, salesTax);
  return upTo(channel.tax === "in" ? beforeTax.mul(salesTax.add(1)) : beforeTax, channel.step);
}

/** What a shown price leaves when tax and fee are taken. */
export const netOfShown = (shown: Exact, channel: Channel, salesTax: Exact): Exact =>
  netOf(channel.tax === "in" ? shown.div(salesTax.add(1)) : shown, channel, salesTax);

/** Dollars an hour that are left when everything but the labour is paid; undefined where there is no work. */
export const hourlyReturn = (net: Exact, paid: Exact, hours: Exact): Exact | undefined =>
  hours.compare(0) > 0 ? net.sub(paid).div(hours) : undefined;

/** How many must be sold until they have brought in what was laid out; undefined where a sale brings nothing. */
export const soldToPay = (laidOut: Exact, net: Exact): number | undefined =>
  net.compare(0) > 0 ? laidOut.div(net).ceil().valueOf() : undefined;

export const sumOf = (amounts: readonly Exact[]): Exact => amounts.reduce((sum, amount) => sum.add(amount), zero);
