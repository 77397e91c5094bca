// A text -> its words with their columns, and a reader that goes through them one by one.
import type { Place, Written } from "../problems/place.ts";
import { further } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";
import type { Only, PieceKind, Reference } from "./recipe.ts";

/** How something is written, and what it means in one sentence. The guide and the problems print the same words. */
export type Form = { readonly form: string; readonly means: string; readonly example: string };

/** What a reading gathers beside its result: problems, and the names used, which are checked once all are known. */
export type Gathered = {
  readonly problems: Problem[];
  readonly sizes: Written[];
  readonly references: { readonly reference: Reference; readonly measured: boolean }[];
  readonly onlys: Only[];
  /** Pieces that lines say for themselves. */
  readonly ownPieces: PieceKind[];
  /** What the buyer reads, each text with its lines in their places. */
  readonly told: (readonly Written[])[];
  /** Numbers typed into the text; what could stand there instead is known when the whole recipe is read. */
  readonly bares: { readonly at: Place; readonly found: string; readonly plain: string }[];
};
export const gathered = (): Gathered => ({
  ...{ problems: [], sizes: [], references: [], onlys: [] },
  ...{ ownPieces: [], told: [], bares: [] },
});

/** Ends the reading of one clause; the rest of the recipe is read on. */
export class Refused extends Error {
  readonly problem: Problem;
  constructor(why: Problem) {
    super(why.says);
    this.problem = why;
  }
}

export function refuse(why: Problem): never {
  throw new Refused(why);
}

/** What `read` gives, or undefined with its one problem noted. */
export function attempt<T>(problems: Problem[], read: () => T): T | undefined {
  try {
    return read();
  } catch (thrown) {
    if (!(thrown instanceof Refused)) throw thrown;
    problems.push(thrown.problem);
    return undefined;
  }
}

/** The parts between the signs, blanks around them left out; an empty part stands where its first letter would. */
export function split(whole: Written, sign: "," | ";"): Written[] {
  const parts: Written[] = [];
  let start = 0;
  for (const part of whole.text.split(sign)) {
    const lead = part.length - part.trimStart().length;
    parts.push({ text: part.trim(), at: further(whole.at, start + (part.trim() === "" ? 0 : lead)) });
    start += part.length + 1;
  }
  return parts;
}

/** Blanks part words; brackets and commas are words of their own. */
export function wordsOf(whole: Written): Written[] {
  return [...whole.text.matchAll(/[(),]|[^\s(),]+/g)].map((m) => ({ text: m[0], at: further(whole.at, m.index) }));
}

export class Scan {
  readonly whole: Written;
  readonly form: Form;
  readonly gathered: Gathered;
  readonly words: readonly Written[];
  /** How many words have been read. */
  read = 0;

  constructor(whole: Written, form: Form, into: Gathered) {
    this.whole = whole;
    this.form = form;
    this.gathered = into;
    this.words = wordsOf(whole);
  }

  get done(): boolean {
    return this.read >= this.words.length;
  }

  /** The place of the next word, or just after the last one. */
  get here(): Place {
    return this.words[this.read]?.at ?? further(this.whole.at, this.whole.text.length);
  }

  peek(ahead = 0): string | undefined {
    return this.words[this.read + ahead]?.text;
  }

  take(): Written {
    const word = this.words[this.read];
    if (!word) throw new Error(`read past the end of "${this.whole.text}"`);
    this.read++;
    return word;
  }

  /** Whether the next words are these. */
  is(...texts: readonly string[]): boolean {
    return texts.every((text, i) => this.peek(i) === text);
  }

  /** Reads these words if they are next. */
  skip(...texts: readonly string[]): boolean {
    const there = this.is(...texts);
    if (there) this.read += texts.length;
    return there;
  }

  /** Reads these words, or refuses the text. */
  must(...texts: readonly string[]): void {
    for (const text of texts) if (!this.skip(text)) this.wants(`"${text}"`);
  }

  /** Refuses the text if a word is left. */
  end(): void {
    if (!this.done) this.wants("nothing more");
  }

  /** The source text from the word numbered `first` up to the last word read. */
  textFrom(first: number): string {
    const start = this.words[first];
    const last = this.words[this.read - 1];
    if (!start || !last) return "";
    const from = start.at.column - this.whole.at.column;
    return this.whole.text.slice(from, last.at.column - this.whole.at.column + last.text.length);
  }

  /** Refuses the text: `what` should stand where the reader is. */
  wants(what: string, nearest?: string): never {
    const { form, means } = this.form;
    const facts = { whole: this.whole.text, found: this.peek() ?? "", wants: what, form, means, nearest };
    return refuse(problem("form-broken", this.here, facts));
  }
}
