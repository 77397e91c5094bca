// The sentences of choices, of what is put on the thing, and of formats.
import type { Sentence } from "../sentences.ts";
import { near, quoted } from "./words.ts";

export const choiceSentences = {
  "choice-count": (f: { choice: string; count: number; only: string | undefined; most: number }) => ({
    says:
      f.count === 0
        ? `The choice "${f.choice}" has no values, so there is no standard one.`
        : f.count === 1
          ? `The choice "${f.choice}" has only "${f.only}" to choose.`
          : `The choice "${f.choice}" has ${f.count} values.`,
    found: String(f.count),
    expected: `two to ${f.most} values, the standard one first`,
    mend:
      f.count > f.most
        ? "Make two recipes of it."
        : `Write its values with commas between, the standard one first, or a line for each; or take the choice out.`,
  }),
  "choice-value-name": (f: { found: string; instead: string | undefined }) => ({
    says: `"${f.found}" can't be the name of a value.`,
    found: f.found,
    expected: "letters a to z, digits and hyphens",
    ...near(f.instead),
    mend: f.instead === undefined ? "Give it such a name." : `Write "${f.instead}".`,
  }),
  "choice-of-no-size": (f: { found: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `This value sets "${f.found}", and there is no such size.`,
    found: f.found,
    expected: `one of ${quoted(f.known)}, or BOARD is BOARD`,
    ...near(f.nearest),
    mend:
      f.nearest === undefined
        ? `Write it once under sizes with its standard, then let the choice change it.`
        : `Write "${f.nearest}", or add "${f.found}: …" under sizes.`,
  }),
  "choice-of-no-board": (f: { found: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `This value changes "${f.found}", and nothing here is cut from that.`,
    found: f.found,
    expected: `a board or a piece of this recipe: ${quoted(f.known)}`,
    ...near(f.nearest),
    mend: f.nearest === undefined ? "Name the board as it stands under pieces." : `Write "${f.nearest}".`,
  }),
  "choice-fits": (f: { name: string }) => ({
    says: `The size "${f.name}" can't be left to fit; only width, depth and height can.`,
    found: "fit",
    expected: "a sum",
    mend: "Write the size it has with this value.",
  }),
  "changed-twice": (f: { what: string; choice: string; other: string }) => ({
    says:
      f.choice === f.other
        ? `One value of "${f.choice}" changes "${f.what}" twice.`
        : `"${f.what}" is changed by the choice "${f.other}" and by "${f.choice}", so it isn't clear which of them counts.`,
    found: f.what,
    expected: "each size and each board changed by one choice",
    mend: "Let only one of the two change it; a choice of boards may name the piece instead.",
  }),
  "value-changes-nothing": (f: { choice: string; value: string; other: string }) => ({
    says: `The ${f.choice} "${f.value}" changes nothing: it comes out as "${f.other}" does.`,
    found: f.value,
    expected: "a value that changes a size or a board, or that a line stands only for",
    mend: `Say what it changes, write "only …" on the lines that stand for it, or take it out.`,
  }),
  "variants-of-one-slug": (f: { slug: string; one: string; other: string }) => ({
    says: `Two variants would have the same name "${f.slug}" in addresses: "${f.one}" and "${f.other}".`,
    found: f.slug,
    expected: "values whose names differ, over all choices",
    mend: "Give one of the values another name.",
  }),
  "variant-of-nothing": (f: { variant: string }) => ({
    says: `Nothing at all stands in the variant "${f.variant}".`,
    expected: "a line under stand that no choice takes away",
    mend: `Take "only …" off the lines that always stand.`,
  }),
  "too-many-variants": (f: {
    choices: readonly { readonly name: string; readonly count: number }[];
    count: number;
    most: number;
  }) => ({
    says: `${f.choices.map(({ name, count }) => `${count} of ${name}`).join(" times ")} make ${f.count} variants; each of them is worked out whole.`,
    found: String(f.count),
    expected: `at most ${f.most} variants`,
    mend: "Offer fewer values, or make two recipes of it.",
  }),
  "only-no-choice": (f: { found: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `There is no choice called "${f.found}" that changes what is built.`,
    found: f.found,
    expected: f.known.length > 0 ? `one of ${quoted(f.known)}` : "a name under choices",
    ...near(f.nearest),
    mend: f.nearest === undefined ? `Add "${f.found}: with, without" under choices.` : `Write "${f.nearest}".`,
  }),
  "only-no-value": (f: { found: string; choice: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `The choice "${f.choice}" has no value "${f.found}".`,
    found: f.found,
    expected: `one of ${quoted(f.known)}`,
    ...near(f.nearest),
    mend: f.nearest === undefined ? "Name a value of that choice." : `Write "${f.nearest}".`,
  }),
  "saying-letters": (f: { found: string; most: number }) => ({
    says: `"${f.found}" doesn't say how long the words may be.`,
    found: f.found,
    expected: `"at most N letters, as TEXT" with N from 1 to ${f.most}`,
    mend: `Write it as "at most 24 letters, as Fresh eggs".`,
  }),
  "saying-without-standard": (f: { name: string; most: number }) => ({
    says: `The choice "${f.name}" has no standard: nothing says what is written where the buyer says nothing.`,
    expected: `"at most ${f.most} letters, as TEXT"`,
    mend: "Write the standard words after a comma and the word as.",
  }),
  "saying-too-long": (f: { standard: string; letters: number; most: number }) => ({
    says: `The standard words "${f.standard}" have ${f.letters} letters, and at most ${f.most} are offered.`,
    found: String(f.letters),
    expected: `at most ${f.most} letters`,
    mend: "Shorten the words or allow more letters.",
  }),
  "load-weight": (f: { found: string }) => ({
    says: `"${f.found}" is no weight that could be put on it.`,
    found: f.found,
    expected: "a weight such as 250 lb, or 6 of 8 lb",
    mend: "Write how many of what weight, with lb, oz or kg.",
  }),
  "load-too-heavy": (f: { found: string; most: number }) => ({
    says: `"${f.found}" comes to more than ${f.most} lb; that is a matter for an engineer.`,
    found: f.found,
    expected: `at most ${f.most} lb in all`,
    mend: "See that the number and the unit are right.",
  }),
  "load-levels": (f: { name: string; on: string; levels: number; each: string }) => ({
    says: `"${f.on}" lies at ${f.levels} heights, so it isn't clear on which of them "${f.name}" stands.`,
    found: f.on,
    expected: `members at one height, or "on ${f.each}" for the same load on every level`,
    mend: `Write "on ${f.each}", or name those that bear it.`,
  }),
  "load-on-nothing": (f: { name: string; on: string }) => ({
    says: `"${f.name}" can't stand on "${f.on}", which is no board in place.`,
    found: f.on,
    expected: "the name of a line or a panel",
    mend: "Name the boards that bear it.",
  }),
  "sold-as": (f: { found: string; most: number }) => ({
    says: `"${f.found}" doesn't say how many are sold as one.`,
    found: f.found,
    expected: `"pair", or "set of N" with N from 2 to ${f.most}`,
    mend: "Write pair, or set of and a number; take the line out where one is sold alone.",
  }),
  "for-whom": (f: { found: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `"${f.found}" is none of those it can be for.`,
    found: f.found,
    expected: `words with commas between, out of ${f.known.join(", ")}`,
    ...near(f.nearest),
    mend: f.nearest === undefined ? "Name who uses it; the purpose says more." : `Write "${f.nearest}".`,
  }),
  availability: (f: { found: string }) => ({
    says: `"${f.found}" doesn't say whether a buyer finds it ready.`,
    found: f.found,
    expected: '"ready now 2", "made to order in 3 weeks", "made to order" or "sold"',
    mend: "Write one of them, for all variants, or a line of its own for each variant.",
  }),
  "availability-variant": (f: { found: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `"${f.found}" is no variant of this recipe.`,
    found: f.found,
    expected: `one of ${f.known.join(", ")}`,
    ...near(f.nearest),
    mend: "Name a variant as its care card's address does.",
  }),
  "photo-words": (f: { found: string }) => ({
    says: `"${f.found}" under photos is no number of a photograph.`,
    found: f.found,
    expected: "the number that its file's name starts with, like 1 for 01-by-the-door.jpg, and what it shows",
    mend: "Write the number, a colon, and in words what is seen.",
  }),
  "for-without-class": (f: { user: string; needs: string }) => ({
    says: `It is for ${f.user}, but its class lacks ${f.needs}.`,
    found: f.user,
    expected: `${f.needs} among the letters of class`,
    mend: `Add ${f.needs} to class, so that what ${f.user} need is looked at, or take "${f.user}" out.`,
  }),
  "old-format": (f: { found: number; known: number; steps: readonly string[] }) => ({
    says: `This recipe is of format ${f.found}; format ${f.known} is the one that is read here.`,
    found: String(f.found),
    expected: `format ${f.known}`,
    mend: `Run "shopleaf migrate" on this file: ${f.steps.join("; then ")}.`,
  }),
} satisfies Record<string, (facts: never) => Sentence>;
