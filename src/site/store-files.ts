// Store items and shop -> files of the store beside its pages: feed, site map and preview pictures. None without an address.
import { formatSvg } from "../drawing/svg.ts";
import { atomFeed, siteMap } from "../leaves/feed.ts";
import { feedPath, picturePath } from "../leaves/paths.ts";
import { drawnFiles } from "../leaves/store-images.ts";
import type { StoreItem, StoreShop } from "../leaves/store-item.ts";
import type { Photos } from "./photos/read-photos.ts";
import type { Asset } from "./site.ts";

/** Drawings that the pages show are always there. */
export const drawingFiles = (items: readonly StoreItem[]): Asset[] =>
  items.flatMap((item) => drawnFiles(item).map(({ path, text }) => ({ path: `store/${path}`, text })));

export const withPhotos = (item: StoreItem, photos: Photos): StoreItem => ({
  ...item,
  photos: photos.filter(({ slug }) => slug === item.slug).map(({ photo }) => photo),
});

/** Only of what is in the store. */
export const photoFiles = (items: readonly StoreItem[], photos: Photos): Asset[] =>
  photos
    .filter(({ slug }) => items.some((item) => item.slug === slug))
    .flatMap(({ files }) => files.map(({ path, bytes }) => ({ path: `store/${path}`, bytes })));

export function storeFiles(items: readonly StoreItem[], shop: StoreShop): Asset[] {
  if (shop.address === undefined) return [];
  const texts = [
    [feedPath, atomFeed(items, shop)],
    ["sitemap.xml", siteMap(items, shop)],
  ] as const;
  return [
    ...texts.flatMap(([path, text]) => (text === undefined ? [] : [{ path: `store/${path}`, text }])),
    ...items.map((item) => ({ path: `store/${picturePath(item.slug)}`, drawn: previewSvg(item) })),
  ];
}

/** No letters in it: the same pixels on a machine without fonts. */
const previewSvg = ({ variants: [{ view }] }: StoreItem): string =>
  formatSvg({ ...view, marks: view.marks.filter(({ kind }) => kind !== "text" && kind !== "balloon") });
