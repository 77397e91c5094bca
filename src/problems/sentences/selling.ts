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
} satisfies Record<string, (facts: never) => Sentence>;
