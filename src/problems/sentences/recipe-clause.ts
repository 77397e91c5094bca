// The sentences of problems in a line's words: clauses, sums, references, joins, cuts and coats.
import type { Sentence } from "../sentences.ts";
import { near, quoted, within } from "./words.ts";

export const clauseSentences = {
  "form-broken": (f: {
    whole: string;
    found: string;
    wants: string;
    form: string;
    means: string;
    nearest: string | undefined;
  }) => ({
    says:
      f.found === ""
        ? `"${f.whole}" stops too soon: ${f.wants} should follow.`
        : f.wants === "nothing more"
          ? `"${f.whole}" makes sense only up to "${f.found}".`
          : `"${f.whole}" goes wrong at "${f.found}": ${f.wants} should stand there.`,
    found: f.found,
    expected: `${f.wants}, as in "${f.form}"`,
    ...near(f.nearest),
    mend: `Write it as "${f.form}": ${within(f.means)}.`,
  }),
  "unknown-clause": (f: { found: string; nearest: string | undefined; like: readonly string[] }) => ({
    says: `"${f.found}" is no clause.`,
    found: f.found,
    expected: `a clause such as ${quoted(f.like)}`,
    ...near(f.nearest),
    mend: f.nearest === undefined ? "Say it with one of the clauses of the guide." : `Write "${f.nearest}".`,
  }),
  "clause-twice": (f: { found: string; first: string }) => ({
    says: `"${f.found}" settles again what "${f.first}" already says.`,
    found: f.found,
    expected: "one clause for each thing that is to be settled",
    mend: "Take one of the two out.",
  }),
  "empty-clause": (f: { whole: string }) => ({
    says: `Nothing stands here, between or after the signs that part "${f.whole}".`,
    found: "",
    expected: "a clause on each side of a comma or semicolon",
    mend: "Take the extra comma or semicolon out, or write what is missing.",
  }),
  "clause-first": (f: { found: string; head: string | undefined }) => ({
    says: `The line starts with "${f.found}", so it does not say what it is made of.`,
    found: f.found,
    expected: 'how many of which piece first, as in "2 strip, upright"',
    mend:
      f.head === undefined
        ? `Write the count and the piece first, then ", ${f.found}".`
        : `Write "${f.head}, ${f.found}".`,
  }),
  "line-of-nothing": (f: { found: string }) => ({
    says: f.found === "" ? "Nothing is named here." : `"${f.found}" does not say of what.`,
    found: f.found,
    expected: 'a count and a name, as in "2 strip"',
    mend: "Name what is meant after the count.",
  }),
  "count-in-words": (f: { found: string; instead: string }) => ({
    says: `The count "${f.found}" is in letters.`,
    found: f.found,
    expected: "a count in digits",
    nearest: f.instead,
    mend: `Write "${f.instead}".`,
  }),
  "count-out-of-range": (f: { found: string; most: number }) => ({
    says: `${f.found} is no count that can be made here.`,
    found: f.found,
    expected: `a whole number from 1 to ${f.most}`,
    mend: "Write how many there are.",
  }),
  "bad-length": (f: { found: string; why: string; suggestion: string | undefined }) => ({
    says: `"${f.found}" can't be read as a length: ${f.why}.`,
    found: f.found,
    expected: "a length such as 17 9/16, 1' 6 1/2\" or 450 mm",
    ...near(f.suggestion),
    mend: f.suggestion === undefined ? "Write the length another way." : `Write ${f.suggestion} if that is meant.`,
  }),
  "bad-angle": (f: { found: string; why: string; suggestion: string | undefined }) => ({
    says: `"${f.found}" can't be read as an angle: ${f.why}.`,
    found: f.found,
    expected: "an angle such as 14 deg or 3 in 12",
    ...near(f.suggestion),
    mend: f.suggestion === undefined ? "Write the angle another way." : `Write ${f.suggestion} if that is meant.`,
  }),
  "bad-weight": (f: { found: string }) => ({
    says: `"${f.found}" can't be read as a weight.`,
    found: f.found,
    expected: 'pounds, such as "14 lb" or "6 1/2 lb"',
    mend: 'Write the pounds as a number and "lb" after it.',
  }),
  "sign-needs-blanks": (f: { whole: string; found: string }) => ({
    says: `In "${f.whole}" the sign of "${f.found}" does not stand between blanks, so it is no plus or minus.`,
    found: f.found,
    expected: 'plus and minus signs between blanks, as in "height - 3"',
    mend: `Write it as "${f.found.startsWith("+") ? "+" : "-"}${f.found.length > 1 ? ` ${f.found.slice(1)}` : ""}", with a blank on both sides of the sign.`,
  }),
  "number-has-unit": (f: { whole: string }) => ({
    says: `In "${f.whole}" a size is multiplied or divided by something that has a unit.`,
    found: f.whole,
    expected: 'a plain number, as in "pitch * 2" or "width / 3"',
    mend: "Take the unit out; only plain numbers multiply and divide.",
  }),
  "over-zero": (f: { whole: string }) => ({
    says: `In "${f.whole}" a size is divided by 0.`,
    found: f.whole,
    expected: "a number other than 0",
    mend: "Divide by another number.",
  }),
  "sum-too-long": (f: { most: number }) => ({
    says: `This sum has more than ${f.most} words.`,
    expected: `at most ${f.most} words`,
    mend: "Give parts of it names under sizes.",
  }),
  "unknown-measure": (f: { found: string; measures: readonly string[]; nearest: string | undefined }) => ({
    says: `"${f.found}" is nothing that can be asked of a thing.`,
    found: f.found,
    expected: `one of ${quoted(f.measures)}, or a side`,
    ...near(f.nearest),
    mend: f.nearest === undefined ? 'Write a measure or a side before "of".' : `Write "${f.nearest} of".`,
  }),
  "measure-of-nothing": (f: { measure: string }) => ({
    says: `"${f.measure}" does not say of what.`,
    found: f.measure,
    expected: `"${f.measure} of" and a name`,
    mend: `Write "${f.measure} of" and the name of a line, a panel or a piece.`,
  }),
  "pick-backwards": (f: { from: number; to: number }) => ({
    says: `"${f.from} to ${f.to}" counts backwards.`,
    found: `${f.from} to ${f.to}`,
    expected: `${f.to} to ${f.from}`,
    mend: `Write ${f.to} to ${f.from}; members are numbered from the left, the front or the bottom.`,
  }),
  "member-number": (f: { found: string; most: number }) => ({
    says: `${f.found} is not the number of a member.`,
    found: f.found,
    expected: `a whole number from 1 to ${f.most}`,
    mend: "Count from 1: from the left, the front or the bottom.",
  }),
  "piece-of-nothing": (f: { name: string }) => ({
    says: `The piece "${f.name}" does not say which board it is cut from.`,
    expected: 'the name of a board, as in "fence board, ripped to 2 1/2"',
    mend: "Write the board's name first.",
  }),
  "unknown-working": (f: { found: string }) => ({
    says: `"${f.found}" is nothing that is done to a board here.`,
    found: f.found,
    expected:
      '"ripped to W", "planed to T", "outline NAME", "N plies", "grain crossed", "glued edge to edge to W wide"',
    mend: "Say the width it is ripped to or the thickness it is planed to; its length follows from its place.",
  }),
  "join-count": (f: { found: string; nearest: string | undefined }) => ({
    says: `"${f.found}" does not say how many at each place.`,
    found: f.found,
    expected: '"2 screw No. 6 x 1", "glue", "half-lap" or "let in"',
    ...near(f.nearest),
    mend: f.nearest === undefined ? `Write a number before it, as in "2 ${f.found}".` : `Write "${f.nearest}".`,
  }),
  "unknown-cut": (f: { found: string; kinds: readonly string[]; nearest: string | undefined }) => ({
    says: `"${f.found}" is no cut.`,
    found: f.found,
    expected: `one of ${quoted(f.kinds)}`,
    ...near(f.nearest),
    mend: f.nearest === undefined ? "Start with the kind of cut." : `Write "${f.nearest}".`,
  }),
  "cut-needs": (f: { found: string; missing: string; form: string; example: string }) => ({
    says: `"${f.found}" does not say ${f.missing}.`,
    found: f.found,
    expected: `"${f.form}"`,
    mend: `Write it like "${f.example}".`,
  }),
  "fixed-unknown": (f: { found: string; nearest: string | undefined }) => ({
    says: `"${f.found}" is no size, piece or line that could be kept as it is.`,
    found: f.found,
    expected: "width, depth, height, or names of sizes, pieces and lines, with commas between",
    ...(f.nearest === undefined ? {} : { nearest: f.nearest }),
    mend: "Write the name as it stands in the recipe, or take it out.",
  }),
  "claim-of-what": (f: { found: string }) => ({
    says: `"${f.found}" is nothing that can be claimed.`,
    found: f.found,
    expected: '"width", "depth", "height", "weight" or "MEASURE of NAME"',
    mend: 'Write what is measured, as in "height of trestle".',
  }),
} satisfies Record<string, (facts: never) => Sentence>;
