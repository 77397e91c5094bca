// A form's panels, ropes and rows of letters -> their sheets.
import { cordSheet } from "../cord-sheet.ts";
import { panelsSheet } from "../panels-sheet.ts";
import type { PaperSheet } from "../sheet-set.ts";
import { factsOf, figure, heading, sheetOf, tableOf, together, words } from "./blocks.ts";
import type { SheetSource } from "./sheet-source.ts";

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const panelSheets = ({ item, shop, edition }: SheetSource): readonly PaperSheet[] =>
  sheetOf(
    "panels",
    "Panels",
    "Panels",
    panelsSheet(item, shop.division, edition).flatMap(({ name, times, picture, facts }) =>
      together([heading(capital(name)), ...words(times), figure(picture, "panel-drawing"), ...factsOf(facts)]),
    ),
  );

export function cordsSheet({ item, edition }: SheetSource): readonly PaperSheet[] {
  const cords = cordSheet(item, edition);
  if (!cords) return [];
  return sheetOf("cords", "Rope and letters", "Panels", [
    ...tableOf(cords.ropes),
    ...cords.notes.flatMap((note) => words(note, true)),
    ...tableOf(cords.letters),
  ]);
}
