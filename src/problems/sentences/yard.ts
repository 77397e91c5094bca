// The sentences of the yard stage's problems, one for each code.
import type { Sentence } from "../sentences.ts";

export const yardSentences = {} satisfies Record<string, (facts: never) => Sentence>;
