import { describe, expect, it } from "vitest";
import { pricingOf, standing } from "../../src/findings/pricing.ts";
import { shownPrice, shownPrices, surchargeOver } from "../../src/findings/shown-price.ts";
import { formatMoney } from "../../src/units/money.ts";
import { pricedShop, riserRecipe, riserWith, riserYard, shopText, workItem } from "./riser.ts";

const shop = pricedShop();
const priced = (lines: string, variant?: string, of = shop) => {
  const item = workItem(lines === "" ? riserRecipe : riserWith(lines), riserYard(), variant);
  const pricing = pricingOf(item, of);
  return { item, pricing, shown: shownPrice(item, of, pricing) };
};
const sold = ({ pricing }: ReturnType<typeof priced>, name: string) =>
  pricing.channels.find(({ channel }) => channel.name === name);

describe("the price that is shown", () => {
  it("is the posted target where the maker asks nothing: 93.6994 by whole dollars is 94, tax added to it", () => {
    const { shown } = priced("");
    expect(shown && formatMoney(shown.amount)).toBe("94.00");
    expect(shown).toMatchObject({ from: "target", sold: { by: "posted", tax: "out" }, variant: "oiled" });
  });

  it("is what the maker asks, one price for all: 120", () => {
    const { shown } = priced("price: 120");
    expect(shown && formatMoney(shown.amount)).toBe("120.00");
    expect(shown?.from).toBe("asked");
  });

  it("or one for each variant; a variant without a line has its target", () => {
    const lines = "price:\n  plain: 99.50";
    expect(formatMoney(priced(lines, "plain").shown?.amount ?? shop.wage)).toBe("99.50");
    expect(priced(lines).shown?.from).toBe("target");
  });

  it("of a thing too heavy to be posted it is the local target: 65", () => {
    const heavy = pricedShop(shopText.replace("most: 100 lb", "most: 16 lb"));
    const { shown } = priced("", undefined, heavy);
    expect(shown && formatMoney(shown.amount)).toBe("65.00");
    expect(shown?.sold?.by).toBe("local");
  });

  it("stands without any pricing where the maker asks it, and is absent where nobody says anything", () => {
    const item = workItem(riserWith("price: 85"));
    expect(shownPrice(item, shop, undefined)).toEqual({ variant: "oiled", amount: item.asked?.shown, from: "asked" });
    expect(shownPrice(workItem(riserRecipe), shop, undefined)).toBeUndefined();
  });

  it("surcharges follow from the variants: oil 94 - 76 = 18 worked out, 120 - 99.50 = 20.50 as asked", () => {
    const over = (lines: string) => {
      const all = [priced(lines), priced(lines, "plain")];
      const [oiled, plain] = shownPrices(
        all.map(({ item }) => item),
        shop,
        all.map(({ pricing }) => pricing),
      );
      return oiled && plain && formatMoney(surchargeOver(oiled, plain));
    };
    expect(over("")).toBe("18.00");
    expect(over("price:\n  oiled: 120\n  plain: 99.50")).toBe("20.50");
  });
});

describe("what is asked, beside what it costs", () => {
  it("posted at 120 leaves 120 - 120 x 1.05 x 0.065 - 0.45 = 111.36, over the floor's 54.8658 + 13.70: 42.7942", () => {
    const asked = sold(priced("price: 120"), "posted")?.asked;
    expect(asked?.net.valueOf()).toBe(111.36);
    expect(asked?.spare.valueOf()).toBe(42.7942);
    expect(asked?.under).toBeUndefined();
  });

  it("an hour of its 67.12 minutes brings (111.36 - (54.8658 + 13.70 - 33.56)) / 1.118667 = 68.25", () => {
    expect(formatMoney(sold(priced("price: 120"), "posted")?.asked?.hourly ?? shop.wage)).toBe("68.25");
  });

  it("80 is under the target of 94, 70 under the floor of 75 as well", () => {
    expect(sold(priced("price: 80"), "posted")?.asked?.under).toBe("target");
    expect(sold(priced("price: 70"), "posted")?.asked?.under).toBe("floor");
    expect(sold(priced("price: 70"), "posted")?.asked?.spare.compare(0)).toBe(-1);
  });

  it("stall and local have their own, or their targets stand: 74.50 and 65", () => {
    const both = priced("price: 120, stall 80, local 70.50");
    expect(["stall", "local"].map((name) => sold(both, name)?.asked?.price.valueOf())).toEqual([80, 70.5]);
    const one = priced("price: 120");
    expect(["stall", "local"].map((name) => sold(one, name)?.asked)).toEqual([undefined, undefined]);
    expect(one.pricing.channels.map((channel) => standing(channel).price.valueOf())).toEqual([65, 74.5, 120]);
  });

  it("a stall price of 57 leaves 57 / 1.05 - 1.71 - 0.10 - 52.2658 = 0.2099; / 1.1 = 0.1908 more for 9.60: up to 9.79", () => {
    const { pricing } = priced("price: 120, stall 57");
    expect(formatMoney(pricing.alarm.boards[0]?.lengths[0]?.most ?? shop.wage)).toBe("9.79");
  });
});

describe("words of the buyer's own", () => {
  const lettered = riserWith("text:\n  words: shelf, 1/2 high, on front, saying Eggs");
  const own = (text: string) => {
    const of = pricedShop(text);
    const item = workItem(lettered);
    return shownPrice(item, of, pricingOf(item, of))?.ownWords;
  };
  const asks = shopText.replace("  local:", "  personalising:\n    material: 0.80\n    minutes: 6\n  local:");

  it("one row: (0.80 + 6 / 60 x 30) x 1.1 / 0.75 = 5.5733; / 0.93175 = 5.98, by whole dollars 6", () => {
    expect(formatMoney(own(asks) ?? shop.wage)).toBe("6.00");
  });

  it("a shop that doesn't offer it, or a thing without letters, has none", () => {
    expect(own(shopText)).toBeUndefined();
    const of = pricedShop(asks);
    const item = workItem(riserRecipe);
    expect(shownPrice(item, of, pricingOf(item, of))?.ownWords).toBeUndefined();
  });
});
