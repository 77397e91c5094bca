// A content folder and its recipes -> their photographs, ready for the store, and every problem with them. Each is worked on once.
import { inReadingOrder, type Problem, problem } from "../../problems/problem.ts";
import type { Recipe } from "../../recipe/recipe.ts";
import { isProblem } from "../content-files.ts";
import { hashOf, Remembered } from "../remember.ts";
import { findPhotos, type PhotoSource } from "./find-photos.ts";
import { type MadePhoto, makePhoto } from "./make-photo.ts";

export type Photos = readonly MadePhoto[];

const known = new Remembered<Promise<MadePhoto | Problem>>();

export async function readPhotos(
  folder: string,
  recipes: readonly (Recipe | undefined)[],
): Promise<{ readonly photos: Photos; readonly problems: readonly Problem[] }> {
  const all = recipes.filter((recipe) => recipe !== undefined);
  const { sources, problems } = findPhotos(
    folder,
    all.map(({ slug }) => slug),
  );
  const photos: MadePhoto[] = [];
  // A folder may be that of a recipe that can't be read: that is told already.
  const isWhole = all.length === recipes.length;
  const found: Problem[] = problems.filter(({ code }) => isWhole || code !== "photo-folder");
  // One after the other: a photograph takes a hundred megabytes while it is worked on.
  for (const source of sources) {
    const one = await known.answer(keyOf(source), () => makePhoto(source));
    if (isProblem(one)) found.push(one);
    else photos.push(one);
  }
  known.turn();
  found.push(...all.flatMap((recipe) => missingOf(recipe, sources, folder)));
  return { photos, problems: inReadingOrder(found) };
}

const keyOf = ({ file, bytes }: PhotoSource): string => hashOf(file, Buffer.from(bytes).toString("latin1"));

/** Words for a photograph that isn't there. */
const missingOf = ({ slug, photoWords }: Recipe, sources: readonly PhotoSource[], folder: string): Problem[] =>
  photoWords
    .filter(({ number }) => !sources.some((one) => one.slug === slug && one.number === Number(number.text)))
    .map(({ number }) =>
      problem("photo-missing", number.at, {
        number: number.text,
        folder: `${folder.replace(/\/$/, "")}/photos/${slug}`,
      }),
    );
