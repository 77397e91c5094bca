// Worked-out sections -> numbered steps as they are read at the bench, each with its picture, pieces, fasteners and cautions.
import { hasPicture } from "../drawing/step-extras.ts";
import { drawStep } from "../drawing/step-picture.ts";
import { drawTape, tapeReadings } from "../drawing/tape.ts";
import { cautionsFor } from "../findings/cautions.ts";
import { fastenerPlaces } from "../findings/fastener-places.ts";
import { stepOperations } from "../findings/operations.ts";
import type { Item, WorkedSection, WorkedStep } from "../item/item.ts";
import { type BinderEdition, setFractions } from "./edition.ts";
import { fastenerWords } from "./fastener-words.ts";
import type { CautionText, Markup, Picture } from "./leaf.ts";
import { pictureOf } from "./picture.ts";
import { proseBlock, proseLine, proseText } from "./prose.ts";
import type { SheetStep } from "./sheet-set.ts";

export type StepSection = {
  readonly heading: string;
  /** "Make it twice.", where the section builds a panel more than once. */
  readonly times?: string;
  /** The panel's sheet, where one is drawn. */
  readonly drawn?: string;
  readonly steps: readonly SheetStep[];
  /** Private notes of the shop. */
  readonly notes: readonly Markup[];
};

export const stepsSheet = (item: Item, edition: BinderEdition): StepSection[] =>
  item.sections.map((section) => ({
    heading: proseText(section.heading, edition.figure),
    ...(section.makes && section.makes.times > 1 ? { times: `Make ${section.makes.times}, each by these steps.` } : {}),
    ...(item.panels.some(({ kind }) => kind === section.makes?.kind)
      ? { drawn: `It is drawn as “${capital(section.makes?.kind ?? "")}” on the sheet “Panels”.` }
      : {}),
    steps: stepTexts(item, section, edition),
    notes: section.notes.map((note) => proseBlock(note, edition.figure)),
  }));

/** A caution stands in full where its section calls for it first; from then on in every step by its step and its avoidance. */
function stepTexts(item: Item, section: WorkedSection, edition: BinderEdition): SheetStep[] {
  const told = new Map<string, number>();
  return section.steps.map((step) => {
    const cautions = cautionsFor(stepOperations(step, item, section.makes !== undefined)).map(
      (caution): CautionText => {
        const first = told.get(caution.id);
        if (first !== undefined) return { ...caution, hazard: `As in step ${first}:`, consequence: "" };
        told.set(caution.id, step.number);
        return caution;
      },
    );
    return { ...stepText(item, section, step, edition), cautions };
  });
}

function stepText(
  item: Item,
  section: WorkedSection,
  step: WorkedStep,
  edition: BinderEdition,
): Omit<SheetStep, "cautions"> {
  const blocks = (all: WorkedStep["checks"]): Markup[] =>
    all.map((one) => proseLine({ ...one, markdown: capital(one.markdown) }, edition.figure));
  return {
    number: String(step.number),
    text: proseLine({ ...step.text, markdown: capital(step.text.markdown) }, edition.figure),
    pieces: piecesOf(item, section, step),
    fasteners: countNames(step.joins.flatMap((join) => join.driven.map(({ fastener }) => setFractions(fastener.name)))),
    places: fastenerPlaces(item, step.joins).map((spots) => fastenerWords(spots, edition.length)),
    ...(hasPicture(item, step) ? { picture: pictureOf(drawStep(item, step)) } : {}),
    checks: blocks(step.checks),
    words: blocks(step.cautions),
    ...tapeOf(item, step, edition),
  };
}

/** More strips than these would crowd the step out. */
const mostStrips = 2;

/** What the step sets off, and what proves it; gaps are set by their block. */
function tapeOf(item: Item, step: WorkedStep, { division }: BinderEdition): { readonly tape?: Picture } {
  const figures = [step.text, ...step.checks].flatMap((prose) => prose.figures);
  const lengths = figures.flatMap((figure) => (figure.kind === "length" && !figure.gap ? [figure.value] : []));
  const reads = tapeReadings(lengths, mostStrips);
  if (reads.length === 0) return {};
  const id = `${item.slug}-step-${step.number}-tape`;
  return { tape: pictureOf(drawTape(id, `${item.title}, step ${step.number}`, reads, division)) };
}

/** Panels and assemblies that other sections make, those that hold most first, then the pieces that are left. */
function piecesOf(item: Item, section: WorkedSection, step: WorkedStep): string[] {
  const left = new Set(step.shown);
  const kits = item.sections
    .flatMap(({ makes }) => (makes && makes.kind !== section.makes?.kind ? [makes] : []))
    .flatMap(({ kind, panels }) =>
      panels.map((name) => {
        const members = item.members.filter((m) => m.panel === name || m.assembly === name).map(({ id }) => id);
        return { kind, members };
      }),
    )
    .sort((a, b) => b.members.length - a.members.length);
  const whole = kits.filter(({ members }) => {
    if (!members.every((id) => left.has(id))) return false;
    for (const id of members) left.delete(id);
    return true;
  });
  return [...countNames(whole.map(({ kind }) => kind)), ...countNames([...left].map((id) => markOf(item, id)))];
}

function markOf(item: Item, id: string): string {
  const member = item.members.find((one) => one.id === id);
  if (!member) throw new Error(`step names a member that is not there: ${id}`);
  return member.mark;
}

/** A check or a caution is written after its word and a colon; here it stands as a sentence of its own. */
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "2 × A", "3 × B", in the order of their names. */
function countNames(names: readonly string[]): string[] {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].sort(([a], [b]) => (a < b ? -1 : 1)).map(([name, count]) => `${count} × ${name}`);
}
