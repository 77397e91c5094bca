// The price that is shown of a variant -> how a buyer reads it, alone or among others.
import type { ShownPrice } from "../findings/shown-price.ts";
import { zero } from "../units/length.ts";
import { formatDollars } from "../units/money.ts";
import type { ChannelName } from "../yard/shop-rates.ts";

/** All of it is public: what it was found from is not in it. */
export type StorePrice = Pick<ShownPrice, "amount" | "sold" | "ownWords">;

/** "$84.00". */
export const priceText = ({ amount }: StorePrice): string => formatDollars(amount);

/** "$84.00", or "$84.00 to $112.00"; undefined where nothing has a price. */
export function priceRange(prices: readonly StorePrice[]): string | undefined {
  const amounts = prices.map(({ amount }) => amount).sort((a, b) => a.compare(b));
  const [least = zero, most = zero] = [amounts[0], amounts.at(-1)];
  if (amounts.length === 0) return undefined;
  return least.compare(most) === 0 ? formatDollars(least) : `${formatDollars(least)} to ${formatDollars(most)}`;
}

const by: Readonly<Record<ChannelName, string>> = {
  posted: "postage within the country is in it",
  local: "at the workshop, for whoever fetches it: it isn't posted",
  stall: "at our stall, for whoever fetches it",
};

/** What is in a price: "postage is in it; sales tax is added where it is due"; empty where the shop hasn't said how it sells. */
export const priceWords = ({ sold }: StorePrice): string =>
  sold ? `${by[sold.by]}; sales tax is ${sold.tax === "in" ? "in it" : "added where it is due"}` : "";
