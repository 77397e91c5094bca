// What the site is made of, before anything is written.
import type { SheetSet } from "../leaves/sheet-set.ts";
import type { ImageSize } from "../yard/image-sizes.ts";
import type { Paper } from "../yard/papers.ts";

/** The parts of a site, each in the folder of its name. All but the last are shelves that can be published alone. */
export const parts = ["binder", "store", "packs", "guide"] as const;
export type Part = (typeof parts)[number];
export const shelves: readonly Part[] = ["binder", "store", "packs"];

/** One page. `path` is where it stands in the site, with `/` between folders, and ends in a file name. */
export type Page = { readonly path: string; readonly html: string };

/**
 * A file that goes into the site as it is: `from` is its path on disk, `text` or `bytes` what is in it, `drawn` makes the SVG it is a picture
 * of and `photo` the photograph, both in pixels of that size, `printed` the sheets that are set on its paper as a PDF.
 */
export type Asset = { readonly path: string } & (
  | { readonly from: string }
  | { readonly text: string }
  | { readonly bytes: Uint8Array }
  | { readonly drawn: () => string; readonly size: ImageSize }
  | { readonly photo: Uint8Array; readonly size: ImageSize }
  | { readonly printed: SheetSet; readonly paper: Paper }
);
export type Printed = Extract<Asset, { readonly printed: SheetSet }>;

/** A plan as it is sold: its files below `path`, their checksums, and all of them in one archive of that name beside them. */
export type Pack = { readonly path: string; readonly files: readonly Asset[] };

export type Site = {
  readonly pages: readonly Page[];
  readonly assets: readonly Asset[];
  readonly packs: readonly Pack[];
};
