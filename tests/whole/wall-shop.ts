// A number of its own in every private figure of the shop file, for the wall; and what of it can't carry one.
import type { Document } from "yaml";
import { works } from "../../src/yard/shop-rates.ts";

/** Four odd digits before the point: no page makes such a number by chance. */
const odd = (i: number): string => `${7013 + 97 * i}.${11 + (i % 80)}`;

const minutes = Object.fromEntries(works.map((work, i) => [`shop.minutes.${work}`, odd(i)]));
/** 9731.37 minutes for one is that rate. */
const timed = Object.fromEntries(works.map((work, i) => [`shop.timed.${work}`, odd(20 + i)]));
const ways = ["local", "stall", "posted"] as const;

const selling: Readonly<Record<string, string>> = {
  "shop.selling.abrasives": odd(41),
  "shop.selling.glue": odd(42),
  "shop.selling.sundries": odd(43),
  "shop.selling.packing.material": odd(44),
  "shop.selling.packing.minutes": odd(45),
  "shop.selling.postage.divisor": odd(46),
  "shop.selling.postage.base": odd(47),
  "shop.selling.postage.pound": odd(48),
  "shop.selling.personalising.material": odd(59),
  "shop.selling.personalising.minutes": odd(60),
  ...Object.fromEntries(
    ways.flatMap((way, i) => [
      [`shop.selling.${way}.fixed`, odd(50 + 3 * i)],
      [`shop.selling.${way}.sale`, odd(51 + 3 * i)],
      [`shop.selling.${way}.day`, odd(61 + i)],
    ]),
  ),
};

export const shopWords: Readonly<Record<string, string>> = {
  "shop.minutes.fetch": odd(40),
  ...minutes,
  ...timed,
  ...selling,
};

const share = "a share in %: a number of the trade";

export const shopUnmarked: Readonly<Record<string, string>> = {
  "shop.saws.shortest-crosscut": "a length of the trade",
  "shop.saws.shortest-rip": "a length of the trade",
  "shop.bench-hours": "two times of the clock",
  "shop.saws.keep": "two lengths of the trade",
  "shop.saws.nudge": "a length of the trade",
  "shop.selling.batch": "a choice of four",
  "shop.selling.overhead": share,
  "shop.selling.profit": share,
  "shop.selling.profit-as": "a choice of two",
  "shop.selling.sales-tax": share,
  "shop.selling.packing.weight": "a weight of the trade",
  "shop.selling.packing.room": "a length of the trade",
  "shop.selling.postage.most": "a weight of the trade",
  ...Object.fromEntries(
    ways.flatMap((way) => [
      [`shop.selling.${way}.fee`, share],
      [`shop.selling.${way}.tax`, "a choice of two"],
      [`shop.selling.${way}.step`, "a round number of dollars"],
    ]),
  ),
};

/** Puts the words into the demo's own shop file. */
export function markShop(shop: Document): void {
  for (const [path, word] of Object.entries(shopWords)) {
    const keys = path.split(".").slice(1);
    const value = keys[0] === "timed" ? `${word} for 1` : word;
    shop.setIn(keys, value);
  }
}

/** Every amount of dollars on a page, as it is printed; those too small to be told from any other number are left out. */
export const amountsOn = (page: string): string[] => [
  ...new Set([...page.matchAll(/\$(\d{2,}\.\d\d)/g)].map(([, amount]) => amount ?? "")),
];

/** A page with the words of its drawings, but without their coordinates. */
export const withoutLines = (page: string): string =>
  page.replace(/<svg[\s\S]*?<\/svg>/g, (svg) => svg.replace(/<[^>]*>/g, " "));
