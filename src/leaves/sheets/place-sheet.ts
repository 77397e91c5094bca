// How a form is used -> the sheet for where it stands: cautions, care, and the shop's own notes.
import { cautionsFor, cautionsForUse } from "../../findings/cautions.ts";
import { placingOperations } from "../../findings/operations.ts";
import { useOf } from "../../findings/use.ts";
import { saleSheet } from "../sale-sheet.ts";
import type { PaperSheet } from "../sheet-set.ts";
import { careWords } from "../uses.ts";
import { cautionsOf, heading, listOf, sheetOf, tableOf, words } from "./blocks.ts";
import type { SheetSource } from "./sheet-source.ts";

export function placeSheet({ item, variants, edition, shop, readers }: SheetSource): readonly PaperSheet[] {
  const use = useOf(item);
  const finishes = variants.flatMap(({ variant }) => variant.finish.map(({ finish }) => finish.care));
  return sheetOf("place", "Where it stands", "Finish", [
    ...cautionsOf([...cautionsForUse(use, edition.weight), ...cautionsFor(placingOperations(item))]),
    heading("Looking after it, and when it has served"),
    ...listOf([...careWords(use), ...new Set(finishes), shop.careNote, ...disposal(item)]),
    ...(readers === "shop" && item.notes !== undefined ? [heading("Notes of the shop"), ...words(item.notes)] : []),
  ]);
}

/** Common practice; burning treated wood: CPSC and EPA guidance on preserved wood. */
const disposal = ({ pieces, variant }: SheetSource["item"]): string[] => [
  pieces.some(({ board }) => board.treatment === "preservative")
    ? "Store offcuts dry and flat. Take treated wood to the waste yard as such; never burn it."
    : "Store it and its offcuts dry and off the ground. Take screws out before the wood is used again.",
  variant.finish.length > 0
    ? "Coated wood is waste for the yard, not for the stove or the compost."
    : "Bare wood may go to firewood or compost where local rules allow it.",
];

export function beforeSaleSheet({ item, readers }: SheetSource): readonly PaperSheet[] {
  const sale = readers === "shop" ? saleSheet(item) : undefined;
  return sale === undefined
    ? []
    : sheetOf("sale", sale.title, "Price", [...words(sale.says), ...tableOf(sale.needs), ...listOf(sale.duties)]);
}
