// What the site is made of, before anything is written.

/** The parts of a site, each in the folder of its name. The first two are shelves that can be published alone. */
export const parts = ["binder", "store", "guide"] as const;
export type Part = (typeof parts)[number];
export const shelves: readonly Part[] = ["binder", "store"];

/** One page. `path` is where it stands in the site, with `/` between folders, and ends in a file name. */
export type Page = { readonly path: string; readonly html: string };

/** A file that goes into the site as it is: `from` is its path on disk, `text` what stands in it, `drawn` the SVG it is a picture of. */
export type Asset = { readonly path: string } & (
  | { readonly from: string }
  | { readonly text: string }
  | { readonly drawn: string }
);

export type Site = { readonly pages: readonly Page[]; readonly assets: readonly Asset[] };
