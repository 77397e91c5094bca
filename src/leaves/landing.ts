// The shop -> the page above the shelves, from which the maker finds each of them. It stands on none of them.
import type { Shop } from "../yard/yard.ts";
import type { Link } from "./leaf.ts";

export type Landing = {
  readonly title: string;
  readonly description: string;
  readonly notice?: string;
  readonly shelves: readonly { readonly link: Link; readonly says: string }[];
};

export const landingLeaf = (shop: Shop): Landing => ({
  title: shop.name,
  description: shop.tagline,
  ...(shop.notice === undefined ? {} : { notice: shop.notice }),
  shelves: [
    {
      link: { path: "binder/index.html", text: "Binder" },
      says: "For the shop, on paper: build sheets with pieces, yard lists, drawings and steps. Private.",
    },
    {
      link: { path: "store/index.html", text: "Store" },
      says: "For buyers: goods, honest sizes, care cards. This folder can be published alone.",
    },
    {
      link: { path: "packs/index.html", text: "Plans" },
      says: "For whoever builds it himself: plan packs to be sold. Not one price, note or record of yours is in them.",
    },
    {
      link: { path: "guide/index.html", text: "Authoring guide" },
      says: "How a recipe is written, with examples that are built.",
    },
  ],
});
