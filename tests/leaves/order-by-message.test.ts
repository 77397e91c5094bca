// Ordering without a form: letters that are written already, and nothing in them that ends or forges one.
import { describe, expect, it } from "vitest";
import { availabilityOfAll } from "../../src/leaves/availability-words.ts";
import { letterTo, orderByMessage, orderLetter, orderText } from "../../src/leaves/order-by-message.ts";
import { productPageLeaf } from "../../src/leaves/product-page.ts";
import { type StoreItem, storeItem, storeShop } from "../../src/leaves/store-item.ts";
import { demoShop, demoVariants } from "./demo-goods.ts";
import { corral, shop } from "./worked-goods.ts";

const goods: StoreItem = storeItem(corral, shop.division);
const open = storeShop(shop);
const [plain, white] = goods.offers;

/** RFC 6068: a mailto address, its fields, each percent-encoded. */
const parsed = (letter: string | undefined) => {
  const [to = "", fields = ""] = (letter ?? "").replace(/^mailto:/, "").split("?");
  return { to, ...Object.fromEntries(new URLSearchParams(fields.replaceAll("+", "%2B"))) };
};

describe("a letter", () => {
  it("goes to the shop, names the variant in its subject and both in its text, its lines end in CR LF", () => {
    const letter = parsed(orderLetter(goods, white as (typeof goods.offers)[0], open)) as Record<string, string>;
    expect(letter.to).toBe("yard@example.com");
    expect(letter.subject).toBe("Order: Hose-and-pot corral, white");
    expect(letter.body).toContain("Number in the shop: hose-and-pot-corral/white\r\n");
  });
  it("words of a maker can't add a receiver, a field or a line of the head", () => {
    const letter = letterTo(open, "a&bcc=thief@example.org\r\nBcc: x", "?&cc=y\ud800") ?? "";
    expect(letter.match(/[?&]/g)).toEqual(["?", "&"]);
    expect(letter).not.toMatch(/[\r\n\s]/);
    expect(parsed(letter)).toEqual({
      to: "yard@example.com",
      subject: "a&bcc=thief@example.org\r\nBcc: x",
      body: "?&cc=y\ufffd",
    });
  });
  it("is none where the shop names no address for mail; the text to copy is there all the same", () => {
    const phone = { ...open, contact: "555 0100, or javascript:alert(1)@x" };
    expect(orderLetter(goods, plain, phone)).toBeUndefined();
    expect(orderByMessage(goods, phone).text).toBe(orderText(goods, plain));
  });
  it("asks for the buyer's words with their limit and says that they come back letter by letter", () => {
    const worded = { ...goods, sayings: [{ name: "top-plank", most: 12, standard: "Eggs" }] };
    expect(orderText(worded, plain)).toContain(
      "Top plank, at most 12 letters, spelled as it is to stand (“Eggs” if you leave it):",
    );
    expect(orderByMessage(worded, open).says.join(" ")).toContain("letter by letter");
    expect(orderByMessage(goods, open).says.join(" ")).not.toContain("letter by letter");
  });
});

describe("what is sold", () => {
  const gone = (all: boolean): StoreItem => ({
    ...goods,
    offers: goods.offers.map((offer, i) =>
      all || i === 0 ? { ...offer, availability: { kind: "sold" as const } } : offer,
    ) as unknown as StoreItem["offers"],
  });
  it("has no letter; the others still do", () => {
    const lines = productPageLeaf(gone(false), open).offers;
    expect(lines.map(({ letter }) => letter !== undefined)).toEqual([false, true, true]);
    expect(lines[0]?.availability).toBe("Sold");
    expect(availabilityOfAll(gone(false).offers)).toBe("Made to order, not every choice any more");
  });
  it("all of it sold: nothing to copy, and it says so", () => {
    expect(orderByMessage(gone(true), open).text).toBeUndefined();
    expect(productPageLeaf(gone(true), open).availability).toBe("Sold");
  });
});

describe("rows of letters", () => {
  const rows = { count: 3, height: 1.5, ways: ["stencil", "film"] };
  it("3 rows of 1 1/2 in letters are told on the page, and the letter has a numbered line for each", () => {
    const lettered = { ...goods, rows };
    const fact = productPageLeaf(lettered, open).sizes.find(({ name }) => name === "Words on it")?.value;
    expect(fact?.replaceAll("\u00a0", " ")).toBe(
      "3 rows, letters 1 1\u20442 in (38 mm) high, by stencil or film: tell us what each is to say",
    );
    expect(orderText(lettered, plain)).toMatch(/Words on it, a row each, .*:\n {2}1: \n {2}2: \n {2}3: \n/);
    expect(orderByMessage(lettered, open).says.join(" ")).toContain("letter by letter");
  });
  it("the demo's ladder has 5, and hangs 10 in higher than its 25 1/2 of planks: 35 1/2", () => {
    const [, ladder] = demoVariants().find(([name]) => name === "Stall price ladder") ?? [];
    if (!ladder) throw new Error("no ladder");
    const item = storeItem(ladder, demoShop.division);
    expect(item.rows?.count).toBe(5);
    expect(item.heights.hung).toBeCloseTo(35.5, 6);
  });
});
