// The shop -> what a plan that is sold may know of it: its name, its terms, where to ask. No wage, notes, rates or papers of its own.
import { zero } from "../../units/length.ts";
import { usualPapers } from "../../yard/papers.ts";
import type { Shop } from "../../yard/yard.ts";

/** Leaves of packs take this and never a Shop of the yard; the sheets that binder and packs have in common read it as one. */
export type PackShop = Shop & { readonly plans: NonNullable<Shop["plans"]> };

/** Undefined where the shop has not said on what terms its plans are sold. */
export const packShop = (shop: Shop): PackShop | undefined =>
  shop.plans && {
    name: shop.name,
    tagline: shop.tagline,
    ...(shop.notice === undefined ? {} : { notice: shop.notice }),
    place: shop.place,
    contact: shop.plans.ask,
    address: shop.plans.latest,
    division: shop.division,
    kerf: shop.kerf,
    papers: usualPapers,
    ordering: "",
    careNote: shop.careNote,
    wage: zero,
    notes: "",
    plans: shop.plans,
  };
