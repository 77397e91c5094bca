// Store item -> what machines may read of it: a Product of schema.org with its offers, as JSON-LD. Sizes and weight are those printed.
import type { Division } from "../units/division.ts";
import { asPrinted } from "../units/format-length.ts";
import type { Length } from "../units/length.ts";
import { poundsAsPrinted } from "../units/mass.ts";
import { formatMoney } from "../units/money.ts";
import { schemaAvailability, timeCodes } from "./availability-words.ts";
import type { Markup } from "./leaf.ts";
import { picturePath, productPagePath } from "./paths.ts";
import { photosOf } from "./photos.ts";
import type { StoreItem, StoreOffer, StoreShop } from "./store-item.ts";

/** Units by their codes of UN/CEFACT Recommendation 20: INH inch, LBR pound; C62 one. */
type Quantity<Code extends "INH" | "LBR"> = {
  readonly "@type": "QuantitativeValue";
  readonly value: number;
  readonly unitCode: Code;
};

type Maker = { readonly "@type": "Organization"; readonly name: string };

/** What is sold as several names one of them, with its sizes: the product's own weight is that of all together. */
type Included = {
  readonly "@type": "TypeAndQuantityNode";
  readonly amountOfThisGood: number;
  readonly unitCode: "C62";
  readonly typeOfGood: {
    readonly "@type": "Product";
    readonly name: string;
    readonly width: Quantity<"INH">;
    readonly depth: Quantity<"INH">;
    readonly height: Quantity<"INH">;
    readonly weight: Quantity<"LBR">;
  };
};

type OfferData = {
  readonly "@type": "Offer";
  readonly name: string;
  readonly sku: string;
  readonly price?: string;
  readonly priceCurrency?: "USD";
  readonly availability: (typeof schemaAvailability)[keyof typeof schemaAvailability];
  readonly inventoryLevel?: { readonly "@type": "QuantitativeValue"; readonly value: number };
  readonly deliveryLeadTime?: {
    readonly "@type": "QuantitativeValue";
    readonly value: number;
    readonly unitCode: (typeof timeCodes)[keyof typeof timeCodes];
  };
  readonly includesObject?: Included;
  readonly itemCondition: "https://schema.org/NewCondition";
  readonly seller: Maker;
  readonly url?: string;
};

export type ProductData = {
  readonly "@context": "https://schema.org";
  readonly "@type": "Product";
  readonly name: string;
  readonly description: string;
  readonly category?: string;
  readonly size?: string;
  readonly material: readonly string[];
  /** Absent where several are sold as one: their sizes stand with each offer. */
  readonly width?: Quantity<"INH">;
  readonly depth?: Quantity<"INH">;
  readonly height?: Quantity<"INH">;
  readonly weight: Quantity<"LBR">;
  readonly manufacturer: Maker;
  readonly offers: readonly OfferData[];
  readonly url?: string;
  readonly image?: string | readonly string[];
};

/** `description` is the page's own, one line. */
export function productData(item: StoreItem, shop: StoreShop, description: string): ProductData {
  const inch: Division = shop.division.unit === "in" ? shop.division : { unit: "in", per: 16 };
  const size = (length: Length): Quantity<"INH"> => ({
    "@type": "QuantitativeValue",
    value: asPrinted(length, inch).valueOf(),
    unitCode: "INH",
  });
  const weight = (pounds: number): Quantity<"LBR"> => ({
    "@type": "QuantitativeValue",
    value: poundsAsPrinted(pounds),
    unitCode: "LBR",
  });
  const { width, depth, height } = item.overall;
  const sizes = { width: size(width), depth: size(depth), height: size(height) };
  const [standard] = item.variants;
  const [form] = item.forms;
  const seller: Maker = { "@type": "Organization", name: shop.name };
  const url = shop.address === undefined ? {} : { url: `${shop.address}${productPagePath(item.slug)}` };
  const included = (offer: StoreOffer): { readonly includesObject?: Included } =>
    item.soldAs
      ? {
          includesObject: {
            "@type": "TypeAndQuantityNode",
            amountOfThisGood: item.soldAs.count,
            unitCode: "C62",
            typeOfGood: {
              "@type": "Product",
              name: `${item.title}, one of a ${item.soldAs.words}`,
              width: size(offer.overall.width),
              depth: size(offer.overall.depth),
              height: size(offer.overall.height),
              weight: weight(offer.weight / item.soldAs.count),
            },
          },
        }
      : {};
  return {
    "@context": "https://schema.org",
    "@type": "Product",
    name: item.title,
    description,
    ...(item.line === undefined ? {} : { category: item.line }),
    ...(form ? { size: form.name } : {}),
    material: item.woods,
    ...(item.soldAs ? {} : sizes),
    weight: weight(item.soldAs?.weight ?? standard.weight),
    manufacturer: seller,
    offers: item.offers.map((offer) => ({ ...offerOf(item, offer), ...included(offer), seller, ...url })),
    ...url,
    ...(shop.address === undefined ? {} : { image: imagesOf(item, shop.address) }),
  };
}

/** Photographs first, then the drawing that is shown where the page is linked to. */
function imagesOf(item: StoreItem, address: string): string | readonly string[] {
  const photos = photosOf(item).map(({ image }) => `${address}${image.path}`);
  const drawn = `${address}${picturePath(item.slug)}`;
  return photos.length === 0 ? drawn : [...photos, drawn];
}

const offerOf = (item: StoreItem, { name, slug, availability, price }: StoreOffer) =>
  ({
    "@type": "Offer",
    name,
    sku: `${item.slug}-${slug}`,
    ...(price ? { price: formatMoney(price.amount), priceCurrency: "USD" } : {}),
    availability: schemaAvailability[availability.kind],
    ...(availability.kind === "ready"
      ? { inventoryLevel: { "@type": "QuantitativeValue", value: availability.count } }
      : {}),
    ...(availability.kind === "made" && availability.time
      ? {
          deliveryLeadTime: {
            "@type": "QuantitativeValue",
            value: availability.time.count,
            unitCode: timeCodes[availability.time.unit],
          },
        }
      : {}),
    itemCondition: "https://schema.org/NewCondition",
  }) as const satisfies Omit<OfferData, "seller">;

/** JSON that no text in it can end: signs that mean something to a page are written as numbers. */
export const dataMarkup = (data: ProductData): Markup => ({
  html: JSON.stringify(data).replace(
    /[<>&\u2028\u2029]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`,
  ),
});
