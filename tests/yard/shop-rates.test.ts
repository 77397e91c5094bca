// Minutes, times that were taken and selling in the shop file: what is read, and what is told.
import { describe, expect, test } from "vitest";
import { readShop } from "../../src/yard/read-shop.ts";
import { shopText } from "../findings/riser.ts";

const told = (text: string): string[] =>
  readShop("shop.yaml", text).problems.map((p) => `${p.at.line}:${p.at.column} ${p.code}`);
const changed = (from: string, to: string) => told(shopText.replace(from, to));

describe("minutes and selling", () => {
  const { shop } = readShop("shop.yaml", shopText);

  test("minutes for one, and to set up: 1.5, 4 to set up; .5 is 1/2; without a set-up there is none", () => {
    const of = (work: "rip" | "screw" | "sand") =>
      [shop?.minutes?.rates[work].each, shop?.minutes?.rates[work].setUp].map((one) => one?.toFraction());
    expect([of("rip"), of("screw"), of("sand")]).toEqual([
      ["3/2", "4"],
      ["1/2", "5"],
      ["2", "0"],
    ]);
  });

  test("shares in % are exact: 6.5 is 13/200, with a sign or without", () => {
    expect(shop?.selling?.channels.map(({ name, fee }) => [name, fee.toFraction()])).toEqual([
      ["local", "0"],
      ["stall", "3/100"],
      ["posted", "13/200"],
    ]);
  });

  test("a way of selling may be left out", () => {
    const { shop } = readShop("shop.yaml", shopText.replace(/ {2}stall:[\s\S]*? {2}posted:/, "  posted:"));
    expect(shop?.selling?.channels.map(({ name }) => name)).toEqual(["local", "posted"]);
  });
});

describe("what is told", () => {
  test.each([
    ["rip: 1.5, 4 to set up", "rip: 1.5 min", "13:8 shop-minutes"],
    ["rip: 1.5, 4 to set up", "rip: -1", "13:8 shop-minutes"],
    ["fetch: 20", "fetch: 20, 4 to set up", "12:10 shop-minutes"],
    ["  hole: 0.75, 3 to set up\n", "", "11:1 missing-key"],
    ["hole:", "holes:", "16:3 unknown-key"],
    ["batch: 1", "batch: 3", "27:10 not-one-of"],
    ["overhead: 10", "overhead: 100", "28:13 yard-number"],
    ["overhead: 10", "overhead: some", "28:13 yard-number"],
    ["abrasives: 0.10", "abrasives: 0.105", "32:14 yard-price"],
    ["weight: 2 lb", "weight: 2", "38:13 yard-number"],
    ["divisor: 139", "divisor: 0", "41:14 yard-number"],
    ["fee: 3 %", "fee: 96", "52:10 fees-too-high"],
    ["minutes:\n", "timed:\n  rip: 40 for 0\nminutes:\n", "12:8 shop-minutes"],
    ["minutes:\n", "timed:\n  rip: 40\nminutes:\n", "12:8 shop-minutes"],
  ])("%j as %j: %s", (from, to, line) => {
    expect(changed(from, to)).toContain(line);
    expect(readShop("shop.yaml", shopText.replace(from, to)).shop).toBeUndefined();
  });

  test("selling, or times, without minutes", () => {
    const selling = shopText.replace(/minutes:[\s\S]*(?=selling:)/, "");
    expect(told(selling)).toEqual(["11:1 selling-alone"]);
    expect(told(selling.replace(/selling:[\s\S]*/, "timed:\n  rip: 40 for 32\n"))).toEqual(["11:1 timed-alone"]);
  });

  test("no way to sell", () => {
    expect(told(shopText.replace(/ {2}local:[\s\S]*/, ""))).toEqual(["27:10 selling-nowhere"]);
  });

  test("fees of 96 % with 5 % tax on top take 100.8 %", () => {
    const { problems } = readShop("shop.yaml", shopText.replace("fee: 3 %", "fee: 96"));
    expect(problems.map(({ says }) => says).join()).toContain("take 100.8 %");
  });
});
