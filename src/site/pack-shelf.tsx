// Everything worked out -> the shelf of plans that are sold: its packs and its first page.
import { PackIndexPage } from "../../layouts/pack-index.tsx";
import { packIndexLeaf } from "../leaves/packs/pack-index.ts";
import { packShop } from "../leaves/packs/pack-shop.ts";
import { hasPack, packOf } from "./pack-of.ts";
import { pageHtml } from "./page-html.ts";
import type { Variants } from "./shelf-pages.tsx";
import type { Pack, Page } from "./site.ts";
import type { WorkedContent } from "./work-content.ts";

export type PackShelf = { readonly packs: readonly Pack[]; readonly pages: readonly Page[] };

/**
 * Empty where the shop has not said on what terms its plans are sold, or sells none. `first` is what else is drawn of a recipe: what
 * is drawn next to each other finds its scenes again.
 */
export function packShelf(
  { shop, yard, recipes }: WorkedContent,
  first: (variants: Variants, hash: string) => void = () => {},
): PackShelf {
  const open = shop && packShop(shop);
  if (!open || !yard) return { packs: [], pages: [] };
  const parts = recipes.flatMap(({ recipe, items: [standard, ...others], hash }) => {
    if (!recipe || !standard) return [];
    const variants: Variants = [standard, ...others];
    if (!hasPack(recipe, variants)) return [];
    first(variants, hash);
    return [packOf(recipe, variants, yard, open)];
  });
  if (parts.length === 0) return { packs: [], pages: [] };
  const leaf = packIndexLeaf(
    parts.map(({ entry }) => entry),
    open,
  );
  return {
    packs: parts.map(({ pack }) => pack),
    pages: [{ path: "packs/index.html", html: pageHtml(<PackIndexPage leaf={leaf} root="" />) }],
  };
}
