// The worked-out variants of one recipe -> their prices, worked once for the same texts.
import { isPriced, type Pricing, pricingsOf } from "../findings/pricing.ts";
import type { Item } from "../item/item.ts";
import type { Shop } from "../yard/yard.ts";
import { Remembered } from "./remember.ts";

const known = new Remembered<readonly Pricing[]>();

/** Empty where the shop has not said what its time and its selling are worth. `hash` stands for the recipe, the yard and the shop. */
export const pricingsFor = (variants: readonly Item[], shop: Shop, hash: string): readonly Pricing[] =>
  isPriced(shop) ? known.answer(hash, () => pricingsOf(variants, shop)) : [];

/** Lets go of prices that were in neither this round nor the one before. */
export const forgetOldPricings = (): void => known.turn();
