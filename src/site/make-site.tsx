// Everything worked out -> the pages and files of the site. Pure: the same content gives the same bytes.
import { fileURLToPath } from "node:url";
import { assets } from "../../layouts/assets.ts";
import { BinderIndexPage } from "../../layouts/binder-index.tsx";
import { LandingPage } from "../../layouts/landing.tsx";
import type { Pricing } from "../findings/pricing.ts";
import { isForSale } from "../findings/sale.ts";
import type { Item } from "../item/item.ts";
import { binderIndexLeaf } from "../leaves/binder-index.ts";
import { hasFeed } from "../leaves/feed.ts";
import { landingLeaf } from "../leaves/landing.ts";
import { storeShop } from "../leaves/store-item.ts";
import type { Shop } from "../yard/yard.ts";
import { batchPages } from "./batch-pages.tsx";
import { boardsPages } from "./boards-pages.tsx";
import type { SourceFile } from "./content-files.ts";
import { drawingsPage } from "./drawings-page.tsx";
import { guidePages } from "./guide-pages.tsx";
import { orderPages } from "./order-pages.tsx";
import { packShelf } from "./pack-shelf.tsx";
import { pageHtml } from "./page-html.ts";
import type { Photos } from "./photos/read-photos.ts";
import { pricingsFor } from "./pricings.ts";
import { schemaFiles } from "./schema-files.ts";
import { seasonPages } from "./season-page.tsx";
import { binderPartOf, listingPageOf, storeItemOf, storePagesOf, type Variants } from "./shelf-pages.tsx";
import { shopPages } from "./shop-pages.tsx";
import type { Asset, Page, Part, Site } from "./site.ts";
import { drawingFiles, listingFiles, photoFiles, storeFiles, withPhotos } from "./store-files.ts";
import type { WorkedContent } from "./work-content.ts";

/** Recipes without a worked-out variant are passed over; without a shop there is no page. */
export function makeSite(
  worked: WorkedContent,
  guide: readonly SourceFile[],
  asked: readonly Part[],
  photos: Photos = [],
): Site {
  const { shop } = worked;
  if (!shop) return { pages: [], assets: [], packs: [] };
  const binderToo = (variants: Variants, hash: string): void => {
    if (asked.includes("binder")) binderPartOf(variants, shop, hash);
  };
  const { packs, pages: packPages } = asked.includes("packs") ? packShelf(worked, binderToo) : { packs: [], pages: [] };
  const made = asked.filter(
    (part) => (part !== "guide" || guide.length > 0) && (part !== "packs" || packPages.length > 0),
  );
  const recipes = worked.recipes.flatMap(({ items: [standard, ...others], hash }) =>
    standard ? [{ variants: [standard, ...others] as Variants, hash }] : [],
  );

  const pages: Page[] = [];
  const files: Asset[] = [];
  if (made.includes("binder")) {
    const parts = recipes.map(({ variants, hash }) =>
      binderPartOf(variants, shop, hash, worked.printed.get(variants[0].slug)),
    );
    const leaf = binderIndexLeaf(
      recipes.map(({ variants }) => variants[0]),
      shop,
      worked.orders.length,
      new Map(recipes.map(({ variants }, i) => [variants[0].slug, parts[i]?.changes])),
    );
    pages.push({ path: "binder/index.html", html: pageHtml(<BinderIndexPage leaf={leaf} root="" />) });
    for (const part of parts) {
      pages.push(...part.pages);
      files.push(...part.printed);
    }
    for (const { variants, hash } of recipes) {
      const goods = withPhotos(storeItemOf(variants, shop, hash), photos);
      pages.push(listingPageOf(variants, goods, shop));
      if (isForSale(variants[0])) files.push(...listingFiles(goods, shop, photos));
    }
    pages.push(
      ...batchPages(
        recipes.map(({ variants: [item], hash }) => ({ item, hash })),
        shop,
      ),
    );
    pages.push(...boardsPages(worked, shop));
    pages.push(drawingsPage(recipes, shop));
    pages.push(
      ...seasonPages(
        recipes.map(({ variants, hash }) => pricingsFor(variants, shop, hash)),
        shop,
      ),
    );
    pages.push(...orderPages(worked.orders, shop, pricingIn(recipes, shop)));
  }
  if (made.includes("store")) {
    const open = storeShop(shop);
    const items = recipes
      .filter(({ variants }) => isForSale(variants[0]))
      .map(({ variants, hash }) => ({ item: withPhotos(storeItemOf(variants, shop, hash), photos), hash }));
    const goods = items.map(({ item }) => item);
    const feed = hasFeed(goods, open);
    pages.push(...shopPages(goods, open, feed));
    pages.push(...items.flatMap(({ item, hash }) => storePagesOf(item, open, feed, hash)));
    files.push(...drawingFiles(goods), ...photoFiles(goods, photos), ...storeFiles(goods, open));
  }
  pages.push(...packPages);
  if (made.includes("guide")) pages.push(...guidePages(guide, worked));

  const landing = landingLeaf(shop);
  const shelves = landing.shelves.filter(({ link }) => made.some((part) => link.path.startsWith(`${part}/`)));
  pages.push({ path: "index.html", html: pageHtml(<LandingPage leaf={{ ...landing, shelves }} root="" />) });
  const schemas = made.includes("guide") ? schemaFiles() : [];
  return { pages, packs, assets: [...["", ...made].flatMap(assetsOf), ...files, ...schemas] };
}

type Made = { readonly variants: Variants; readonly hash: string };

/** The prices of a variant of these recipes. */
const pricingIn =
  (recipes: readonly Made[], shop: Shop) =>
  ({ slug, variant }: Item): Pricing | undefined => {
    const made = recipes.find(({ variants }) => variants[0].slug === slug);
    const pricings = made ? pricingsFor(made.variants, shop, made.hash) : [];
    return pricings.find(({ item }) => item.variant.slug === variant.slug);
  };

/** Every part carries its own copies, so that it can be taken away alone; other parts' styles stay out. */
function assetsOf(part: string): Asset[] {
  const look = part === "" ? "guide" : part === "packs" ? "store" : part;
  return assets
    .filter(({ path }) => !/^assets\/(binder|store|guide)\.css$/.test(path) || path === `assets/${look}.css`)
    .map(({ path, from }) => ({
      path: part === "" ? path : `${part}/${path}`,
      from: fileURLToPath(new URL(`../../${from}`, import.meta.url)),
    }));
}
