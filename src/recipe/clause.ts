// A clause's text -> the clause; what it can't be is told with the nearest that it could be.
import { nearest } from "../problems/nearest.ts";
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import { sides } from "../units/side.ts";
import { type ClauseForm, clauseForms } from "./clause-forms.ts";
import { saidHere } from "./clause-synonyms.ts";
import type { Clause } from "./recipe.ts";
import { attempt, type Gathered, gathered, refuse, Scan, wordsOf } from "./scan.ts";
import { isSide } from "./sum.ts";

/** The clause, or undefined with its problem gathered. */
export function readClause(whole: Written, into: Gathered): Clause | undefined {
  return attempt(into.problems, () => {
    const words = wordsOf(whole).map((word) => word.text);
    const form = findForm(words);
    if (form) return readAs(form, whole, into);
    const here = saidHere(words.join(" "));
    const meant = here !== undefined && isClause({ text: here, at: whole.at }) ? here : undefined;
    const like = formsLike(here === undefined ? words : here.split(" "));
    const facts = { found: whole.text, nearest: meant ?? mended(words), like };
    return refuse(problem("unknown-clause", whole.at, facts));
  });
}

/** Whether the text reads as a whole clause. */
export const isClause = (whole: Written): boolean => {
  const form = findForm(wordsOf(whole).map((word) => word.text));
  return form !== undefined && attempt([], () => readAs(form, whole, gathered())) !== undefined;
};

const findForm = (words: readonly string[]): ClauseForm | undefined => clauseForms.find((form) => form.fits(words));

function readAs(form: ClauseForm, whole: Written, into: Gathered): Clause {
  const scan = new Scan(whole, form, into);
  const body = form.read(scan);
  scan.end();
  return { ...body, at: whole.at, text: whole.text };
}

/** Every word that clauses are made of. */
const clauseWords: readonly string[] = [
  ...new Set(clauseForms.flatMap((form) => form.form.match(/\b[a-z]{2,}\b/g) ?? [])),
];

/** More words than this are not worth guessing at. */
const mostGuessed = 14;

/** The clause with one word written as the nearest word that clauses use, if it can be read then. */
function mended(words: readonly string[]): string | undefined {
  if (words.length > mostGuessed) return undefined;
  for (const [i, word] of words.entries()) {
    const near = word.length > 1 ? nearest(word, clauseWords) : undefined;
    if (near === undefined || near === word) continue;
    const text = words.with(i, near).join(" ");
    if (isClause({ text, at: { file: "", line: 1, column: 1 } })) return text;
  }
  return undefined;
}

/** The words a form always has, `SIDE` among them for any side. */
const fixedWords = (form: ClauseForm): readonly string[] => [...new Set(form.form.match(/\b[a-z]{2,}\b|SIDE/g))];

/** The forms that share most words with the text, those with the fewest others first; at most three. */
function formsLike(words: readonly string[]): readonly string[] {
  const near = words.map((word) => nearest(word, [...clauseWords, ...sides]) ?? word);
  const has = (word: string): boolean => (word === "SIDE" ? near.some(isSide) : near.includes(word));
  const scored = clauseForms.map((form) => {
    const all = fixedWords(form);
    const shared = all.filter(has).length;
    return { form: form.form, shared, others: all.length - shared };
  });
  const like = scored.filter(({ shared }) => shared > 0).sort((a, b) => b.shared - a.shared || a.others - b.others);
  return (like.length > 0 ? like : scored.filter(({ form }) => /^(from|between|spread A|at)/.test(form)))
    .slice(0, 3)
    .map(({ form }) => form);
}
