// The sentences of the site stage's problems, one for each code.
import type { Sentence } from "../sentences.ts";

export const siteSentences = {
  "no-folder": (f: { what: "content" | "recipes" | "yard" | "shop" }) =>
    f.what === "content"
      ? {
          says: "There is no such folder.",
          expected: "a folder that holds recipes, yard and shop",
          mend: "Say where it is with --content, or run this in the folder that has it.",
        }
      : {
          says: `This content folder has no folder "${f.what}".`,
          expected:
            f.what === "recipes" ? "recipes/ with one .md file for each thing" : `${f.what}/ with its .yaml files`,
          mend: `Make the folder "${f.what}" there, or say with --content where the whole content folder is.`,
        },
  "shop-files": (f: { count: number }) => ({
    says: f.count === 0 ? "There is no .yaml file in this folder." : `There are ${f.count} .yaml files in this folder.`,
    found: String(f.count),
    expected: "one file with the shop's name, wage and words",
    mend: f.count === 0 ? "Write the shop's file there; the guide shows one." : "Keep one of them and move the rest.",
  }),
  "no-recipes": (_: Record<never, never>) => ({
    says: "There is no recipe in this folder.",
    expected: "one .md file for each thing",
    mend: "Write a recipe there; the guide starts with a small one.",
  }),
  "no-yard-near": (_: Record<never, never>) => ({
    says: "There is no yard in any folder above this recipe.",
    expected: "a content folder that holds yard/, shop/ and recipes/",
    mend: "Put the recipe into a content folder's recipes/, or say with --content which content folder's yard to use.",
  }),
  "unreadable-file": (f: { why: string }) => ({
    says: `This can't be read: ${f.why}.`,
    found: f.why,
    mend: "See that it is there and that you may open it.",
  }),
  "not-text": (_: Record<never, never>) => ({
    says: "This file is not plain text in UTF-8.",
    expected: "UTF-8 text",
    mend: "Save it again as UTF-8 text.",
  }),
  "not-json": (f: { why: string }) => ({
    says: `This is not JSON: ${f.why}.`,
    found: f.why,
    expected: "a model file in JSON",
    mend: "Mend the file there.",
  }),
  "model-fault": (f: { fault: string }) => ({
    says: `In this model, ${f.fault}.`,
    found: f.fault,
    mend: "Mend the model there.",
  }),
  "cut-fault": (f: { fault: string }) => ({
    says: `In this cutting problem, ${f.fault}.`,
    found: f.fault,
    mend: "Mend the problem there.",
  }),
  "same-slug": (f: { slug: string; other: string }) => ({
    says: `Two recipes would have the same address "${f.slug}": this one and ${f.other}.`,
    found: f.slug,
    expected: "a title of its own for each recipe",
    mend: "Give one of them another title.",
  }),
  "letter-not-on-paper": (f: { found: string }) => ({
    says: `No page can be printed with "${f.found}": the font of all paper has no such letter.`,
    found: f.found,
    expected: "letters of Latin, Greek or Cyrillic, figures, fractions, and signs like × ° ″",
    mend: "Write it in words.",
  }),
  "plan-without-terms": (_: Record<never, never>) => ({
    says: "A plan of it is to be sold, but the shop says nothing on plans.",
    expected: `"plans" in the shop's file, with licence, ask and latest`,
    mend: `Write "plans" there, or take "plan: yes" away here.`,
  }),
} satisfies Record<string, (facts: never) => Sentence>;
