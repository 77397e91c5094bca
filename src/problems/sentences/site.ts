// The sentences of the site stage's problems, one for each code.
import type { Sentence } from "../sentences.ts";

export const siteSentences = {} satisfies Record<string, (facts: never) => Sentence>;
