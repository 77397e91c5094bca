// `1: By the back door, in the rain` -> what a photograph shows, by the number its file's name starts with.
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import { entriesUnder, type TreeMap } from "../problems/yaml-tree.ts";
import type { Gathered } from "./scan.ts";

/** Buyers read these words, so they are looked at for what nobody can prove. */
export function readPhotoWords(
  tree: TreeMap,
  into: Gathered,
): readonly { readonly number: Written; readonly words: Written }[] {
  return entriesUnder(tree, "photos").flatMap(({ key, value }) => {
    if (value.kind !== "text") return [];
    const words = { text: value.text.trim(), at: value.at };
    if (!/^\d{1,2}$/.test(key.text) || words.text === "") {
      into.problems.push(problem("photo-words", key.at, { found: key.text }));
      return [];
    }
    into.told.push([words]);
    return [{ number: key, words }];
  });
}
