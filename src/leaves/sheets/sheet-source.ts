// The variants of one form and the shop -> what every sheet of a set is made from, worked out once.
import type { Pricing } from "../../findings/pricing.ts";
import { yardList } from "../../findings/yard-list.ts";
import type { Item } from "../../item/item.ts";
import type { Form } from "../../item/variants/forms.ts";
import type { Shop } from "../../yard/yard.ts";
import { type BinderEdition, binderEdition } from "../edition.ts";
import { finishName } from "../finish-name.ts";
import type { Bought } from "../yard-sheet.ts";

/** The shop reads everything; a stranger who builds from a plan reads nothing of prices, hours, records and the shop's own notes. */
export type Readers = "shop" | "stranger";

export type SheetSource = {
  readonly readers: Readers;
  readonly shop: Shop;
  readonly edition: BinderEdition;
  readonly title: string;
  /** The standard variant of the form; all others have the same boards. */
  readonly item: Item;
  readonly variants: Form;
  /** All there are, where there is more than one. */
  readonly forms: readonly Form[];
  readonly bought: readonly [Bought, ...Bought[]];
  /** Of all variants of the recipe, the standard one first; empty where the shop has not said what its time is worth. */
  readonly pricings: readonly Pricing[];
};

export function sheetSource(
  form: Form,
  shop: Shop,
  forms: readonly Form[],
  pricings: readonly Pricing[],
  readers: Readers,
): SheetSource {
  const variants = forms.length > 1 ? byFinish(form) : form;
  const [item] = variants;
  const bought = variants.map((one): Bought => ({ item: one, list: yardList(one, shop.kerf) }));
  return {
    ...{ readers, shop, item, variants, forms, pricings },
    edition: binderEdition(shop.division),
    title: forms.length > 1 ? `${item.title}, ${item.variant.formName}` : item.title,
    bought: bought as [Bought, ...Bought[]],
  };
}

/** Called by their finish alone, as the sheet's title says the rest. */
function byFinish([first, ...others]: Form): Form {
  const named = (item: Item): Item => ({ ...item, variant: { ...item.variant, name: finishName(item.variant) } });
  return [named(first), ...others.map(named)];
}
