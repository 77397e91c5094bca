// How finely lengths are printed: to a part of an inch or to a whole millimetre.

/** The smallest division of the maker's tape. */
export type Division = { readonly unit: "in"; readonly per: 8 | 16 | 32 } | { readonly unit: "mm" };
