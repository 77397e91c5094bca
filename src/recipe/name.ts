// Which words can be names: letters, digits and hyphens, but never a word that places or measures.
import type { Written } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";

const placing =
  "left right front back bottom top floor middle between from to on under against above below behind with";
const choosing = "each all odd even last rest none and the half both ends edges edge";
const lying = "fit upright level flat centred loose mirrored good side makes every up down forward long deep plus";
const measuring = "width depth height thickness length gap diagonal weight count area at in of deg mm cm ft lb x";

/** Words that have a meaning of their own in clauses and sums. */
export const reservedWords: ReadonlySet<string> = new Set(
  [placing, choosing, lying, measuring].flatMap((words) => words.split(" ")),
);

const nameShape = /^[A-Za-z][A-Za-z0-9-]*$/;

/** Whether the word is a name in a clause or a sum. */
export const isName = (word: string | undefined): word is string =>
  word !== undefined && nameShape.test(word) && !reservedWords.has(word);

/** What is wrong with a name the maker gives, if anything. */
export function checkName(name: Written): Problem | undefined {
  if (reservedWords.has(name.text)) return problem("reserved-name", name.at, { name: name.text });
  if (nameShape.test(name.text)) return undefined;
  const instead = name.text
    .trim()
    .replace(/[^A-Za-z0-9]+/g, "-")
    .replace(/^[^A-Za-z]+|-+$/g, "");
  return problem("bad-name", name.at, { name: name.text, instead: isName(instead) ? instead : undefined });
}
