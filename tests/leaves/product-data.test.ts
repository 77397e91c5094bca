// What machines read of the goods, held against schema.org's own types (package schema-dts), and the files beside the pages.
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { SaxesParser } from "saxes";
import type { Product, WithContext } from "schema-dts";
import { describe, expect, it } from "vitest";
import { atomFeed, siteMap } from "../../src/leaves/feed.ts";
import { onTheWeb } from "../../src/leaves/on-the-web.ts";
import { dataMarkup, productData } from "../../src/leaves/product-data.ts";
import { productPageLeaf } from "../../src/leaves/product-page.ts";
import { type StoreItem, type StoreShop, storeItem, storeShop } from "../../src/leaves/store-item.ts";
import { exact } from "../../src/units/length.ts";
import { poundsAsPrinted } from "../../src/units/mass.ts";
import { readWebAddress } from "../../src/yard/web-address.ts";
import { corral, rack, shop } from "./worked-goods.ts";

const root = join(import.meta.dirname, "../..");
const { listed: _listed, ...goods } = storeItem(corral, shop.division);
const open = storeShop(shop);
const online: StoreShop = { ...open, address: "https://yard.example/store/" };
const data = productData(goods, online, "A corral.");
/** The type check of the whole project refuses this line where our type is not one of schema.org's. */
const typed: WithContext<Product> = data;

/** What the compiler says of a value written out as a Product of schema.org. */
function complaintsOf(value: unknown): string {
  mkdirSync(join(root, ".cache"), { recursive: true });
  const folder = mkdtempSync(join(root, ".cache/product-"));
  try {
    const file = join(folder, "product.ts");
    writeFileSync(
      file,
      `import type { Product, WithContext } from "schema-dts";\nexport const product: WithContext<Product> = ${JSON.stringify(value)};\n`,
    );
    writeFileSync(
      join(folder, "tsconfig.json"),
      JSON.stringify({
        files: ["product.ts"],
        compilerOptions: { strict: true, noEmit: true, skipLibCheck: true, module: "nodenext", types: [] },
      }),
    );
    return spawnSync(process.execPath, [join(root, "node_modules/typescript/bin/tsc"), "-p", folder], {
      encoding: "utf8",
    }).stdout;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

describe("the corral as a Product", () => {
  it("is 30 x 18 x 26 in (INH) and as heavy as the page prints (LBR)", () => {
    const { width, depth, height, weight } = data;
    expect([width, depth, height].map((one) => [one?.value, one?.unitCode])).toEqual([
      [30, "INH"],
      [18, "INH"],
      [26, "INH"],
    ]);
    expect(weight).toEqual({ "@type": "QuantitativeValue", value: 21, unitCode: "LBR" });
    expect(productPageLeaf(goods, open).sizes.find(({ name }) => name === "Weight")?.value).toContain("21 lb");
  });
  it("has an offer for each of its three finishes, made to order, without a price", () => {
    expect(data.offers.map(({ name, availability }) => [name, availability])).toEqual(
      ["plain", "white", "oil"].map((name) => [name, "https://schema.org/MadeToOrder"]),
    );
    expect(JSON.stringify(data)).not.toMatch(/price|cost/i);
  });
  it("2 ready now, made in 3 weeks and sold are InStock with 2, MadeToOrder in 3 WEE, SoldOut; schema.org allows it", () => {
    const states = [
      { kind: "ready", count: 2 },
      { kind: "made", time: { count: 3, unit: "week" } },
      { kind: "sold" },
    ] as const;
    const price = { amount: exact(84) };
    const offers = goods.offers.map((offer, i) => ({ ...offer, price, availability: states[i] ?? states[0] }));
    const stated = productData({ ...goods, offers: offers as unknown as StoreItem["offers"] }, online, "A corral.");
    expect(stated.offers.map((one) => one.availability.split("/").at(-1))).toEqual([
      "InStock",
      "MadeToOrder",
      "SoldOut",
    ]);
    expect(stated.offers[0]?.inventoryLevel?.value).toBe(2);
    expect(stated.offers[1]?.deliveryLeadTime).toMatchObject({ value: 3, unitCode: "WEE" });
    expect(complaintsOf(JSON.parse(dataMarkup(stated).html))).toBe("");
  }, 60_000);
  it("a pair weighs what both weigh, 42.8 lb; its sizes are said of one of the two, 21.4 lb each", () => {
    const pair = productData(
      {
        ...goods,
        soldAs: { count: 2, words: "pair", weight: 42.8 },
        offers: goods.offers.map((offer) => ({ ...offer, weight: 42.8 })) as unknown as StoreItem["offers"],
      },
      online,
      "Two corrals.",
    );
    expect([pair.width, pair.weight.value]).toEqual([undefined, poundsAsPrinted(42.8)]);
    expect(pair.offers[0]?.includesObject).toMatchObject({ amountOfThisGood: 2, typeOfGood: { width: { value: 30 } } });
    expect(pair.offers[0]?.includesObject?.typeOfGood.weight.value).toBe(poundsAsPrinted(21.4));
    expect(complaintsOf(JSON.parse(dataMarkup(pair).html))).toBe("");
  }, 60_000);
  it("is what schema.org's own types allow, as it stands in the page; a word they don't know is refused", () => {
    expect(typed["@type"]).toBe("Product");
    const printed = JSON.parse(dataMarkup(data).html) as object;
    expect(complaintsOf(printed)).toBe("");
    expect(complaintsOf({ ...printed, length: 30 })).toContain("length");
    expect(
      complaintsOf({ ...printed, offers: [{ "@type": "Offer", availability: "https://schema.org/Someday" }] }),
    ).not.toBe("");
  }, 60_000);
  it("names no address unless the shop has one", () => {
    const without = JSON.stringify(productData(goods, open, "A corral."));
    expect(without).not.toMatch(/"(url|image)"/);
    expect([data.url, data.image]).toEqual([
      "https://yard.example/store/goods/hose-and-pot-corral.html",
      "https://yard.example/store/pictures/hose-and-pot-corral.png",
    ]);
  });
  it("text that would end its element stays text", () => {
    const title = "</script><script>alert(1)</script><!--&\u2028";
    const { html } = dataMarkup(productData({ ...goods, title }, open, title));
    expect(html).not.toMatch(/[<>&\u2028]/);
    expect(JSON.parse(html)).toMatchObject({ name: title, description: title });
  });
});

/** Elements of an XML text with their attributes and words; what isn't well-formed throws. */
function elementsOf(xml: string): { name: string; attributes: Record<string, string>; text: string }[] {
  const all: { name: string; attributes: Record<string, string>; text: string }[] = [];
  const inside: typeof all = [];
  const parser = new SaxesParser();
  parser.on("error", (error) => {
    throw error;
  });
  parser.on("opentag", ({ name, attributes }) => {
    const element = { name, attributes: attributes as Record<string, string>, text: "" };
    all.push(element);
    inside.push(element);
  });
  parser.on("text", (text) => {
    const element = inside.at(-1);
    if (element) element.text += text;
  });
  parser.on("closetag", () => inside.pop());
  parser.write(xml).close();
  return all;
}

const dated = (item: StoreItem, listed: string): StoreItem => ({ ...item, listed });

describe("feed and map", () => {
  const two = [dated(goods, "2026-10-05"), dated(storeItem(rack, shop.division), "2026-11-01")];
  it("the feed (RFC 4287) has the newest first and its day as its own; each entry id, title, updated and a link", () => {
    const elements = elementsOf(atomFeed(two, online) ?? "");
    const texts = (name: string) => elements.filter((one) => one.name === name).map(({ text }) => text);
    expect(texts("updated")).toEqual(["2026-11-01T00:00:00Z", "2026-11-01T00:00:00Z", "2026-10-05T00:00:00Z"]);
    expect(texts("title")).toEqual([shop.name, rack[0].title, goods.title]);
    expect(new Set(texts("id")).size).toBe(3);
    expect(
      elements.filter(({ attributes }) => attributes.rel === "self").map(({ attributes }) => attributes.href),
    ).toEqual(["https://yard.example/store/feed.xml"]);
  });
  it("none without an address or without a day", () => {
    expect(atomFeed(two, open)).toBeUndefined();
    expect(atomFeed([goods], online)).toBeUndefined();
    expect(siteMap(two, open)).toBeUndefined();
    expect(onTheWeb(open, { path: "index.html", kind: "website", hasFeed: true })).toBeUndefined();
  });
  it("the map has the first page, each product and its pieces, the line, care and the shop: 1 + 2 + 2 + 1 + 2 = 8", () => {
    const places = elementsOf(siteMap(two, online) ?? "").filter(({ name }) => name === "loc");
    expect(places.map(({ text }) => text)).toEqual(
      [
        "",
        "goods/hose-and-pot-corral.html",
        "goods/seedling-hardening-rack.html",
        "lines/garden-line.html",
        "spares/hose-and-pot-corral.html",
        "spares/seedling-hardening-rack.html",
        "care.html",
        "about.html",
      ].map((path) => `https://yard.example/store/${path}`),
    );
  });
  it("markup and signs that XML can't hold stay text or go", () => {
    const title = `</title><x a="1">&\u0007]]>`;
    const elements = elementsOf(atomFeed([{ ...dated(goods, "2026-10-05"), title }], online) ?? "");
    expect(elements.some(({ name }) => name === "x")).toBe(false);
    expect(elements.map(({ text }) => text)).toContain(title.replace("\u0007", ""));
  });
});

describe("the shop's address", () => {
  const read = (text: string) => {
    const problems: Parameters<typeof readWebAddress>[1] = [];
    return (
      readWebAddress({ text, at: { file: "shop.yaml", line: 1, column: 10 } }, problems) ??
      problems.map(({ code }) => code).join()
    );
  };
  it.each([
    ["https://shop.example", "https://shop.example/"],
    ["https://shop.example/goods", "https://shop.example/goods/"],
    ["HTTPS://Shop.Example/", "https://shop.example/"],
    ['https://shop.example/"><script>', "https://shop.example/%22%3E%3Cscript%3E/"],
  ])("%s is %s", (text, address) => expect(read(text)).toBe(address));
  it.each([
    "http://shop.example/",
    "javascript:alert(1)",
    "shop.example",
    "https://shop/",
    "https://me:pw@shop.example/",
    "https://shop.example/?a=1",
    "https://shop.example/#a",
    "https://",
  ])("%s is refused", (text) => expect(read(text)).toBe("yard-number"));
});
