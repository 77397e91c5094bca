// What every leaf is made of: ready text, checked markup and pictures. Layouts only set it on the page.
import type { SignalWord } from "../findings/cautions.ts";

/** Markup that is safe to set as it is: made by prose.ts, guide-text.ts or picture.ts and nowhere else. */
export type Markup = { readonly html: string };

/**
 * A drawing ready for the page; the markup carries its own title and description. `narrow` is the same drawing made for a
 * small screen; without it there is one for all.
 */
export type Picture = { readonly caption: string; readonly svg: Markup; readonly narrow?: Markup };

/** A fact with its name: "Overall", "30 × 18 × 26 in". */
export type Fact = { readonly name: string; readonly value: string };

export type CautionText = {
  readonly signal: SignalWord;
  readonly hazard: string;
  readonly consequence: string;
  readonly avoidance: string;
  readonly source: string;
};

/** A table as it is set: the first cell of a row names the row. */
export type Table = {
  readonly caption: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
};

/** A link inside the shelf, from the shelf's root. */
export type Link = { readonly path: string; readonly text: string };

/** What a bare item has to say on product page, care card and build sheet. */
export type Notice = { readonly title: string; readonly says: string };
