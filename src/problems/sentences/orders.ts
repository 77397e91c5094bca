// The sentences of orders: what can't be read in them, and what can't be made.
import type { Sentence } from "../sentences.ts";
import { near, quoted } from "./words.ts";

/** To a tenth of an inch: a width of letters is no finer. */
const sayInches = (inches: number): string => `${Number(inches.toFixed(1))} in`;

export const orderSentences = {
  "order-mark": (f: { found: string; most: number }) => ({
    says:
      f.found.length > f.most
        ? `An order is called by ${f.found.length} letters, and at most ${f.most} can be.`
        : `An order called "${f.found}" has no letter or figure to find it by.`,
    found: f.found,
    expected: "its number or the buyer's initials, like 14 MK",
    mend: "Give the order a number or initials.",
  }),
  "order-twice": (f: { mark: string }) => ({
    says: `There are two orders called "${f.mark}".`,
    found: f.mark,
    expected: "each order once over all files",
    mend: "Give one of them another number.",
  }),
  "order-date": (f: { found: string }) => ({
    says: `"${f.found}" is not a day of the calendar.`,
    found: f.found,
    expected: "the day it is due, like 2026-12-05",
    mend: "Write year, month and day, with two digits each for the last two.",
  }),
  "order-item": (f: { found: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `"${f.found}" is ordered, which is not a recipe here.`,
    found: f.found,
    expected: quoted(f.known),
    ...near(f.nearest),
    mend: "Write the title as the recipe has it.",
  }),
  "order-variant": (f: { what: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `The variant "${f.what}" is ordered, which isn't offered.`,
    found: f.what,
    expected: quoted(f.known),
    ...near(f.nearest),
    mend: "Write a variant that is offered, or leave the line out for the standard one.",
  }),
  "order-no-letters": (f: { title: string }) => ({
    says: `Words are ordered, but there is no row of letters on the ${f.title.toLowerCase()}.`,
    expected: "no saying",
    mend: 'Take "saying" out, or give the recipe a row of letters under "text".',
  }),
  "order-rows": (f: { texts: number; rows: number }) => ({
    says: `${f.texts} texts are ordered for ${f.rows === 1 ? "one row" : `${f.rows} rows`} of letters.`,
    found: String(f.texts),
    expected: f.rows === 1 ? "one text" : `one text for all, or ${f.rows} with / between them`,
    mend: "Write a text for each row, from the top down.",
  }),
  "order-empty-row": (f: { row: number }) => ({
    says: `The text of row ${f.row} is empty.`,
    expected: "letters between the two /",
    mend: "Write what stands there, or ask the buyer.",
  }),
  "order-says-nothing": (f: { rows: number }) => ({
    says: "The buyer's own words belong on it, and the order doesn't say them.",
    expected: f.rows === 1 ? "a line like saying: Fresh eggs" : "a line like saying: Tomatoes / Beans",
    mend: 'Add "saying", or write the standard words there if the buyer wants those.',
  }),
  "order-letters": (f: { found: string; letters: number; most: number }) => ({
    says: `"${f.found}" has ${f.letters} letters, and at most ${f.most} are offered.`,
    found: f.found,
    expected: `at most ${f.most} letters, blanks counted`,
    mend: "Agree on shorter words with the buyer.",
  }),
  "order-too-wide": (f: { found: string; width: number; room: number; high: number; fits: number }) => ({
    says: `"${f.found}" takes ${sayInches(f.width)} in letters ${sayInches(f.high)} high, and the row is ${sayInches(f.room)} wide.`,
    found: f.found,
    expected: `words that fit ${sayInches(f.room)}, or letters at most ${(Math.floor(f.fits * 100) / 100).toFixed(2)} in high`,
    mend: "Agree on shorter words with the buyer, or make the letters of the recipe less high.",
  }),
} satisfies Record<string, (facts: never) => Sentence>;
