// Store items and the shop's address -> an Atom feed (RFC 4287) of what came into the store, and a map of the site (sitemaps 0.9).
import { availabilityOfAll } from "./availability-words.ts";
import { storeEdition } from "./edition.ts";
import { linesOf } from "./line-page.ts";
import { aboutPath, carePath, feedPath, linePagePath, productPagePath, sparesPath } from "./paths.ts";
import { escapeText, proseText } from "./prose.ts";
import type { StoreItem, StoreShop } from "./store-item.ts";
import { priceRange } from "./store-price.ts";

/** Signs that XML 1.0 has no way to write are left out. */
const xml = (text: string): string =>
  escapeText(text.replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, ""));

type Dated = StoreItem & { readonly listed: string };
const isDated = (item: StoreItem): item is Dated => item.listed !== undefined;

export const hasFeed = (items: readonly StoreItem[], { address }: StoreShop): boolean =>
  address !== undefined && items.some(isDated);

/** Newest first; undefined without an address, or where no item says since when it is in the store. */
export function atomFeed(items: readonly StoreItem[], shop: StoreShop): string | undefined {
  const { address } = shop;
  const dated = items.filter(isDated).sort((a, b) => (a.listed < b.listed ? 1 : a.listed > b.listed ? -1 : 0));
  const [newest] = dated;
  if (address === undefined || !newest) return undefined;
  return `<?xml version="1.0" encoding="utf-8"?>
<feed xmlns="http://www.w3.org/2005/Atom">
<title>${xml(shop.name)}</title>
<subtitle>${xml(shop.tagline)}</subtitle>
<id>${xml(address)}</id>
<link rel="self" type="application/atom+xml" href="${xml(address + feedPath)}"/>
<link rel="alternate" type="text/html" href="${xml(address)}"/>
<updated>${instant(newest.listed)}</updated>
<author><name>${xml(shop.name)}</name></author>
${dated.map((item) => entryOf(item, shop, address)).join("\n")}
</feed>
`;
}

function entryOf(item: Dated, shop: StoreShop, address: string): string {
  const url = xml(address + productPagePath(item.slug));
  const edition = storeEdition(shop.division);
  const { width, depth, height } = item.overall;
  const what = item.purpose ?? item.intro.map((prose) => proseText(prose, edition.figure)).join(" ");
  const sizes = `${edition.length(width)} wide, ${edition.length(depth)} deep, ${edition.length(height)} high.`;
  const price = priceRange(item.offers.flatMap((offer) => (offer.price ? [offer.price] : [])));
  const more = [...(price === undefined ? [] : [`${price}.`]), `${availabilityOfAll(item.offers)}.`].join(" ");
  return `<entry>
<title>${xml(item.title)}</title>
<id>${url}</id>
<link rel="alternate" type="text/html" href="${url}"/>
<updated>${instant(item.listed)}</updated>
<summary>${xml(`${what} ${sizes} ${more}`)}</summary>
</entry>`;
}

const instant = (day: string): string => `${day}T00:00:00Z`;

/** Every page for buyers but the cards: the first one, goods and their pieces, lines, care, the shop; undefined without an address. */
export function siteMap(items: readonly StoreItem[], { address }: StoreShop): string | undefined {
  if (address === undefined) return undefined;
  const pages = [
    "",
    ...items.map(({ slug }) => productPagePath(slug)),
    ...linesOf(items).map(({ line }) => linePagePath(line)),
    ...items.map(({ slug }) => sparesPath(slug)),
    carePath,
    aboutPath,
  ];
  return `<?xml version="1.0" encoding="utf-8"?>
<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">
${pages.map((path) => `<url><loc>${xml(address + path)}</loc></url>`).join("\n")}
</urlset>
`;
}

/** For those that read a whole site (RFC 9309): everything here is meant to be read; and where its map is, if it has an address. */
export const robotsText = ({ address }: StoreShop): string =>
  `User-agent: *\nAllow: /\n${address === undefined ? "" : `\nSitemap: ${address}sitemap.xml\n`}`;
