// Everything worked out -> the binder's pages of other boards, one for each recipe, made once for the same texts.
import { SheetsPageView } from "../../layouts/sheets-page.tsx";
import { yardList } from "../findings/yard-list.ts";
import { boardsSheetLeaf } from "../leaves/boards-sheet.ts";
import { rootFrom } from "../leaves/paths.ts";
import type { Shop } from "../yard/yard.ts";
import { pageHtml } from "./page-html.ts";
import { Remembered } from "./remember.ts";
import type { Page } from "./site.ts";
import type { WorkedContent } from "./work-content.ts";

const known = new Remembered<Page>();

/** By the standard variant of each. */
export const boardsPages = ({ recipes, yard }: WorkedContent, shop: Shop): Page[] =>
  recipes.flatMap(({ recipe, items: [item], hash }) => {
    if (!recipe || !item || !yard) return [];
    return known.answer(hash, () => {
      const leaf = boardsSheetLeaf(recipe, item, yardList(item, shop.kerf), yard, shop);
      const html = pageHtml(<SheetsPageView leaf={leaf} root={rootFrom(leaf.path)} />);
      return { path: `binder/${leaf.path}`, html };
    });
  });

export const forgetOldBoards = (): void => known.turn();
