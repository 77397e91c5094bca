// A recipe's section that is left to the buyer -> the assembly card that goes with the parts: parts, fasteners and tools counted, steps.
import { cautionsFor } from "../findings/cautions.ts";
import { stepOperations } from "../findings/operations.ts";
import { stepTools } from "../findings/tools.ts";
import type { Item, WorkedSection } from "../item/item.ts";
import type { Division } from "../units/division.ts";
import { setFractions, storeEdition } from "./edition.ts";
import type { CautionText, Markup } from "./leaf.ts";
import { proseLine, proseText } from "./prose.ts";

export type AssemblyCard = {
  readonly title: string;
  readonly heading: string;
  /** "2 × trestle", "4 × F, planks". */
  readonly parts: readonly string[];
  readonly fasteners: readonly string[];
  readonly tools: readonly string[];
  readonly cautions: readonly CautionText[];
  readonly steps: readonly {
    readonly text: Markup;
    readonly checks: readonly Markup[];
    readonly words: readonly Markup[];
  }[];
};

/** Undefined where nothing is left to the buyer. Lengths are in both units, as for a buyer. */
export function assemblyCard(item: Item, division: Division): AssemblyCard | undefined {
  const edition = storeEdition(division);
  const section = item.sections.find(({ heading }) => proseText(heading, edition.figure) === item.leftToBuyer);
  if (!section) return undefined;
  const operations = section.steps.flatMap((step) => stepOperations(step, item, false));
  const driven = section.steps.flatMap(({ joins }) => joins.flatMap((join) => join.driven));
  return {
    title: item.title,
    heading: item.leftToBuyer ?? "",
    parts: partsOf(item, section),
    fasteners: counted(driven.map(({ fastener }) => setFractions(fastener.name))),
    tools: stepTools(item, section.steps),
    cautions: cautionsFor([...new Set(operations)]),
    steps: section.steps.map((step) => ({
      text: proseLine(step.text, edition.figure),
      checks: step.checks.map((check) => proseLine(check, edition.figure)),
      words: step.cautions.map((caution) => proseLine(caution, edition.figure)),
    })),
  };
}

/** What other sections put together counts as one part; what is left are boards with their marks. */
function partsOf(item: Item, section: WorkedSection): string[] {
  const made = item.sections.flatMap(({ makes }) =>
    (makes?.panels ?? []).map((name) => ({ name, kind: makes?.kind ?? "" })),
  );
  const ids = new Set(section.steps.flatMap(({ adds }) => adds));
  const members = item.members.filter(({ id }) => ids.has(id));
  const kits = made.filter(({ name }) => members.some((one) => one.assembly === name || one.panel === name));
  const loose = members.filter((one) => !made.some(({ name }) => one.assembly === name || one.panel === name));
  const pieceName = (mark: string) => item.pieces.find((piece) => piece.mark === mark)?.name ?? "";
  return [...counted(kits.map(({ kind }) => kind)), ...counted(loose.map(({ mark }) => `${mark}, ${pieceName(mark)}`))];
}

const counted = (names: readonly string[]): string[] =>
  [...new Set(names)].map((name) => `${names.filter((one) => one === name).length} × ${name}`);
