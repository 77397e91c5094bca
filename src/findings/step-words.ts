// A step's words -> what makes it hard to follow at the bench: too long, more than one thing to do, no verb to start with.
import type { Item, WorkedStep } from "../item/item.ts";

/** Said of one step; how many words it has, how many things it asks for, or the word it starts with. */
export type StepFault = { readonly step: number } & (
  | { readonly kind: "long"; readonly words: number }
  | { readonly kind: "many"; readonly verbs: number }
  | { readonly kind: "no verb"; readonly word: string }
);

/** One idea a step, in fewer words than this (the project's own rule); at most two verbs (IEC/IEEE 82079-1, in our words). */
export const mostWords = 25;
export const mostVerbs = 2;

/** What a maker is told to do. A word that isn't here is noted, never refused. */
const verbs: ReadonlySet<string> = new Set(
  `align apply arrange assemble attach back bend bevel bolt bore bring brush build carry centre chamfer check chisel clamp clean close
  coat come countersink cover cross crosscut cut dip do dowel draw drill drive drop dry ease edge even fasten feed file fill fit fix flip
  flush fold glue go grip hammer hang hold hook insert join joint keep knock knot label lash lay lean leave let level lift line load
  lock loosen lower make mark match measure mitre mix mount nail notch oil open paint paste pencil pin place plane plug poke position
  press prop pull punch push put raise reach ream rebate remove repeat rest rip roll rotate round rout rub run sand saw scrape screw
  scribe seal seat set shape sharpen shim slide slip slot smooth space splice split spread square stack stain stand staple start
  stop stretch string strike sweep swing take tap tape taper test thread tie tighten tilt trace trim try turn twist varnish vary wait
  wash wax wedge weigh wet whittle wind wipe work wrap write`.split(/\s+/),
);

/** Words that also tell how a piece lies; within a sentence that is what they do: "level with the tops". */
const alsoHow: ReadonlySet<string> = new Set([
  "level",
  "even",
  "square",
  "dry",
  "open",
  "close",
  "lower",
  "clean",
  "flush",
]);

/** Figures count as a word, stress marks as none. */
const plainText = (markdown: string): string => markdown.replace(/⟦\d+⟧/g, "0").replace(/[*_]/g, "");

const wordsOf = (text: string): string[] => text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word));

/** First words of sentences and of what commas, colons, "and" and "then" part. */
function startsOf(text: string): string[] {
  const clauses = text.split(/[.;:,!?](?:\s+|$)|\s(?:and|then|or)\s/);
  return clauses.flatMap((clause) => wordsOf(clause.replace(/^(?:and|then|or|now|again|first)\s+/i, ""))[0] ?? []);
}

const bare = (word: string): string => word.toLowerCase().replace(/[^\p{L}]/gu, "");
const isVerb = (word: string): boolean => verbs.has(bare(word));

export function stepFaults(step: WorkedStep): StepFault[] {
  const text = plainText(step.text.markdown);
  const words = wordsOf(text).length;
  const [first = "", ...others] = startsOf(text);
  const said = [first, ...others.filter((word) => !alsoHow.has(bare(word)))].filter(isVerb).length;
  return [
    ...(isVerb(first) ? [] : [{ step: step.number, kind: "no verb", word: first } as const]),
    ...(words < mostWords ? [] : [{ step: step.number, kind: "long", words } as const]),
    ...(said <= mostVerbs ? [] : [{ step: step.number, kind: "many", verbs: said } as const]),
  ];
}

export const allStepFaults = (item: Item): StepFault[] =>
  item.sections.flatMap(({ steps }) => steps.flatMap(stepFaults));
