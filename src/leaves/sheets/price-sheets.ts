// Pricings of a recipe -> its price sheet among the others in the binder. For the shop only.
import { isPriced, type Pricing } from "../../findings/pricing.ts";
import { priceSheetLeaf } from "../price-sheet.ts";
import type { PaperSheet } from "../sheet-set.ts";
import { factsOf, heading, sheetOf, tableOf, words } from "./blocks.ts";
import type { SheetSource } from "./sheet-source.ts";

/** With the standard form's sheets; those of the others say nothing of their own of it. */
export function priceSheets({ pricings, shop, item, readers }: SheetSource): readonly PaperSheet[] {
  const [first, ...others] = pricings;
  if (!first || !isPriced(shop) || readers === "stranger" || item.variant.form !== first.item.variant.form) return [];
  const all: readonly [Pricing, ...Pricing[]] = [first, ...others];
  const leaf = priceSheetLeaf(all, shop);
  return sheetOf("prices", "Prices", "Price", [
    ...words(`Of the standard variant: ${leaf.variant}.`),
    ...leaf.warnings.flatMap((warning) => words(warning)),
    ...factsOf(leaf.facts),
    ...tableOf(leaf.prices),
    ...tableOf(leaf.variants),
    ...tableOf(leaf.byBatch),
    ...tableOf(leaf.compared),
    ...tableOf(leaf.alarm),
    ...tableOf(leaf.material),
    ...tableOf(leaf.batches),
    ...tableOf(leaf.work),
    ...(leaf.parcel.length === 0 ? [] : [heading("Parcel"), ...factsOf(leaf.parcel)]),
    ...tableOf(leaf.found),
    ...leaf.notes.flatMap((note) => words(note, true)),
  ]);
}
