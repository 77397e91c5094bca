// The cutting plan of a form -> the cut sheet: cautions, saw settings to be ticked, every board as it lies, offcuts to keep.
import { cautionsFor } from "../../findings/cautions.ts";
import { cuttingOperations } from "../../findings/operations.ts";
import type { Piece } from "../../item/item.ts";
import { type CutBoard, cuttingSheet } from "../cutting-sheet.ts";
import { drillList } from "../drill-list.ts";
import type { PaperSheet, SheetBlock } from "../sheet-set.ts";
import { cautionsOf, figure, heading, listOf, sheetOf, tableOf, together, words } from "./blocks.ts";
import type { SheetSource } from "./sheet-source.ts";

export function cutSheet({ readers, item, bought: [{ list }], shop, edition }: SheetSource): readonly PaperSheet[] {
  const cutting = cuttingSheet(item.slug, list, shop, edition);
  return sheetOf("cutting", "Cutting", "Cut", [
    ...cautionsOf(cautionsFor(cuttingOperations(item))),
    ...words(
      `Sizes in inches. Each saw cut takes ${cutting.kerf}. Cut from the left end of each board, in the order of the small numbers; what is crossed out is trimmed off, what is grey is left over. Set the saws in the order of the table and tick each setting when its cuts are made.`,
    ),
    ...cutting.safety.flatMap((text) => words(text)),
    ...words(matchedWords(item.pieces)),
    ...tableOf(cutting.settings, true),
    ...cutting.boards.flatMap(boardBlocks),
    ...tableOf(drillList(item, edition), true),
    ...(readers === "shop"
      ? [
          ...tableOf(cutting.offcuts),
          ...words(
            `${cutting.offcuts.rows.length > 0 ? "Write offcuts that you keep into the yard file under in-stock. " : ""}${cutting.proof}`,
            true,
          ),
        ]
      : []),
  ]);
}

/** What the plan keeps together and the maker should not mix up. */
function matchedWords(pieces: readonly Piece[]): string | undefined {
  const kinds = [...new Set(pieces.flatMap(({ matched }) => matched ?? []))];
  const marksOf = (kind: string): string =>
    pieces
      .filter(({ matched }) => matched === kind)
      .map(({ count, mark }) => `${count} × ${mark}`)
      .join(", ");
  return kinds.length === 0
    ? undefined
    : `From one board, so that their grain matches: ${kinds.map(marksOf).join("; ")}. Number them as they come off the saw.`;
}

export const boardBlocks = ({ name, stock, picture, first, order, strips }: CutBoard): SheetBlock[] =>
  together([
    heading(`${name}: ${stock}`),
    figure(picture, "board"),
    ...words(`${first ? `${first} ` : ""}${order}`),
    ...listOf(strips, "tick"),
  ]);
