// A form's sections -> its step sheets: how numbers are read, then every step with all that it takes.

import { looseGaps, panelsSheet } from "../panels-sheet.ts";
import { readingNotes } from "../reading-notes.ts";
import type { PaperSheet, SheetBlock } from "../sheet-set.ts";
import { type StepSection, stepsSheet } from "../steps-sheet.ts";
import { factsOf, heading, markups, sheetOf, together, words } from "./blocks.ts";
import type { SheetSource } from "./sheet-source.ts";

export function stepSheets({ item, shop, edition, readers }: SheetSource): readonly PaperSheet[] {
  const gaps = looseGaps(item, edition.gap);
  const sections = stepsSheet(item, edition);
  const panelFacts = panelsSheet(item, shop.division, edition).map(({ facts }) => facts);
  const reading = readingNotes(item, JSON.stringify([panelFacts, gaps, sections]), shop.division);
  return sheetOf("steps", "Steps", "Steps", [
    ...factsOf(gaps),
    ...reading.flatMap((text) => words(text, true)),
    ...sections.flatMap((section) => [
      ...sectionBlocks(section),
      ...(readers === "shop" ? markups(section.notes) : []),
    ]),
  ]);
}

/** A heading never stands alone at the foot of a page: its first step is with it. */
function sectionBlocks({ heading: text, times, steps }: StepSection): SheetBlock[] {
  const [first, ...others] = steps.map((step) => ({ kind: "step", step }) as const);
  return [...together([heading(text), ...words(times), ...(first ? [first] : [])]), ...others];
}
