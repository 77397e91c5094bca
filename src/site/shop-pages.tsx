// Store items and shop -> the pages of the store that are about all of them: the first one, lines, care, the shop itself.
import { AboutPageView } from "../../layouts/about-page.tsx";
import { CarePageView } from "../../layouts/care-page.tsx";
import { LinePageView } from "../../layouts/line-page.tsx";
import { StoreIndexPage } from "../../layouts/store-index.tsx";
import { aboutPageLeaf } from "../leaves/about-page.ts";
import { carePageLeaf } from "../leaves/care-page.ts";
import { linePageLeaf, linesOf } from "../leaves/line-page.ts";
import { aboutPath, carePath, linePagePath, rootFrom } from "../leaves/paths.ts";
import { storeIndexLeaf } from "../leaves/store-index.ts";
import type { StoreItem, StoreShop } from "../leaves/store-item.ts";
import { pageHtml } from "./page-html.ts";
import type { Page } from "./site.ts";

/** Two lines whose names give the same address share a page: the first one's. */
export function shopPages(items: readonly StoreItem[], shop: StoreShop, feed: boolean): readonly Page[] {
  const lines = new Map(linesOf(items).map(({ line }) => [linePagePath(line), line]));
  const linePages = [...lines.keys()].map((path) => {
    const own = items.filter(({ line }) => line !== undefined && linePagePath(line) === path);
    const leaf = linePageLeaf(own[0]?.line ?? "", own, shop, feed);
    return { path: `store/${path}`, html: pageHtml(<LinePageView leaf={leaf} root={rootFrom(path)} />) };
  });
  const index = storeIndexLeaf(items, shop);
  return [
    { path: "store/index.html", html: pageHtml(<StoreIndexPage leaf={index} root="" />) },
    { path: `store/${aboutPath}`, html: pageHtml(<AboutPageView leaf={aboutPageLeaf(shop, feed)} root="" />) },
    { path: `store/${carePath}`, html: pageHtml(<CarePageView leaf={carePageLeaf(items, shop, feed)} root="" />) },
    ...linePages,
  ];
}
