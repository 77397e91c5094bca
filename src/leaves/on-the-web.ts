// A page of the store and the shop's address -> what others on the web are told of it. Without an address, nothing.
import { feedPath, picturePath } from "./paths.ts";
import { photosOf } from "./photos.ts";
import type { StoreItem, StoreShop } from "./store-item.ts";

/** The one size of preview pictures, in pixels: the usual 1.91 to 1. Common practice, no source. */
export const previewSize = { width: 1200, height: 630 } as const;

export type OnTheWeb = {
  readonly kind: "website" | "product";
  /** The page's own address, whole. */
  readonly canonical: string;
  /** Where the feed stands, from the shelf's root; absent where nothing in the store has a day. */
  readonly feed?: string;
  readonly picture?: {
    readonly url: string;
    readonly type: "image/png" | "image/jpeg";
    readonly width: string;
    readonly height: string;
    readonly alt: string;
  };
};

type Page = {
  readonly path: string;
  readonly kind: OnTheWeb["kind"];
  readonly item?: StoreItem;
  readonly hasFeed: boolean;
};

export function onTheWeb({ address }: StoreShop, { path, kind, item, hasFeed }: Page): OnTheWeb | undefined {
  if (address === undefined) return undefined;
  return {
    kind,
    canonical: `${address}${path === "index.html" ? "" : path}`,
    ...(hasFeed ? { feed: feedPath } : {}),
    ...(item ? { picture: pictureFor(item, address) } : {}),
  };
}

/** The first photograph; else the drawing, made in the size that previews have. */
function pictureFor(item: StoreItem, address: string): NonNullable<OnTheWeb["picture"]> {
  const [photo] = photosOf(item);
  if (photo) {
    const { path, width, height, alt } = photo.image;
    return { url: `${address}${path}`, type: "image/jpeg", width, height, alt };
  }
  return {
    url: `${address}${picturePath(item.slug)}`,
    type: "image/png",
    width: String(previewSize.width),
    height: String(previewSize.height),
    alt: item.variants[0].view.title,
  };
}
