// The finishes of a form -> the finish schedule: cautions first, then what goes on what and how long it dries.
import { usualBenchHours } from "../../yard/bench-hours.ts";
import { finishSheet } from "../finish-sheet.ts";
import type { PaperSheet } from "../sheet-set.ts";
import { cautionsOf, heading, sheetOf, tableOf, together, words } from "./blocks.ts";
import type { SheetSource } from "./sheet-source.ts";

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Common practice, no source. */
const sanding =
  "Sand every face along its grain before the first coat, saw marks off with 80 grit, then 120 and 180, and break all arrises by hand. Sand what can't be reached later before it is put together. Brush the dust off.";

/** How the shop puts it on is its own; a stranger follows the tin. */
export function finishSheets({ variants, edition, readers, shop }: SheetSource): readonly PaperSheet[] {
  const { cautions, schemes } = finishSheet(variants, edition, shop.benchHours ?? usualBenchHours);
  return sheetOf("finish", "Sanding and finish", "Finish", [
    ...cautionsOf(cautions),
    ...words(sanding),
    ...schemes.flatMap((scheme) =>
      together([
        heading(capital(scheme.name)),
        ...(scheme.unfinished
          ? [{ kind: "notice", title: scheme.unfinished.title, says: scheme.unfinished.says } as const]
          : []),
        ...cautionsOf(scheme.cautions),
        ...tableOf(scheme.first, true),
        ...tableOf(scheme.table),
        ...tableOf(scheme.times, true),
        ...words(scheme.bare),
        ...(readers === "shop" ? scheme.methods.flatMap((method) => words(method)) : []),
      ]),
    ),
  ]);
}
