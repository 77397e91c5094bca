// The worked-out variants of all recipes -> the binder's contact sheet; a recipe's drawings are made once for the same texts.
import { DrawingsSheetPage } from "../../layouts/drawings-sheet.tsx";
import { drawingsSheetLeaf, type ItemDrawings, itemDrawings } from "../leaves/drawings-sheet.ts";
import { drawingsPath } from "../leaves/paths.ts";
import type { Shop } from "../yard/yard.ts";
import { pageHtml } from "./page-html.ts";
import { Remembered } from "./remember.ts";
import type { Variants } from "./shelf-pages.tsx";
import type { Page } from "./site.ts";

const drawn = new Remembered<ItemDrawings>();

export function drawingsPage(
  recipes: readonly { readonly variants: Variants; readonly hash: string }[],
  shop: Shop,
): Page {
  const items = recipes.map(({ variants, hash }) => drawn.answer(hash, () => itemDrawings(variants, shop)));
  // One round each time it is made: what no recipe says any longer is let go.
  drawn.turn();
  const leaf = drawingsSheetLeaf(items, [], shop);
  return { path: `binder/${drawingsPath}`, html: pageHtml(<DrawingsSheetPage leaf={leaf} root="" />) };
}
