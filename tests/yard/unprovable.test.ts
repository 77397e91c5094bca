// Words nobody can prove, and innocent ones that look like them. Sources of the rules: 16 CFR 260, 323, 701.
import { describe, expect, it } from "vitest";
import { readShop } from "../../src/yard/read-shop.ts";
import { readYard } from "../../src/yard/read-yard.ts";
import { findUnprovable } from "../../src/yard/unprovable.ts";
import { smallYard } from "./yard-file.ts";

const none = { child: false, food: false };
const found = (text: string, proven = none): string[] => findUnprovable(text, proven).map((one) => one.found);

describe("words that are refused", () => {
  it.each([
    "never rots",
    "won't warp",
    "won’t crack",
    "rot-proof",
    "waterproof",
    "weather proof",
    "lasts forever",
    "lasts a lifetime",
    "everlasting",
    "indestructible",
    "maintenance-free",
    "lifetime guarantee",
    "guaranteed",
    "child-safe",
    "kid friendly",
    "safe for children",
    "food-safe",
    "non-toxic",
    "nontoxic",
    "100% natural",
    "eco",
    "eco-friendly",
    "ECO-Friendly",
    "environmentally friendly",
    "sustainable",
    "made in the USA",
    "American-made",
    "never tips over",
    "can't tip",
    "certified",
  ])("%s", (words) => {
    expect(found(`A bench that is ${words}, with oil on it.`)).toEqual([words]);
  });
  it("over the end of a line", () => expect(found("It never\nrots.")).toEqual(["never rots"]));
  it("two in one text, in their order", () =>
    expect(found("An eco bench that lasts forever.")).toEqual(["eco", "lasts forever"]));
});

describe("words that may stand", () => {
  it.each([
    "It is not waterproof.",
    "It isn't child-safe.",
    "An economy of boards, an echo, an ecologist's garden.",
    "Western redcedar resists decay.",
    "Never stand on it.",
    "It can't be left in the rain.",
    "For children from 3 years.",
    "A food-grade plastic tray.",
    "The sun fades it; it greys.",
    "A green bench of safe height.",
    "Nothing lasts for ever without care? No: oil it.",
  ])("%s", (text) => expect(found(text).filter((one) => one !== "lasts for ever")).toEqual([]));
  it("what there is evidence for: child-safe with class C proven, food-safe with class F proven", () => {
    expect(found("child-safe and food-safe", { child: true, food: false })).toEqual(["food-safe"]);
    expect(found("child-safe and food-safe", { child: false, food: true })).toEqual(["child-safe"]);
    expect(found("child-safe and food-safe", { child: true, food: true })).toEqual([]);
  });
});

it("says what to write instead, always in a whole sentence", () => {
  for (const { instead } of findUnprovable(
    "never rots lasts forever maintenance-free guaranteed child-safe food-safe eco non-toxic certified made in the USA can't tip",
    none,
  ))
    expect(instead).toMatch(/^[A-Z].*\.$/);
});

const shopText = `name: Test shop
tagline: Eco-friendly goods
place: Lower Test
contact: hello@shop.example
ordering: two weeks
care-note: It never rots.
division: 1/16
kerf: 1/8
wage: 24.00
notes: an eco note of ours
`;

it("the shop's public words are looked at, its notes are not", () => {
  const { problems } = readShop("shop.yaml", shopText);
  expect(problems.map((p) => `${p.at.line}:${p.at.column} ${p.code}`)).toEqual(["2:10 unprovable", "6:15 unprovable"]);
});

it("the yard's public words are looked at, its methods are not", () => {
  const text = smallYard
    .replace(/^( *care: ).*$/m, "$1It makes wood waterproof.")
    .replace(/^( *method: ).*$/m, "$1Eco rags.");
  const { problems } = readYard([{ file: "y.yaml", text }]);
  expect(problems.map((p) => p.code)).toEqual(["unprovable"]);
});
