// What is bought for a form -> the yard list, with spares; a stranger's names no price.
import type { Table } from "../leaf.ts";
import type { PaperSheet } from "../sheet-set.ts";
import { yardSheet } from "../yard-sheet.ts";
import { sheetOf, tableOf, words } from "./blocks.ts";
import type { SheetSource } from "./sheet-source.ts";
import { sparesTable } from "./spares.ts";

/** Columns that tell what the shop pays and when it looked. */
const moneyHeads = new Set(["Each", "Together", "Price seen"]);

function withoutMoney(table: Table): Table {
  const kept = table.heads.flatMap((head, i) => (moneyHeads.has(head) ? [] : [i]));
  const pick = (row: readonly string[]): string[] => kept.map((i) => row[i] ?? "");
  return { ...table, heads: pick(table.heads), rows: table.rows.map(pick) };
}

export function yardListSheet(source: SheetSource): readonly PaperSheet[] {
  const { readers, bought, edition } = source;
  const yard = yardSheet(bought, edition.bare);
  const isShop = readers === "shop";
  const bare = (table: Table | undefined) => (table === undefined || isShop ? table : withoutMoney(table));
  return sheetOf("yard", "Yard list", "Yard", [
    ...tableOf(bare(yard.boards), true),
    ...tableOf(isShop ? yard.own : undefined, true),
    ...tableOf(bare(yard.fasteners), true),
    ...tableOf(bare(yard.fittings), true),
    ...tableOf(bare(yard.ropes), true),
    ...tableOf(bare(yard.finishes), true),
    ...(yard.glues.length === 0
      ? []
      : words(`Also${isShop ? ", without a price in the yard" : ""}: ${yard.glues.join(", ")}.`)),
    ...tableOf(sparesTable(source), true),
    ...(isShop ? tableOf(yard.costs) : []),
    ...(isShop ? yard.notes.flatMap((note) => words(note, true)) : []),
  ]);
}
