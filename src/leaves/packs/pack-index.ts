// Plans that are sold -> the first page of their shelf: what each is, and its files.
import { threeSizes } from "../edition.ts";
import type { Link } from "../leaf.ts";
import type { PackItem } from "./pack-item.ts";
import type { PackShop } from "./pack-shop.ts";
import { revisionWords } from "./terms-sheet.ts";

export type PackEntry = {
  readonly title: string;
  readonly says: string;
  readonly revision: string;
  readonly archive: Link;
  readonly files: readonly { readonly link: Link; readonly says: string }[];
};

export type PackIndex = {
  readonly title: string;
  readonly description: string;
  readonly shopName: string;
  readonly notice?: string;
  readonly licence: string;
  readonly plans: readonly PackEntry[];
};

export const packIndexLeaf = (plans: readonly PackEntry[], shop: PackShop): PackIndex => ({
  title: "Plans",
  description: `Plan packs of ${shop.name}: each with all that somebody needs who builds it from the plan alone.`,
  shopName: shop.name,
  ...(shop.notice === undefined ? {} : { notice: shop.notice }),
  licence: shop.plans.licence,
  plans,
});

/** `archive` and `files` by their paths from the shelf's root. */
export function packEntry(
  item: PackItem,
  shop: PackShop,
  archive: string,
  files: readonly { readonly path: string; readonly says: string }[],
): PackEntry {
  const { width, depth, height } = item.overall;
  return {
    title: item.title,
    says: `${item.purpose === undefined ? "" : `${item.purpose} `}${threeSizes([width, depth, height], shop.division)}.`,
    revision: revisionWords(item),
    archive: { path: archive, text: "Everything in one archive (zip)" },
    files: files.map(({ path, says }) => ({ link: { path, text: path.split("/").slice(1).join("/") }, says })),
  };
}
