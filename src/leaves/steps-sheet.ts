// Worked-out sections -> numbered steps as they are read at the bench, each with its picture, pieces, fasteners and cautions.
import { drawStep } from "../drawing/step-picture.ts";
import { cautionsFor } from "../findings/cautions.ts";
import { fastenerPlaces } from "../findings/fastener-places.ts";
import { stepOperations } from "../findings/operations.ts";
import type { Item, WorkedSection, WorkedStep } from "../item/item.ts";
import { type Edition, setFractions } from "./edition.ts";
import { fastenerWords } from "./fastener-words.ts";
import type { CautionText, Markup, Picture } from "./leaf.ts";
import { pictureOf } from "./picture.ts";
import { proseBlock, proseLine } from "./prose.ts";

export type StepSection = {
  readonly heading: Markup;
  /** "Make it twice.", where the section builds a panel more than once. */
  readonly times?: string;
  readonly steps: readonly StepText[];
  /** Private notes of the shop. */
  readonly notes: readonly Markup[];
};

export type StepText = {
  readonly number: string;
  readonly text: Markup;
  /** "2 × A", by mark; what was made on the bench in a section of its own comes first, as a whole: "2 × end". */
  readonly pieces: readonly string[];
  /** "24 × pocket screw No. 6 x 1". */
  readonly fasteners: readonly string[];
  /** Where they go, and the bits for their lead holes. */
  readonly places: readonly string[];
  readonly picture?: Picture;
  readonly checks: readonly Markup[];
  /** The maker's own words, then the usual ones that this step's work calls for; those told before in the section in short. */
  readonly words: readonly Markup[];
  readonly cautions: readonly CautionText[];
};

export const stepsSheet = (item: Item, edition: Edition): StepSection[] =>
  item.sections.map((section) => ({
    heading: proseLine(section.heading, edition.figure),
    ...(section.makes && section.makes.times > 1 ? { times: `Make ${section.makes.times}, each by these steps.` } : {}),
    steps: stepTexts(item, section, edition),
    notes: section.notes.map((note) => proseBlock(note, edition.figure)),
  }));

/** A caution stands in full where its section calls for it first; from then on in every step by its step and its avoidance. */
function stepTexts(item: Item, section: WorkedSection, edition: Edition): StepText[] {
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

function stepText(item: Item, section: WorkedSection, step: WorkedStep, edition: Edition): Omit<StepText, "cautions"> {
  const blocks = (all: WorkedStep["checks"]): Markup[] =>
    all.map((one) => proseLine({ ...one, markdown: capital(one.markdown) }, edition.figure));
  return {
    number: String(step.number),
    text: proseLine(step.text, edition.figure),
    pieces: piecesOf(item, section, step),
    fasteners: countNames(step.joins.flatMap((join) => join.driven.map(({ fastener }) => setFractions(fastener.name)))),
    places: fastenerPlaces(item, step.joins).map((spots) => fastenerWords(spots, edition.length)),
    ...(step.shown.length + step.there.length === 0 ? {} : { picture: pictureOf(drawStep(item, step)) }),
    checks: blocks(step.checks),
    words: blocks(step.cautions),
  };
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
