// A text that a buyer may read -> the words in it that nobody can prove, each with what to write instead.
import { further, type Place, type Written } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";

/** What the maker has evidence for: then it may be said. */
export type Proven = { readonly child: boolean; readonly food: boolean };

export type Unprovable = { readonly index: number; readonly found: string; readonly instead: string };

type Rule = { readonly words: string; readonly instead: string; readonly unless?: keyof Proven };

/**
 * Rules of the United States on what may be claimed: 16 CFR 260 (green claims), 16 CFR 323 (made in USA), 16 CFR 701 and 702
 * (guarantees). The rest is what no workshop can show of one piece of wood: common practice, no source.
 */
const rules: readonly Rule[] = [
  {
    words:
      "(?:never|won['’]?t|will not|can['’]?t|cannot) (?:ever )?(?:rot|decay|warp|crack|split|fade|rust)s?|(?:rot|decay|warp|rust|fade|weather|water|insect|bug|pest|mould|mold|fire|flame)[- ]?proof|rot[- ]free",
    instead: "Say which wood and which finish it is, and how the buyer looks after it.",
  },
  {
    words:
      "lasts? (?:you )?(?:for ?ever|a lifetime|for life|for generations|for decades)|for ?ever lasting|everlasting|indestructible|unbreakable|(?:never|won['’]?t) (?:break|wear out|fail)s?",
    instead: "Say what it is made of and how it is joined, or for how many years you mend it free.",
  },
  {
    words:
      "(?:no|zero) maintenance|maintenance[- ]free|care[- ]free|never needs (?:care|painting|oil|oiling|attention)",
    instead: "Say what has to be done to it, and how often.",
  },
  {
    words: "life ?time (?:guarantee|warranty)|guaranteed(?: for life)?",
    instead: "Say what you do if it fails, and for how many years.",
  },
  {
    words: "(?:child|kid|baby|toddler)[- ](?:safe|proof|friendly)|safe for (?:all )?(?:children|kids|babies|toddlers)",
    instead: 'Say whom it is for under "for", and write what shows it under "evidence".',
    unless: "child",
  },
  {
    words: "food[- ]safe|safe for food|food contact safe",
    instead: 'Name the finish, or write which test shows it under "evidence: food".',
    unless: "food",
  },
  {
    words:
      "non[- ]?toxic|toxin[- ]free|chemical[- ]free|(?:100|hundred) ?(?:%|per ?cent) (?:safe|natural|organic)|(?:completely|perfectly|totally|absolutely) safe|pet[- ]safe|bee[- ]safe",
    instead: "Name the wood and the finish; the buyer can look those up.",
  },
  {
    words:
      "eco(?:[- ]?friendly|[- ]?conscious|logical(?:ly)?)?|environment(?:ally)?[- ]friendly|planet[- ]friendly|earth[- ]friendly|sustainabl[ey]|carbon[- ]neutral|climate[- ]neutral|green product",
    instead: "Say the fact behind it: which wood, from where, what is left out.",
  },
  {
    words: "made in (?:the )?(?:usa|u\\.s\\.a?\\.?|us|united states|america)|american[- ]made",
    instead: "Name the town where it is made; a claim of origin holds only if all or nearly all of it is from there.",
  },
  {
    words: "(?:never|can['’]?t|won['’]?t|will not) tip(?:s|ped)?(?: over)?|tip[- ]?proof",
    instead: "Say how wide it stands and that it has to be fastened to a wall, if it has.",
  },
  {
    words: "anti[- ]?bacterial|germ[- ]free|hypo[- ]?allergenic|medical grade|certified|approved by",
    instead: "Leave it out, or name the test report in your own papers and say what was measured.",
  },
];

const compiled = rules.map((rule) => ({
  ...rule,
  sign: new RegExp(
    `(?<![\\p{L}\\p{N}])(?:${rule.words.replaceAll("[- ]", "[-\\s]").replaceAll(" ?", "\\s*").replaceAll(" ", "\\s+")})(?![\\p{L}\\p{N}])`,
    "giu",
  ),
}));

/** "It is not waterproof" promises nothing. */
const denied = /(?:\b(?:not|nor|neither|isn['’]t|aren['’]t|no)\s+(?:\p{L}+\s+)?)$/iu;

export function findUnprovable(text: string, proven: Proven): Unprovable[] {
  return compiled
    .filter(({ unless }) => unless === undefined || !proven[unless])
    .flatMap(({ sign, instead }) =>
      [...text.matchAll(sign)]
        .filter(({ index }) => !denied.test(text.slice(0, index)))
        .map((match) => ({ index: match.index, found: match[0].replace(/\s+/g, " "), instead })),
    )
    .sort((a, b) => a.index - b.index);
}

const nothing: Proven = { child: false, food: false };

/** A problem for each such word, at its place; a text of several lines is read as one. */
export function checkUnprovable(texts: readonly (readonly Written[])[], proven: Proven = nothing): Problem[] {
  return texts.flatMap((lines) =>
    findUnprovable(lines.map(({ text }) => text).join("\n"), proven).map(({ index, found, instead }) =>
      problem("unprovable", placeIn(lines, index), { found, instead }),
    ),
  );
}

/** The same of values that stand on one line each, as yard and shop have them. */
export const checkPublicWords = (texts: readonly (Written | undefined)[]): Problem[] =>
  checkUnprovable(texts.flatMap((text) => (text ? [[text]] : [])));

function placeIn(lines: readonly Written[], index: number): Place {
  let left = index;
  for (const { text, at } of lines) {
    if (left <= text.length) return further(at, left);
    left -= text.length + 1;
  }
  throw new Error("a word stands behind the end of its text");
}
