// What every leaf is made of: ready text, checked markup and pictures. Layouts only set it on the page.
import type { SignalWord } from "../findings/cautions.ts";

/** Markup that is safe to set as it is: made by prose.ts, guide-text.ts or picture.ts and nowhere else. */
export type Markup = { readonly html: string };

/**
 * A drawing ready for the page; the markup carries its own title and description. `narrow` is the same drawing made for a
 * small screen; without it there is one for all.
 */
export type Picture = { readonly caption: string; readonly svg: Markup; readonly narrow?: Markup };

/** A picture file of the shelf, from the shelf's root; `alt` says what it shows. */
export type Image = { readonly path: string; readonly width: string; readonly height: string; readonly alt: string };

/** A photograph in several sizes and in two formats, as `srcset` wants them but from the shelf's root. */
export type Photo = {
  readonly image: Image;
  readonly caption: string;
  readonly sources: readonly {
    readonly type: string;
    readonly files: readonly { readonly path: string; readonly width: string }[];
  }[];
};

/** A fact with its name: "Overall", "30 × 18 × 26 in". `from`: where on the page it is told how one knows. */
export type Fact = { readonly name: string; readonly value: string; readonly from?: string };

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

/** A table whose rows lead somewhere: the link stands in the first cell. */
export type LinkedTable = {
  readonly heads: readonly string[];
  readonly rows: readonly { readonly link: Link; readonly cells: readonly string[] }[];
};

/** A link inside the shelf, from the shelf's root. */
export type Link = { readonly path: string; readonly text: string };

/** What a bare item has to say on product page, care card and build sheet. */
export type Notice = { readonly title: string; readonly says: string };
