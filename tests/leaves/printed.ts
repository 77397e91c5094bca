// Every text of a leaf, and every page rendered from the fixtures, for tests that look at all of them.
import { renderToString } from "preact-render-to-string";
import { BinderIndexPage } from "../../layouts/binder-index.tsx";
import { BuildSheetPage } from "../../layouts/build-sheet.tsx";
import { CardsPage } from "../../layouts/cards.tsx";
import { CareCardPage } from "../../layouts/care-card.tsx";
import { DrawingsSheetPage } from "../../layouts/drawings-sheet.tsx";
import { GuidePageView } from "../../layouts/guide-page.tsx";
import { LandingPage } from "../../layouts/landing.tsx";
import { ListingSheetPage } from "../../layouts/listing-sheet.tsx";
import { ProductPageView } from "../../layouts/product-page.tsx";
import { SheetsPageView } from "../../layouts/sheets-page.tsx";
import { SparesPageView } from "../../layouts/spares-page.tsx";
import { yardList } from "../../src/findings/yard-list.ts";
import type { Item } from "../../src/item/item.ts";
import { batchSheetLeaf, linesOf } from "../../src/leaves/batch-sheet.ts";
import { binderIndexLeaf } from "../../src/leaves/binder-index.ts";
import { boardsSheetLeaf } from "../../src/leaves/boards-sheet.ts";
import { buildSheetLeaf } from "../../src/leaves/build-sheet.ts";
import { cardsLeaf } from "../../src/leaves/cards.ts";
import { careCardLeaf } from "../../src/leaves/care-card.ts";
import { drawingsSheetLeaf, itemDrawings } from "../../src/leaves/drawings-sheet.ts";
import { guidePageLeaf } from "../../src/leaves/guide-page.ts";
import { landingLeaf } from "../../src/leaves/landing.ts";
import { listingSheetLeaf } from "../../src/leaves/listing-sheet.ts";
import {
  buildSheetPath,
  cardsPath,
  careCardPath,
  drawingsPath,
  indexPath,
  listingPath,
  productPagePath,
  rootFrom,
  sparesPath,
} from "../../src/leaves/paths.ts";
import { productPageLeaf } from "../../src/leaves/product-page.ts";
import { sparesPageLeaf } from "../../src/leaves/spares-page.ts";
import { storeItem, storeShop } from "../../src/leaves/store-item.ts";
import { shopPages } from "../../src/site/shop-pages.tsx";
import type { Shop } from "../../src/yard/yard.ts";
import { demoRecipe, demoYard } from "./worked-goods.ts";

export type Goods = readonly [Item, ...Item[]];
export type Printed = { readonly path: string; readonly leaf: unknown; readonly html: string };

/** Every text in a leaf, however deep. */
export const textsIn = (value: unknown): string[] => {
  if (typeof value === "string") return [value];
  return value !== null && typeof value === "object" ? Object.values(value).flatMap(textsIn) : [];
};

const batchLeaves = (all: readonly Goods[], shop: Shop) =>
  linesOf(all.map(([standard]) => standard)).map(({ name, line }) => batchSheetLeaf(name, line, shop));

const boardsLeaves = (all: readonly Goods[], shop: Shop) =>
  all.map(([item]) => {
    const recipe = demoRecipe(item.slug);
    return boardsSheetLeaf(recipe, item, yardList(item, shop.kerf), demoYard(), shop);
  });

export function printBinder(all: readonly Goods[], shop: Shop): Printed[] {
  const index = binderIndexLeaf(
    all.map(([standard]) => standard),
    shop,
  );
  const drawings = drawingsSheetLeaf(
    all.map((variants) => itemDrawings(variants, shop)),
    [],
    shop,
  );
  const drawn = renderToString(DrawingsSheetPage({ leaf: drawings, root: "" }));
  return [
    { path: `binder/${indexPath}`, leaf: index, html: renderToString(BinderIndexPage({ leaf: index, root: "" })) },
    { path: `binder/${drawingsPath}`, leaf: drawings, html: drawn },
    ...[...batchLeaves(all, shop), ...boardsLeaves(all, shop)].map((leaf) => ({
      ...{ path: `binder/${leaf.path}`, leaf },
      html: renderToString(SheetsPageView({ leaf, root: rootFrom(leaf.path) })),
    })),
    ...all.map((variants) => {
      const path = listingPath(variants[0].slug);
      const leaf = listingSheetLeaf(variants[0], storeItem(variants, shop.division), shop);
      return { path: `binder/${path}`, leaf, html: renderToString(ListingSheetPage({ leaf, root: rootFrom(path) })) };
    }),
    ...all.map((variants) => {
      const path = cardsPath(variants[0].slug);
      const leaf = cardsLeaf(storeItem(variants, shop.division), storeShop(shop), []);
      return { path: `binder/${path}`, leaf, html: renderToString(CardsPage({ leaf, root: rootFrom(path) })) };
    }),
    ...all.map((variants) => {
      const path = buildSheetPath(variants[0].slug);
      const leaf = buildSheetLeaf(variants, shop);
      return { path: `binder/${path}`, leaf, html: renderToString(BuildSheetPage({ leaf, root: rootFrom(path) })) };
    }),
  ];
}

export function printStore(all: readonly Goods[], shop: Shop): Printed[] {
  const items = all.map((variants) => storeItem(variants, shop.division));
  const open = storeShop(shop);
  return [
    ...items.map((item) => {
      const path = productPagePath(item.slug);
      const leaf = productPageLeaf(item, open);
      return { path: `store/${path}`, leaf, html: renderToString(ProductPageView({ leaf, root: rootFrom(path) })) };
    }),
    ...shopPages(items, open, false).map(({ path, html }) => ({
      path,
      leaf: [],
      html: html.replace(/^<!doctype html>\n/, ""),
    })),
    ...items.map((item) => {
      const path = sparesPath(item.slug);
      const leaf = sparesPageLeaf(item, open);
      return { path: `store/${path}`, leaf, html: renderToString(SparesPageView({ leaf, root: rootFrom(path) })) };
    }),
    ...items.flatMap((item) =>
      item.variants.map((variant) => {
        const path = careCardPath(item.slug, variant.slug);
        const leaf = careCardLeaf(item, variant, open);
        return { path: `store/${path}`, leaf, html: renderToString(CareCardPage({ leaf, root: rootFrom(path) })) };
      }),
    ),
  ];
}

export function printGuide(markdown: string, shop: Shop): Printed[] {
  const landing = landingLeaf(shop);
  const source = { path: indexPath, markdown };
  const guide = guidePageLeaf(source, [source], () => undefined);
  return [
    { path: indexPath, leaf: landing, html: renderToString(LandingPage({ leaf: landing, root: "" })) },
    { path: `guide/${indexPath}`, leaf: guide, html: renderToString(GuidePageView({ leaf: guide, root: "" })) },
  ];
}
