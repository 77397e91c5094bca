// A form's patterns at true size -> the sheet that names them, says how each is used, and how a print is proved.
import { benchTemplates } from "../../drawing/full-size/templates-of.ts";
import type { PaperSheet } from "../sheet-set.ts";
import { sheetOf, tableOf, words } from "./blocks.ts";
import type { SheetSource } from "./sheet-source.ts";

const proof =
  "The last pages of the printed set are at true size. Print them at 100 %, with nothing fitted to the page, and measure the two bars at the foot of each: 4 in and 100 mm. If either is off, don't use the page.";

const joining =
  "Where a pattern takes more than one page, the small map on each says how they lie. Cut one page along its dashed line, lay it on its neighbour so that the numbered diamonds cover each other, and tape them down.";

export function fullSizeSheet({ item, shop }: SheetSource): readonly PaperSheet[] {
  const templates = benchTemplates(item, shop.division);
  const rows = templates.map(({ title, how }) => [title, how]);
  const letters = item.textFields.length === 0 ? [] : [["Letters", lettersHow(item.textFields[0]?.ways ?? [])]];
  const all = [...rows, ...letters];
  if (all.length === 0) return [];
  return sheetOf("full-size", "Patterns at full size", "Full size", [
    ...words(proof),
    ...words(joining),
    ...tableOf({ caption: "Patterns", heads: ["Pattern", "How it is used"], rows: all }),
  ]);
}

const lettersHow = (ways: readonly string[]): string =>
  `Each row as it is said here, for ${ways[0] ?? "stencil"}, with a cross that lies on the middle of the row. A stencil's bridges stay; letters for film are mirrored.`;
