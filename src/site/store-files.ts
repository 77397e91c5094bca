// Store items and shop -> files of the store beside its pages: robots.txt; with an address also feed, site map and preview pictures.
import type { Drawing } from "../drawing/drawing.ts";
import { outlined } from "../drawing/outlined.ts";
import { formatSvg } from "../drawing/svg.ts";
import { atomFeed, robotsText, siteMap } from "../leaves/feed.ts";
import { imageName, imageOf, listingImages } from "../leaves/listing-images.ts";
import { previewSize } from "../leaves/on-the-web.ts";
import { feedPath, listingImagePath, picturePath } from "../leaves/paths.ts";
import { drawnFiles } from "../leaves/store-images.ts";
import { type StoreItem, type StoreShop, storeShop } from "../leaves/store-item.ts";
import type { Shop } from "../yard/yard.ts";
import type { Photos } from "./photos/read-photos.ts";
import type { Asset } from "./site.ts";
import { typeFaces } from "./type-faces.ts";

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
  const robots: Asset = { path: "store/robots.txt", text: robotsText(shop) };
  if (shop.address === undefined) return [robots];
  const texts = [
    [feedPath, atomFeed(items, shop)],
    ["sitemap.xml", siteMap(items, shop)],
  ] as const;
  return [
    robots,
    ...texts.flatMap(([path, text]) => (text === undefined ? [] : [{ path: `store/${path}`, text }])),
    ...items.map((item) => ({
      path: `store/${picturePath(item.slug)}`,
      drawn: () => drawnAs(imageOf(item, shop, "hero", previewSize)),
      size: previewSize,
    })),
  ];
}

/** Every letter is drawn as an outline: the same pixels on a machine without fonts. */
const drawnAs = (drawing: Drawing): string => formatSvg(outlined(drawing, typeFaces()));

/** Pictures to upload where the goods are listed elsewhere: of drawings and of photographs, in every size the shop asks for. */
export function listingFiles(item: StoreItem, shop: Shop, photos: Photos): Asset[] {
  const sizes = shop.images ?? [];
  const drawn = listingImages(item, storeShop(shop), sizes).map(
    ({ kind, size, drawing }): Asset => ({
      path: `binder/${listingImagePath(item.slug, `${imageName({ kind, size })}.png`)}`,
      drawn: () => drawnAs(drawing),
      size,
    }),
  );
  const own = photos.filter(({ slug }) => slug === item.slug);
  const framed = sizes.flatMap((size) =>
    own.map(
      ({ photo, whole }): Asset => ({
        path: `binder/${listingImagePath(item.slug, `photo-${photo.number}-${size.width}x${size.height}.jpg`)}`,
        photo: whole,
        size,
      }),
    ),
  );
  return [...framed, ...drawn];
}
