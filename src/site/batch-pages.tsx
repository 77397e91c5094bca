// Everything worked out -> the binder's pages of batches, one for each line, made once for the same recipes.
import { SheetsPageView } from "../../layouts/sheets-page.tsx";
import type { Item } from "../item/item.ts";
import { batchSheetLeaf, linesOf } from "../leaves/batch-sheet.ts";
import { rootFrom } from "../leaves/paths.ts";
import type { Shop } from "../yard/yard.ts";
import { forgetOldBoards } from "./boards-pages.tsx";
import { pageHtml } from "./page-html.ts";
import { hashOf, Remembered } from "./remember.ts";
import type { Page } from "./site.ts";

const known = new Remembered<Page>();

/** Each recipe by its standard variant, with the hash of its texts, the yard's and the shop's. */
export function batchPages(recipes: readonly { readonly item: Item; readonly hash: string }[], shop: Shop): Page[] {
  const hashes = new Map(recipes.map(({ item, hash }) => [item, hash]));
  return linesOf(recipes.map(({ item }) => item)).map(({ name, line }) =>
    known.answer(hashOf(name, ...line.map((item) => hashes.get(item) ?? "")), () => {
      const leaf = batchSheetLeaf(name, line, shop);
      return { path: `binder/${leaf.path}`, html: pageHtml(<SheetsPageView leaf={leaf} root={rootFrom(leaf.path)} />) };
    }),
  );
}

/** Lets go of pages that were in neither this round nor the one before. */
export function forgetOldBatches(): void {
  known.turn();
  forgetOldBoards();
}
