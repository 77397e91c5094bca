// The sentences of the item stage's problems, one for each code.
import type { Sentence } from "../sentences.ts";

export const itemSentences = {} satisfies Record<string, (facts: never) => Sentence>;
