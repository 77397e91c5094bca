// A form's pieces -> the sheet they are counted by: sizes, left and right apart, and a tray for each panel.
import type { Item, Piece } from "../../item/item.ts";
import type { Table } from "../leaf.ts";
import { piecesTable } from "../pieces-table.ts";
import type { PaperSheet, SheetBlock } from "../sheet-set.ts";
import { heading, sheetOf, tableOf, together, words } from "./blocks.ts";
import { handedOf } from "./handed.ts";
import { kitTables } from "./kits.ts";
import type { SheetSource } from "./sheet-source.ts";

export const piecesSheet = ({ item, edition }: SheetSource): readonly PaperSheet[] =>
  sheetOf("pieces", "Pieces", "Cut", [...tableOf(piecesTable(item, edition.bare)), ...handedBlocks(item)]);

function handedBlocks(item: Item): SheetBlock[] {
  const handed = handedOf(item);
  if (handed.length === 0) return [];
  return together([
    heading("Left and right"),
    ...tableOf(handedTable(handed)),
    ...words(
      "A left piece is the mirror of a right one and can't take its place. Cut the one, turn the stop or the tilt over, then cut the other; write the hand on each as it leaves the saw.",
    ),
  ]);
}

const handedTable = (pairs: readonly (readonly [Piece, Piece])[]): Table => ({
  caption: "Pieces with a hand, counted apart",
  heads: ["Piece", "Left", "Right", "Where"],
  rows: pairs.map(([left, right]) => [
    left.letter,
    `${left.count} × ${left.mark}`,
    `${right.count} × ${right.mark}`,
    left.name === right.name ? left.name : `${left.name}; ${right.name}`,
  ]),
});

/** What is laid out before step 1, tray by tray. */
export const kitSheet = ({ item, edition }: SheetSource): readonly PaperSheet[] =>
  sheetOf(
    "kit",
    "Kit list",
    "Steps",
    kitTables(item, edition.bare).flatMap((table) => tableOf(table, true)),
  );
