// Store item -> what machines may read of it: a Product of schema.org with its offers, as JSON-LD. Sizes and weight are those printed.
import type { Division } from "../units/division.ts";
import { asPrinted } from "../units/format-length.ts";
import type { Length } from "../units/length.ts";
import { poundsAsPrinted } from "../units/mass.ts";
import type { Markup } from "./leaf.ts";
import { picturePath, productPagePath } from "./paths.ts";
import type { StoreItem, StoreShop, StoreVariant } from "./store-item.ts";

/** Units by their codes of UN/CEFACT Recommendation 20: INH inch, LBR pound. */
type Quantity<Code extends "INH" | "LBR"> = {
  readonly "@type": "QuantitativeValue";
  readonly value: number;
  readonly unitCode: Code;
};

type Maker = { readonly "@type": "Organization"; readonly name: string };

/** Without a price: none is public. Everything is made to order. */
type OfferData = {
  readonly "@type": "Offer";
  readonly name: string;
  readonly sku: string;
  readonly availability: "https://schema.org/MadeToOrder";
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
  readonly width: Quantity<"INH">;
  readonly depth: Quantity<"INH">;
  readonly height: Quantity<"INH">;
  readonly weight: Quantity<"LBR">;
  readonly manufacturer: Maker;
  readonly offers: readonly OfferData[];
  readonly url?: string;
  readonly image?: string;
};

/** `description` is the page's own, one line. */
export function productData(item: StoreItem, shop: StoreShop, description: string): ProductData {
  const inch: Division = shop.division.unit === "in" ? shop.division : { unit: "in", per: 16 };
  const size = (length: Length): Quantity<"INH"> => ({
    "@type": "QuantitativeValue",
    value: asPrinted(length, inch).valueOf(),
    unitCode: "INH",
  });
  const { width, depth, height } = item.overall;
  const [standard] = item.variants;
  const [form] = item.forms;
  const maker: Maker = { "@type": "Organization", name: shop.name };
  const url = shop.address === undefined ? {} : { url: `${shop.address}${productPagePath(item.slug)}` };
  return {
    "@context": "https://schema.org",
    "@type": "Product",
    name: item.title,
    description,
    ...(item.line === undefined ? {} : { category: item.line }),
    ...(form ? { size: form.name } : {}),
    material: item.woods,
    width: size(width),
    depth: size(depth),
    height: size(height),
    weight: { "@type": "QuantitativeValue", value: poundsAsPrinted(standard.weight), unitCode: "LBR" },
    manufacturer: maker,
    offers: item.variants.map((variant) => offerOf(item, variant, maker, url)),
    ...url,
    ...(shop.address === undefined ? {} : { image: `${shop.address}${picturePath(item.slug)}` }),
  };
}

const offerOf = (
  item: StoreItem,
  { name, slug }: StoreVariant,
  seller: Maker,
  url: { readonly url?: string },
): OfferData => ({
  "@type": "Offer",
  name,
  sku: `${item.slug}-${slug}`,
  availability: "https://schema.org/MadeToOrder",
  itemCondition: "https://schema.org/NewCondition",
  seller,
  ...url,
});

/** JSON that no text in it can end: signs that mean something to a page are written as numbers. */
export const dataMarkup = (data: ProductData): Markup => ({
  html: JSON.stringify(data).replace(
    /[<>&\u2028\u2029]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`,
  ),
});
