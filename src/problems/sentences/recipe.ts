// The sentences of the recipe stage's problems, one for each code.
import type { Sentence } from "../sentences.ts";

export const recipeSentences = {} satisfies Record<string, (facts: never) => Sentence>;
