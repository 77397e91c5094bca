// The sentences on photographs, one for each code.
import type { Sentence } from "../sentences.ts";

export const photoSentences = {
  "photo-name": (f: { found: string }) => ({
    says: `The name "${f.found}" doesn't say which photograph it is and what it shows.`,
    found: f.found,
    expected: "a number, a hyphen and words of letters, digits and hyphens: 01-by-the-back-door.jpg",
    mend: "Name the file so; what it shows is read to those who can't see it.",
  }),
  "photo-folder": (f: { found: string; known: readonly string[]; nearest: string | undefined }) => ({
    says: `No recipe has the address "${f.found}", so nobody would see these photographs.`,
    found: f.found,
    expected: `a folder named as one of the recipes: ${f.known.join(", ")}`,
    ...(f.nearest === undefined ? {} : { nearest: f.nearest }),
    mend: "Name the folder as the recipe's page in the store is named.",
  }),
  "photo-loose": (f: { found: string }) => ({
    says: `"${f.found}" lies in no folder of a recipe.`,
    found: f.found,
    expected: "photos/<the recipe's address>/01-what-it-shows.jpg",
    mend: "Move it into the folder of the thing that it shows.",
  }),
  "photo-link": (f: { found: string }) => ({
    says: `"${f.found}" is a link to somewhere else, and is not followed.`,
    found: f.found,
    mend: "Put the photograph itself there.",
  }),
  "photo-twice": (f: { number: number; other: string }) => ({
    says: `Two photographs have the number ${f.number}: this one and ${f.other}.`,
    found: String(f.number),
    expected: "a number of its own for each",
    mend: "Give one of them another number; they are shown in that order.",
  }),
  "photo-not-one": (f: { found: string }) => ({
    says: `This is no photograph that can be read: it is ${f.found}.`,
    found: f.found,
    expected: "a JPEG, PNG, WebP, TIFF or AVIF file",
    mend: "Save the photograph again as JPEG.",
  }),
  "photo-broken": (f: { why: string }) => ({
    says: `This photograph is broken: ${f.why}.`,
    found: f.why,
    mend: "Copy it again from the camera, or save it again as JPEG.",
  }),
  "photo-too-big": (f: { found: string; most: string }) => ({
    says: `This photograph has ${f.found}.`,
    found: f.found,
    expected: `at most ${f.most}`,
    mend: "Save it smaller; 3000 pixels across are more than enough.",
  }),
  "photo-too-small": (f: { width: number; height: number; least: number }) => ({
    says: `This photograph is only ${f.width} by ${f.height} pixels.`,
    found: `${f.width} x ${f.height}`,
    expected: `at least ${f.least} pixels each way`,
    mend: "Take the one from the camera itself, not a preview of it.",
  }),
  "photo-missing": (f: { number: string; folder: string }) => ({
    says: `Photograph ${f.number} is told, but there is none of that number in ${f.folder}.`,
    found: f.number,
    mend: "Put the photograph there, or take the line out.",
  }),
} satisfies Record<string, (facts: never) => Sentence>;
