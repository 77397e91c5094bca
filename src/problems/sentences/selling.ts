// The sentences of what a maker types to sell: prices.
import type { Sentence } from "../sentences.ts";
import { near, quoted } from "./words.ts";

export const sellingSentences = {
  "price-where": (f: { found: string }) => ({
    says: `"${f.found}" after a price names no other place where it is sold.`,
    found: f.found,
    expected: '"stall 85.00" or "local 80.00"; the first price is the one in the store',
    mend: "Write stall or local, then the price asked there.",
  }),
  "price-where-twice": (f: { where: string }) => ({
    says: `The price asked ${f.where === "stall" ? "at the stall" : "locally"} stands twice in one line.`,
    found: f.where,
    expected: "each place once",
    mend: "Take one of the two out.",
  }),
  "price-nothing": (f: { found: string }) => ({
    says: `A price of "${f.found}" asks nothing.`,
    found: f.found,
    expected: "dollars over 0, like 85.00",
    mend: "Write what you ask, or take the line out: then the worked-out price is shown.",
  }),
  "price-no-variant": (f: { what: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `There is a price for "${f.what}", which is not a variant of this recipe.`,
    found: f.what,
    expected: quoted(f.known),
    ...near(f.nearest),
    mend: "Name a variant, or write one price for all behind the key.",
  }),
  "price-twice": (f: { what: string }) => ({
    says: `The variant "${f.what}" has two prices.`,
    found: f.what,
    expected: "one price for each variant",
    mend: "Take one of the two out.",
  }),
  "record-day": (f: { found: string }) => ({
    says: `"${f.found}" under "record" starts with no day of the calendar.`,
    found: f.found,
    expected: "the day the batch was done, like 2026-10-12",
    mend: "Write the day as year, month and day; for a second batch of a day add a word after a blank.",
  }),
  "record-made": (f: { found: string; most: number }) => ({
    says: `"${f.found}" doesn't tell how many were made.`,
    found: f.found,
    expected: `like "5 made", or "5 made in stained", at most ${f.most}`,
    mend: "Write the number of things made as they are sold, and the variant if it matters.",
  }),
  "record-empty": (f: { found: string }) => ({
    says: `"${f.found}" tells no minutes.`,
    found: f.found,
    expected: 'minutes by kind of work, like "rip 22, screw 260", or "all 340"',
    mend: "Add the minutes after a comma, or take the line out.",
  }),
  "record-minutes": (f: { found: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `"${f.found}" can't be read as a kind of work and its minutes.`,
    found: f.found,
    expected: `one of ${f.known.join(", ")}, then minutes over 0 as a plain number`,
    ...near(f.nearest),
    mend: 'Write like "rip 22": minutes of the whole batch, the setting up with them.',
  }),
  "record-twice": (f: { work: string }) => ({
    says: `The minutes of "${f.work}" stand twice in one line.`,
    found: f.work,
    expected: "each kind of work once",
    mend: "Add them up, or take one out.",
  }),
  "record-no-variant": (f: { what: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `A batch was made in "${f.what}", which is not a variant of this recipe.`,
    found: f.what,
    expected: quoted(f.known),
    ...near(f.nearest),
    mend: 'Name a variant, or leave "in …" out where the minutes hold for all.',
  }),
  "left-no-section": (f: { found: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `"${f.found}" is left to the buyer, but no section that puts the whole together is headed so.`,
    found: f.found,
    expected: quoted(f.known),
    ...near(f.nearest),
    mend: "Write the heading of the section as it stands below, without the signs before it.",
  }),
  "season-days": (f: { found: string }) => ({
    says: `"${f.found}" can't be read as two days of the year.`,
    found: f.found,
    expected: "the first and the last day it sells, like 04-15 to 06-30",
    mend: "Write month and day with two digits each, and to between them.",
  }),
  "comparable-undated": (f: { where: string; found: string }) => ({
    says: `The price seen at "${f.where}" has no day, so nobody can tell whether it still holds.`,
    found: f.found,
    expected: 'the price, then the day it was seen, like "79.00, 2026-05-09"',
    mend: "Add the day after a comma; without a day it can't be compared.",
  }),
  "comparable-size": (f: { found: string }) => ({
    says: `"${f.found}" can't be read as a size.`,
    found: f.found,
    expected: "width x depth x height, like 28 x 16 x 24",
    mend: "Write lengths with x between them, or leave the size out.",
  }),
} satisfies Record<string, (facts: never) => Sentence>;
