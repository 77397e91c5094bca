// The sentences of the recipe stage's problems, one for each code.
import type { Sentence } from "../sentences.ts";
import { bodySentences } from "./recipe-body.ts";
import { clauseSentences } from "./recipe-clause.ts";
import { near, quoted } from "./words.ts";

const newer = (f: { found: string; known: number }): boolean => Number(f.found) > f.known;

export const recipeSentences = {
  ...clauseSentences,
  ...bodySentences,
  "recipe-too-long": (f: { letters: number; most: number }) => ({
    says: `This file has ${f.letters} letters; a recipe has at most ${f.most}.`,
    found: String(f.letters),
    expected: `at most ${f.most} letters`,
    mend: "Split it into two recipes, or take out what is no recipe.",
  }),
  "too-many-lines": (f: { key: string; lines: number; most: number }) => ({
    says: `Under "${f.key}" stand ${f.lines} lines; at most ${f.most} are read.`,
    found: String(f.lines),
    expected: `at most ${f.most} lines`,
    mend: "Use one line for all members that are alike, or split the recipe.",
  }),
  "hidden-character": (f: { character: string; named: string; before: string }) => ({
    says: `There is ${f.named} (${f.character}) ${f.before === "" ? "at the start of this line" : `after "${f.before}"`}; it has no place in a recipe.`,
    found: f.character,
    expected: "only letters and signs that show",
    mend: "Delete it: put the cursor there, take away the letters on both sides and type them again.",
  }),
  "no-front-matter": (f: { found: string }) => ({
    says:
      f.found === ""
        ? "The file does not start with a line ---."
        : `The file starts with "${f.found}", not with a line ---.`,
    found: f.found,
    expected: "a line --- , then the lines that say what the thing is, then another line ---",
    mend: "Write --- as the first line and --- again above the text for the buyer.",
  }),
  "front-matter-open": (_: Record<never, never>) => ({
    says: "The line --- at the top is never followed by a second one, so the text can't be told from the sizes.",
    expected: "a line --- below the last line that says what the thing is",
    mend: "Write --- on a line of its own above the text for the buyer.",
  }),
  "value-over-lines": (f: { found: string }) => ({
    says: `What starts with "${f.found}" runs over more than one line.`,
    found: f.found,
    expected: "one value a line",
    mend: "Put it all on one line, or make two lines with two names of it.",
  }),
  "title-without-letters": (f: { found: string }) => ({
    says: `The title "${f.found}" has no letter or digit that a file name could be made of.`,
    found: f.found,
    expected: "a title with letters a to z or digits in it",
    mend: "Give the thing a name in letters, such as Windfall bin.",
  }),
  "title-too-long": (f: { letters: number; most: number }) => ({
    says: `The title has ${f.letters} letters; at most ${f.most} fit on a label.`,
    found: String(f.letters),
    expected: `at most ${f.most} letters`,
    mend: "Shorten it, and say the rest in the purpose.",
  }),
  "unknown-format": (f: { found: string; known: number }) => ({
    says: `This recipe says that it is of format ${f.found}; format ${f.known} is the one that is read here.`,
    found: f.found,
    expected: `format ${f.known}, or no format line`,
    mend: newer(f)
      ? "Build it with the newer release that it was written for, or take what is new out of it and the format line too."
      : "Take the line out if the recipe is new; else build it with the release that knows its format.",
  }),
  "yes-or-no": (f: { found: string; nearest: string | undefined }) => ({
    says: `"${f.found}" is neither yes nor no.`,
    found: f.found,
    expected: "yes or no",
    ...near(f.nearest),
    mend: "Write yes to keep the recipe off the store, or no.",
  }),
  "unknown-class": (f: { found: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `"${f.found}" is not a hazard class.`,
    found: f.found,
    expected: `letters with blanks between, out of ${f.known.join(", ")}`,
    ...near(f.nearest),
    mend: f.nearest === undefined ? "Write the letters that fit the thing." : `Write "${f.nearest}".`,
  }),
  "class-twice": (f: { found: string }) => ({
    says: `The class ${f.found} stands here a second time.`,
    found: f.found,
    expected: "each class once",
    mend: `Take one ${f.found} out.`,
  }),
  "bad-name": (f: { name: string; instead: string | undefined }) => ({
    says: f.name === "" ? "A name is missing before the colon." : `"${f.name}" can't be a name.`,
    found: f.name,
    expected: "letters a to z, digits and hyphens, a letter first",
    ...near(f.instead),
    mend: f.instead === undefined ? "Give it such a name." : `Write "${f.instead}".`,
  }),
  "reserved-name": (f: { name: string }) => ({
    says: `"${f.name}" can't be a name, because it has a meaning of its own in clauses and sums.`,
    found: f.name,
    expected: "a word that neither places nor measures",
    mend: `Give it a name that says more, such as "${f.name}-board" or what it is called at the bench.`,
  }),
  "name-twice": (f: { name: string; what: string; line: number }) => ({
    says: `"${f.name}" is already the name of ${f.what} on line ${f.line}.`,
    found: f.name,
    expected: "a name of its own",
    mend: "Give one of the two another name.",
  }),
  "sizes-in-a-circle": (f: { circle: readonly string[] }) => ({
    says:
      f.circle.length === 2
        ? `The size "${f.circle[0]}" follows from itself.`
        : `These sizes follow from each other in a circle: ${f.circle.join(", then ")}.`,
    found: f.circle.join(", "),
    expected: "sizes that start from a length",
    mend: "Give one of them a length of its own.",
  }),
  "no-size-called": (f: { found: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `There is no size called "${f.found}".`,
    found: f.found,
    expected: `a length or one of ${quoted(f.known)}`,
    ...near(f.nearest),
    mend:
      f.nearest === undefined
        ? `Add "${f.found}: …" under sizes, or write a length.`
        : `Write "${f.nearest}", or add "${f.found}: …" under sizes.`,
  }),
  "hyphen-for-minus": (f: { found: string; apart: string }) => ({
    says: `"${f.found}" reads as one name, because a minus stands between blanks.`,
    found: f.found,
    expected: f.apart,
    mend: `Write ${f.apart}.`,
  }),
  "thing-as-size": (f: { found: string }) => ({
    says: `"${f.found}" is a thing, not a size.`,
    found: f.found,
    expected: `a measure or a side of it, such as "width of ${f.found}" or "top of ${f.found}"`,
    mend: `Say which measure or side is meant: write "width of ${f.found}", "top of ${f.found}" or the like.`,
  }),
  "no-such-piece": (f: {
    found: string;
    allowed: readonly string[];
    nearest: string | undefined;
    inPanel: boolean;
  }) => ({
    says: `There is no piece ${f.inPanel ? "" : "or panel "}called "${f.found}".`,
    found: f.found,
    expected: f.allowed.length > 0 ? `one of ${quoted(f.allowed)}` : "a name under pieces",
    ...near(f.nearest),
    mend:
      f.nearest === undefined
        ? `Add "${f.found}: …" under pieces, name a piece that is there, or write "of ${f.found}" if that is a board.`
        : `Write "${f.nearest}".`,
  }),
  "panel-in-panel": (f: { found: string }) => ({
    says: `"${f.found}" is a panel, and a panel is made of pieces only.`,
    found: f.found,
    expected: "a name under pieces",
    mend: "Name a piece here; panels take their places under stand.",
  }),
  "no-such-name": (f: { found: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `Nothing here is called "${f.found}".`,
    found: f.found,
    expected: f.known.length > 0 ? `one of ${quoted(f.known)}` : "the name of a line or a panel",
    ...near(f.nearest),
    mend: f.nearest === undefined ? "Name a line or a panel of this recipe." : `Write "${f.nearest}".`,
  }),
  "piece-as-place": (f: { found: string; lines: readonly string[] }) => ({
    says: `"${f.found}" is a kind of piece; it does not say which of the lines made of it is meant.`,
    found: f.found,
    expected: f.lines.length > 0 ? `the name of a line, such as ${quoted(f.lines)}` : "the name of a line",
    mend: "Name the line.",
  }),
  "no-such-scheme": (f: { found: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `The choice "${f.found}" is not written under finish.`,
    found: f.found,
    expected: f.known.length > 0 ? `one of ${quoted(f.known)}` : "a name under finish",
    ...near(f.nearest),
    mend:
      f.nearest === undefined
        ? `Add "${f.found}: …" under finish.`
        : `Write "${f.nearest}", or add "${f.found}: …" under finish.`,
  }),
  "evidence-says-nothing": (f: { kind: string; found: string }) => ({
    says:
      f.found.trim() === ""
        ? `Nothing stands after "${f.kind}" under evidence.`
        : `"${f.found}" under evidence names no test of the ${f.kind} and no reason.`,
    found: f.found,
    expected: "which test, when and by whom, or why none is due",
    mend: "Write what was done and what came out, or take the line out until it is done.",
  }),
  unprovable: (f: { found: string; instead: string }) => ({
    says: `Nobody can prove "${f.found}" to a buyer.`,
    found: f.found,
    expected: "what can be measured, seen or looked up",
    mend: f.instead,
  }),
  "offered-twice": (f: { found: string }) => ({
    says: `"${f.found}" is offered a second time.`,
    found: f.found,
    expected: "each choice once",
    mend: "Take one of the two out.",
  }),
} satisfies Record<string, (facts: never) => Sentence>;
