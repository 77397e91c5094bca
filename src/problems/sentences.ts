// Every problem code with its one sentence. A stage's codes stand in the file of its name; this file only joins them.
import { choiceSentences } from "./sentences/choices.ts";
import { cordSentences } from "./sentences/cord.ts";
import { feasibleSentences } from "./sentences/feasible.ts";
import { itemSentences } from "./sentences/item.ts";
import { joiningSentences } from "./sentences/joining.ts";
import { orderSentences } from "./sentences/orders.ts";
import { outlineSentences } from "./sentences/outlines.ts";
import { photoSentences } from "./sentences/photos.ts";
import { recipeSentences } from "./sentences/recipe.ts";
import { sellingSentences } from "./sentences/selling.ts";
import { siteSentences } from "./sentences/site.ts";
import { slantSentences } from "./sentences/slants.ts";
import { treeSentences } from "./sentences/tree.ts";
import { yardSentences } from "./sentences/yard.ts";

/**
 * What a maker is told. `says`: one plain sentence with what was found; `expected`: what would be right;
 * `nearest`: the nearest allowed name, if one is near; `mend`: what to do, as an imperative.
 */
export type Sentence = {
  readonly says: string;
  readonly found?: string;
  readonly expected?: string;
  readonly nearest?: string;
  readonly mend: string;
};

export const sentences = {
  ...treeSentences,
  ...yardSentences,
  ...recipeSentences,
  ...choiceSentences,
  ...itemSentences,
  ...slantSentences,
  ...joiningSentences,
  ...feasibleSentences,
  ...cordSentences,
  ...outlineSentences,
  ...sellingSentences,
  ...orderSentences,
  ...siteSentences,
  ...photoSentences,
};

export type Code = keyof typeof sentences;
/** What the sentence of a code needs to know; `{}` where it needs nothing. */
export type Facts<C extends Code> =
  Parameters<(typeof sentences)[C]> extends readonly [infer F] ? F : Record<string, never>;
