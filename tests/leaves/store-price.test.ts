// The one price that the store shows, how a buyer reads it, and the same on page, in the feed and for machines.
import { describe, expect, it } from "vitest";
import { isPriced, type Pricing, pricingsOf } from "../../src/findings/pricing.ts";
import { shownPrices } from "../../src/findings/shown-price.ts";
import { atomFeed } from "../../src/leaves/feed.ts";
import { priceSheetLeaf } from "../../src/leaves/price-sheet.ts";
import { productData } from "../../src/leaves/product-data.ts";
import { productPageLeaf } from "../../src/leaves/product-page.ts";
import { storeIndexLeaf } from "../../src/leaves/store-index.ts";
import { type StoreItem, storeItem, storeShop } from "../../src/leaves/store-item.ts";
import { priceRange, priceText, priceWords, type StorePrice } from "../../src/leaves/store-price.ts";
import { exact } from "../../src/units/length.ts";
import { demoShop, demoVariants } from "./demo-goods.ts";
import { corral, shop } from "./worked-goods.ts";

const price = (dollars: number): StorePrice => ({ amount: exact(dollars), sold: { by: "posted", tax: "out" } });

describe("a price", () => {
  it("the words say what is in it", () => {
    expect(priceWords(price(1))).toBe("postage within the country is in it; sales tax is added where it is due");
    expect(priceWords({ amount: exact(1), sold: { by: "stall", tax: "in" } })).toMatch(/sales tax is in it$/);
  });
  it("a range from the least to the most, or one price", () => {
    expect(priceRange([price(112), price(84), price(90)])).toBe("$84.00 to $112.00");
    expect(priceRange([price(84), price(84)])).toBe("$84.00");
    expect(priceRange([])).toBeUndefined();
    expect(priceWords({ amount: exact(1) })).toBe("");
  });
});

const goods: StoreItem = {
  ...storeItem(corral, shop.division, undefined, (item) => price(item.variant.slug === "oil" ? 112.5 : 84)),
  listed: "2026-10-05",
};
const online = { ...storeShop(shop), address: "https://yard.example/" };

describe("84 plain and white, 112.50 oiled", () => {
  const page = productPageLeaf(goods, online);
  it("the page has the range at its top and each in its row and at its finish", () => {
    expect(page.price?.text).toBe("$84.00 to $112.50");
    expect(page.offers.map((one) => one.price)).toEqual(["$84.00", "$84.00", "$112.50"]);
    expect(page.finishes.map((one) => one.price)).toEqual(["$84.00", "$84.00", "$112.50"]);
  });
  it("machines read the same: 84.00, 84.00, 112.50 USD", () => {
    const { offers } = productData(goods, online, "x");
    expect(offers.map((one) => [one.price, one.priceCurrency])).toEqual([
      ["84.00", "USD"],
      ["84.00", "USD"],
      ["112.50", "USD"],
    ]);
  });
  it("so do the first page and the feed", () => {
    expect(storeIndexLeaf([goods], online).goods[0]?.price).toBe("$84.00 to $112.50");
    expect(atomFeed([goods], online)).toContain("$84.00 to $112.50. Made to order.");
  });
});

describe("words of the buyer's own", () => {
  it("12.00 more stands on the page and in the letter, where there are rows of letters", () => {
    const sayings = [{ name: "plank", most: 12, standard: "Eggs" }];
    const worded = storeItem(corral, shop.division, undefined, () => ({ ...price(84), ownWords: exact(12) }));
    expect(productPageLeaf({ ...worded, sayings }, online).ownWords).toContain("$12.00 more");
    expect(productPageLeaf({ ...worded, sayings }, online).order.text).toContain("cost $12.00 more");
    expect(productPageLeaf(worded, online).ownWords).toBeUndefined();
  });
});

describe("the demo's prices", () => {
  it.each(demoVariants())("%s: every price on the page stands on the price sheet", (_, variants) => {
    if (!isPriced(demoShop)) throw new Error("the demo has no prices");
    const pricings = pricingsOf(variants, demoShop) as [Pricing, ...Pricing[]];
    const sheet = JSON.stringify(priceSheetLeaf(pricings, demoShop));
    const shown = shownPrices(variants, demoShop, pricings);
    expect(shown.map((one) => one && sheet.includes(priceText(one)))).toEqual(variants.map(() => true));
  });
});
