import { renderToString } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import { CardsPage } from "../../layouts/cards.tsx";
import { pricingsOf, standing } from "../../src/findings/pricing.ts";
import type { Item } from "../../src/item/item.ts";
import { assemblyCard } from "../../src/leaves/assembly-card.ts";
import { cardSizes, cardsLeaf, type StallPrice } from "../../src/leaves/cards.ts";
import { storeItem, storeShop } from "../../src/leaves/store-item.ts";
import { demoItem } from "../drawing/demo.ts";
import { pricedShop, riserRecipe, riserWith, riserYard, workItem } from "../findings/riser.ts";

const shop = pricedShop();
const of = (lines = "", variants: readonly [Item, ...Item[]] = both(lines)) => {
  const stall = pricingsOf(variants, shop).flatMap(({ item, channels }): StallPrice[] =>
    channels
      .filter(({ channel }) => channel.name === "stall")
      .map((one) => ({ variant: item.variant.slug, price: standing(one).price, tax: one.channel.tax })),
  );
  return cardsLeaf(storeItem(variants, shop.division, shop.selling), storeShop(shop), stall);
};
const both = (lines: string): [Item, Item] => {
  const text = lines === "" ? riserRecipe : riserWith(lines);
  return [workItem(text), workItem(text, riserYard(), "plain")];
};
const cards = of();

describe("cards", () => {
  it("fill their sheets: two tags on ten places come five times each, one after the other", () => {
    const [sheet, ...more] = cards.tags.sheets;
    expect(more).toEqual([]);
    expect(sheet?.map(({ variant }) => variant)).toEqual(Array.from({ length: 5 }, () => ["oiled", "plain"]).flat());
    expect(cards.tags.says).toBe("10 on a sheet, each 88 × 52 mm (3.46 × 2.05 in)");
  });

  it("of each sort a sheet is within 198 × 263 mm: Letter less 8 and 6 mm, A4 less 6 mm at its sides", () => {
    const across = { tag: 2, stall: 2, care: 2, slip: 1, assembly: 1 };
    for (const [kind, { each, width, height }] of Object.entries(cardSizes)) {
      const columns = across[kind as keyof typeof across];
      expect(columns * width).toBeLessThanOrEqual(198);
      expect((each / columns) * height).toBeLessThanOrEqual(263);
    }
  });

  it("a tag has size, wood, finish and open lines for lot and day; bare wood says that it is bare", () => {
    const [oiled, plain] = cards.tags.sheets[0] ?? [];
    expect(oiled?.facts.map(({ name, value }) => `${name}: ${value}`)).toEqual([
      "Size: 24\u00a0×\u00a05\u00a01\u20442\u00a0×\u00a08\u00a03\u20444\u00a0in",
      "Wood: pine",
      "Finish: oil",
    ]);
    expect([oiled?.unfinished, plain?.unfinished, plain?.toFill]).toEqual([false, true, ["Lot", "Made on"]]);
  });

  it("the stall's card shows the stall's price: 74.50 worked out, tax in it; 80 where that is asked there", () => {
    expect(cards.stall?.sheets[0]?.[0]).toMatchObject({ variant: "oiled", price: "$74.50", tax: "sales tax in it" });
    expect(of("price: 120, stall 80").stall?.sheets[0]?.[0]?.price).toBe("$80");
  });

  it("without a stall there are no stall cards, and the page leaves them out", () => {
    const [oiled, plain] = both("");
    const leaf = cardsLeaf(storeItem([oiled, plain], shop.division, shop.selling), storeShop(shop), []);
    expect(leaf.stall).toBeUndefined();
    expect(renderToString(CardsPage({ leaf, root: "../" })).includes("cut-stall")).toBe(false);
  });

  it("a packing slip lists what is in the parcel, has the variants to tick, and no price", () => {
    const [slip] = cards.slips.sheets[0] ?? [];
    expect(slip?.included).toEqual(["1 × stall riser", "1 × care card"]);
    expect(slip?.variants).toEqual(["oiled", "plain"]);
    expect(JSON.stringify(slip)).not.toContain("$");
    expect(of("sold as: pair").slips.sheets[0]?.[0]?.included[0]).toBe("2 × stall riser");
  });

  it("nothing private is on a card: no wage, no floor, no cost", () => {
    const html = renderToString(CardsPage({ leaf: cards, root: "../" }));
    for (const amount of ["30.00", "57.00", "48.27", "13.32"]) expect(html.includes(amount)).toBe(false);
    expect(html).toContain("$74.50");
  });

  it("hostile names stay text", () => {
    const bad = storeItem(both(""), shop.division, shop.selling);
    const leaf = cardsLeaf({ ...bad, title: `"><script>alert(1)</script>` }, storeShop(shop), []);
    expect(renderToString(CardsPage({ leaf, root: "../" })).includes("<script>")).toBe(false);
  });
});

describe("the assembly card", () => {
  const trestles = demoItem("trestle-pair-with-plank-top");
  const card = assemblyCard(trestles, shop.division);

  it("counts what is left to put together: two trestles, four planks on two bearers with 2 screws each, 16 in all", () => {
    expect(card?.heading).toBe("Lay the top");
    expect(card?.parts[0]).toBe("2 × trestle");
    expect(card?.parts.slice(1).reduce((sum, part) => sum + Number.parseInt(part, 10), 0)).toBe(4);
    expect(card?.fasteners).toEqual(["16 × screw No. 10 x 3\u00a01\u20442"]);
    expect(card?.tools.length).toBeGreaterThan(0);
    expect(card?.steps.length).toBeGreaterThan(2);
  });

  it("lies in the parcel and on a sheet of its own", () => {
    const leaf = cardsLeaf(storeItem([trestles], shop.division), storeShop(shop), [], card);
    expect(leaf.slips.sheets[0]?.[0]?.included).toContain("1 × assembly card");
    expect(renderToString(CardsPage({ leaf, root: "../" })).includes("cut-assembly")).toBe(true);
  });

  it("there is none where nothing is left to the buyer", () => {
    expect(assemblyCard(workItem(riserRecipe), shop.division)).toBeUndefined();
    expect(cards.assembly).toBeUndefined();
  });
});
