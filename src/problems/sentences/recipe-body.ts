// The sentences of problems in a recipe's text: headings, steps, figures.
import type { Sentence } from "../sentences.ts";
import { near, quoted } from "./words.ts";

export const bodySentences = {
  "figure-open": (f: { found: string; again: boolean }) => ({
    says: `The brace in "${f.found}" is ${f.again ? "opened again before it is closed" : "not closed on its line"}.`,
    found: f.found,
    expected: "a figure such as {gap of rails}",
    mend: f.again ? "Write one { and one } for each figure." : "Close it with } on the same line.",
  }),
  "figure-never-opened": (f: { found: string }) => ({
    says: `The } after "${f.found.slice(0, -1)}" closes nothing.`,
    found: f.found,
    expected: "a { before each }",
    mend: "Take the } out, or write { before the figure.",
  }),
  "figure-empty": (_: Record<never, never>) => ({
    says: "Nothing stands between these braces.",
    found: "{}",
    expected: "a figure such as {gap of rails}",
    mend: "Write what is to be worked out, or take the braces out.",
  }),
  "bare-figure": (f: { found: string; plain: string; figure: string; same: boolean }) => ({
    says: `"${f.found}" is typed in: it will go stale when a size changes.`,
    found: f.found,
    expected: `a figure that is worked out, such as {${f.figure}}`,
    mend: f.same
      ? `Write {${f.figure}}, which is the same now, if that is meant, or {${f.plain}} if it never changes.`
      : `Write what it is between braces, or {${f.plain}} if it never changes.`,
  }),
  "sign-not-for-prose": (f: { found: string }) => ({
    says: `The sign ${f.found} has no place in this text.`,
    found: f.found,
    expected: "plain letters, digits and stops",
    mend: "Write it another way.",
  }),
  "link-in-prose": (_: Record<never, never>) => ({
    says: "A link or a picture stands in the text, but every page is complete in itself and leads nowhere else.",
    found: "a link or a picture",
    expected: "words",
    mend: "Write in words what the link leads to.",
  }),
  "heading-level": (f: { sharps: number }) => ({
    says: `This heading has ${f.sharps} # before it; sections have two, and the title stands between the --- lines.`,
    found: "#".repeat(f.sharps),
    expected: "## and the name of the section",
    mend: "Write ## before the heading, or make it a paragraph.",
  }),
  "heading-empty": (_: Record<never, never>) => ({
    says: "This heading has no words.",
    found: "##",
    expected: "## and the name of the section",
    mend: "Say what is done in the section.",
  }),
  "not-prose": (f: { found: string }) => ({
    says: `Here stands ${f.found}, which the sheets do not print.`,
    found: f.found,
    expected: "paragraphs, ## headings and numbered steps",
    mend: "Write paragraphs, or number the lines 1. 2. 3. if they are steps.",
  }),
  "step-outside-section": (_: Record<never, never>) => ({
    says: "Steps stand here before the first heading.",
    expected: "a heading such as ## Stand it up above the steps",
    mend: "Write a ## heading above them.",
  }),
  "step-empty": (f: { number: number }) => ({
    says: `Step ${f.number} says nothing.`,
    found: `${f.number}.`,
    expected: "one thing to do",
    mend: "Say what is done, or take the number out.",
  }),
  "step-in-step": (f: { number: number }) => ({
    says: `A list stands inside step ${f.number}.`,
    expected: "one idea a step",
    mend: "Move its lines to the left, so that each is a step of its own.",
  }),
  "step-indent": (f: { number: number }) => ({
    says: `A text below step ${f.number} is pushed in too far, so it reads as program text.`,
    expected: "as many blanks as stand before the step's first word",
    mend: "Line it up with the first word of the step.",
  }),
  "step-second-paragraph": (f: { number: number }) => ({
    says: `Step ${f.number} has a second paragraph that is neither a check nor a caution.`,
    expected: 'one paragraph a step, then paragraphs that start "Check:" or "Caution:"',
    mend: "Make it a step of its own, or start it with Check: or Caution:.",
  }),
  "proof-outside-step": (f: { word: string }) => ({
    says: `This paragraph starts "${f.word}:", but it does not stand under a step's words.`,
    found: `${f.word}:`,
    expected: "the paragraph below its step, pushed in to line up with the step's words",
    mend: "Put it below the step it belongs to, with three blanks before it.",
  }),
  "proof-in-paragraph": (f: { word: string }) => ({
    says: `"${f.word}:" starts a line but no paragraph, so it would be printed as part of the step.`,
    found: `${f.word}:`,
    expected: "an empty line above it",
    mend: "Leave a line empty above it.",
  }),
  "makes-runs-on": (f: { found: string }) => ({
    says: `The line that says what the section makes runs on into "${f.found}".`,
    found: f.found,
    expected: "an empty line below it",
    mend: "Leave a line empty below it.",
  }),
  "makes-unknown": (f: { found: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `There is no panel called "${f.found}" to make.`,
    found: f.found,
    expected: f.known.length > 0 ? `one of ${quoted(f.known)}` : "a name under panels",
    ...near(f.nearest),
    mend:
      f.nearest === undefined
        ? "Name a panel, or take the line out if the section builds the thing itself."
        : `Write "${f.nearest}".`,
  }),
  "makes-without-steps": (f: { panel: string; form: string }) => ({
    says: `This section makes "${f.panel}" but has no step.`,
    found: f.panel,
    expected: `numbered steps below "${f.form}"`,
    mend: "Write the steps, or take the line out.",
  }),
} satisfies Record<string, (facts: never) => Sentence>;
