// What the site is made of, before anything is written.

export const shelves = ["binder", "store"] as const;
export type Shelf = (typeof shelves)[number];

/** One page. `path` is where it stands in the site, with `/` between folders, and ends in a file name. */
export type Page = { readonly path: string; readonly html: string };

/** A file that goes into the site as it is. */
export type Asset = { readonly path: string; readonly from: string };

export type Site = { readonly pages: readonly Page[]; readonly assets: readonly Asset[] };
