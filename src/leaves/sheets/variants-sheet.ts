// The forms of an item -> the sheet that tells them apart.
import { formFacts } from "../../item/variants/forms.ts";
import { threeSizes } from "../edition.ts";
import { formsForBinder } from "../forms-table.ts";
import type { PaperSheet } from "../sheet-set.ts";
import { sheetOf, tableOf, words } from "./blocks.ts";
import type { SheetSource } from "./sheet-source.ts";

export function variantsSheet({ forms, shop, edition }: SheetSource): readonly PaperSheet[] {
  if (forms.length < 2) return [];
  const sizes = ({ width, depth, height }: SheetSource["item"]["overall"]) =>
    threeSizes([width, depth, height], shop.division);
  return sheetOf("variants", "Variants", "Build", [
    ...tableOf(formsForBinder(forms.map(formFacts), sizes, edition.weight)),
    ...words("Every variant has sheets of its own: look at the name in their heads before you cut."),
  ]);
}
