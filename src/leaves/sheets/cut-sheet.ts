// The cutting plan of a form -> the cut sheet: cautions, then every board as it lies with its strips in order.
import { cautionsFor } from "../../findings/cautions.ts";
import { cuttingOperations } from "../../findings/operations.ts";
import { type CutBoard, cuttingSheet } from "../cutting-sheet.ts";
import type { PaperSheet, SheetBlock } from "../sheet-set.ts";
import { cautionsOf, figure, heading, listOf, sheetOf, together, words } from "./blocks.ts";
import type { SheetSource } from "./sheet-source.ts";

export function cutSheet({ item, bought: [{ list }], shop, edition }: SheetSource): readonly PaperSheet[] {
  const cutting = cuttingSheet(item.slug, list.plan, shop.kerf, edition);
  return sheetOf("cutting", "Cutting", "Cut", [
    ...cautionsOf(cautionsFor(cuttingOperations(item))),
    ...words(
      `Sizes in inches. Each saw cut takes ${cutting.kerf}. Cut from the left end of each board, in the order of the small numbers; what is crossed out is trimmed off, what is grey is left over.`,
    ),
    ...cutting.boards.flatMap(boardBlocks),
  ]);
}

const boardBlocks = ({ name, stock, picture, first, order, strips }: CutBoard): SheetBlock[] =>
  together([
    heading(`${name}: ${stock}`),
    figure(picture, "board"),
    ...words(`${first ? `${first} ` : ""}${order}`),
    ...listOf(strips, "tick"),
  ]);
