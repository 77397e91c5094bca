// A form's sections -> its step sheets: how numbers are read, then every step with all that it takes.

import { coatFirst } from "../../findings/coat-first.ts";
import { allStepFaults, mostVerbs, mostWords, type StepFault } from "../../findings/step-words.ts";
import { looseGaps, panelsSheet } from "../panels-sheet.ts";
import { readingNotes } from "../reading-notes.ts";
import type { PaperSheet, SheetBlock } from "../sheet-set.ts";
import { type StepSection, stepsSheet } from "../steps-sheet.ts";
import { factsOf, heading, markups, sheetOf, together, words } from "./blocks.ts";
import type { SheetSource } from "./sheet-source.ts";

export function stepSheets(source: SheetSource): readonly PaperSheet[] {
  const { item, shop, edition, readers } = source;
  const gaps = looseGaps(item, edition.gap);
  const sections = stepsSheet(item, edition);
  const panelFacts = panelsSheet(item, shop.division, edition).map(({ facts }) => facts);
  const reading = readingNotes(item, JSON.stringify([panelFacts, gaps, sections]), shop.division);
  return sheetOf("steps", "Steps", "Steps", [
    ...factsOf(gaps),
    ...reading.flatMap((text) => words(text, true)),
    ...coatWords(source),
    ...(readers === "shop" ? allStepFaults(item).flatMap((fault) => words(faultWords(fault), true)) : []),
    ...sections.flatMap((section) => [
      ...sectionBlocks(section),
      ...(readers === "shop" ? markups(section.notes) : []),
    ]),
  ]);
}

/** Before step 1 the schedule of the finish is looked at, where something is coated loose. */
function coatWords({ variants }: SheetSource): SheetBlock[] {
  const first = variants.flatMap((item) => {
    const marks = coatFirst(item).map(({ piece }) => piece.mark);
    return marks.length === 0 ? [] : [`${item.variant.name}: ${marks.join(", ")}`];
  });
  return first.length === 0
    ? []
    : [
        {
          kind: "notice",
          title: "Coat these before step 1",
          says: `${first.join("; ")}. Which faces of their joints to mask stands on the sheet “Sanding and finish”.`,
        },
      ];
}

/** A note to whoever writes the recipe. */
function faultWords(fault: StepFault): string {
  const step = `Note on step ${fault.step}:`;
  switch (fault.kind) {
    case "long":
      return `${step} it has ${fault.words} words; at the bench under ${mostWords} are read.`;
    case "many":
      return `${step} it asks for ${fault.verbs} things; ${mostVerbs} are the most that are kept in mind.`;
    case "no verb":
      return `${step} it starts with “${fault.word}”; start with what is to be done: lay, screw, cut.`;
  }
}

/** A heading never stands alone at the foot of a page: its first step is with it. */
function sectionBlocks({ heading: text, times, drawn, steps }: StepSection): SheetBlock[] {
  const [first, ...others] = steps.map((step) => ({ kind: "step", step }) as const);
  return [
    ...together([
      heading(text),
      ...words([times, drawn].filter((said) => said !== undefined).join(" ")),
      ...(first ? [first] : []),
    ]),
    ...others,
  ];
}
