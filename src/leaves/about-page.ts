// Shop -> the page about it: who makes the goods, how they are sold, how to reach the maker.
import type { Fact, Link } from "./leaf.ts";
import { type OnTheWeb, onTheWeb } from "./on-the-web.ts";
import { aboutPath, carePath, indexPath } from "./paths.ts";
import type { StoreShop } from "./store-item.ts";

export type AboutPage = {
  readonly title: string;
  readonly description: string;
  readonly shop: StoreShop;
  readonly paragraphs: readonly string[];
  readonly terms: readonly Fact[];
  /** How its pages keep to what they say. */
  readonly promises: readonly string[];
  readonly links: readonly Link[];
  readonly home: Link;
  readonly web?: OnTheWeb;
};

export function aboutPageLeaf(shop: StoreShop, feed = false): AboutPage {
  const web = onTheWeb(shop, { path: aboutPath, kind: "website", hasFeed: feed });
  const { about, ordering, pickup, delivery, returns } = shop;
  return {
    title: `About ${shop.name}`,
    description: `Who makes the goods of ${shop.name}, how they are ordered, fetched, sent and given back.`,
    shop,
    paragraphs: [shop.tagline, ...(about === undefined ? [] : about.split(/\n+/))],
    terms: [
      { name: "Time", value: ordering },
      ...(pickup === undefined ? [] : [{ name: "Pickup", value: pickup }]),
      ...(delivery === undefined ? [] : [{ name: "Delivery", value: delivery }]),
      ...(returns === undefined ? [] : [{ name: "Returns", value: returns }]),
    ],
    promises: [
      "Every size on these pages is worked out from the drawing that the thing is built to, and every page says where its figures come from.",
      "Where there is a drawing it says that it is one; a photograph shows the thing as it was made.",
      "These pages set no cookie, count no visitor and load nothing from elsewhere.",
    ],
    links: [{ path: carePath, text: "How to look after our wood" }],
    home: { path: indexPath, text: shop.name },
    ...(web ? { web } : {}),
  };
}
