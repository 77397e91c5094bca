// Prices of a variant -> the tables of its price sheet that have a column for each way of selling, or for each batch.
import { compare } from "../findings/comparables.ts";
import { withProfit } from "../findings/price.ts";
import { type AtPrice, type ChannelPrice, type PricedShop, type Pricing, standing } from "../findings/pricing.ts";
import { type ShownPrice, shownPrice, surchargeOver } from "../findings/shown-price.ts";
import { type Exact, exact } from "../units/length.ts";
import { formatDollars } from "../units/money.ts";
import type { Channel, ChannelName } from "../yard/shop-rates.ts";
import { finishName } from "./finish-name.ts";
import type { Fact, Table } from "./leaf.ts";

export const channelWords: Readonly<Record<ChannelName, string>> = { local: "Local", stall: "Stall", posted: "Posted" };

export const percent = (share: Exact): string => `${Number(share.mul(100).valueOf().toFixed(4))} %`;

const rowsFor =
  (channels: readonly ChannelPrice[]) =>
  (name: string, of: (one: ChannelPrice) => string): string[] => [name, ...channels.map(of)];

const headsFor = (channels: readonly ChannelPrice[]): string[] =>
  channels.map(({ channel }) => channelWords[channel.name]);

export function pricesTable({ channels }: Pricing, { selling }: PricedShop): Table {
  const row = rowsFor(channels);
  const isAsked = channels.some(({ asked }) => asked);
  const hasDays = channels.some(({ channel }) => channel.day);
  const hour = (at: Pick<AtPrice, "hourly"> | undefined) =>
    at ? (at.hourly ? formatDollars(at.hourly) : "no work") : "";
  return {
    caption: "Prices for one, as shown to the buyer",
    heads: ["Sold", ...headsFor(channels)],
    rows: [
      ...(isAsked ? [row("You ask", askedText)] : []),
      row("Target", ({ target }) => formatDollars(target)),
      row("Floor", ({ floor }) => formatDollars(floor)),
      row(`Sales tax, ${percent(selling.salesTax)}`, ({ channel }) =>
        channel.tax === "in" ? "in the price" : "added to it",
      ),
      row("Fee", ({ channel }) => feeText(channel)),
      row(isAsked ? "Left of what is asked" : "Left of the target", (one) => formatDollars(standing(one).net)),
      row("Cost, with packing", ({ cost }) => formatDollars(cost)),
      row("The sale itself, with postage", ({ direct }) => formatDollars(direct)),
      row("Over the floor", (one) => formatDollars(standing(one).spare)),
      ...(isAsked ? [row("An hour brings, as asked", ({ asked }) => hour(asked))] : []),
      row(isAsked ? "At the target" : "An hour brings", hour),
      row("Break-even", (one) => soldText(standing(one).pays, selling.batch)),
      row("Pays the setting up", (one) => soldText(standing(one).even.setUp, selling.batch)),
      ...(hasDays ? [row("Pays a day there", dayText)] : []),
    ],
  };
}

const askedText = ({ asked }: ChannelPrice): string =>
  asked ? `${formatDollars(asked.price)}${asked.under ? `, under the ${asked.under}` : ""}` : "the target";

const soldText = (sold: number | undefined, batch: number): string =>
  sold === undefined ? "never" : `${sold} of ${batch} sold`;

const dayText = (one: ChannelPrice): string => {
  const { day } = one.channel;
  if (!day) return "";
  const { even } = standing(one);
  return even.day === undefined ? `${formatDollars(day)}: never` : `${formatDollars(day)}: ${even.day} sold`;
};

const feeText = ({ fee, fixed }: Channel): string =>
  [...(fee.equals(0) ? [] : [percent(fee)]), ...(fixed.equals(0) ? [] : [formatDollars(fixed)])].join(" and ") ||
  "none";

/** Where a price stays below what it should: the first thing on the sheet. */
export const warningsOf = ({ channels }: Pricing): string[] =>
  channels.flatMap(({ channel, asked, floor, target }) => {
    if (!asked?.under) return [];
    const where = `${channelWords[channel.name]}: you ask ${formatDollars(asked.price)}`;
    const short = formatDollars(asked.spare.abs());
    return asked.under === "floor"
      ? [`${where}, the floor is ${formatDollars(floor)}. Each one sold costs you ${short} of your wage or your money.`]
      : [
          `${where}, the target is ${formatDollars(target)}. Every cost and the wage are paid, and ${short} of profit is left.`,
        ];
  });

/** What the store shows of the first variant, what other finishes of its form cost more there, and own words. */
export function shownFacts([standard, ...others]: readonly [Pricing, ...Pricing[]], shop: PricedShop): Fact[] {
  const shown = shownPrice(standard.item, shop, standard);
  if (!shown) return [];
  const finishes = others.flatMap((one) => {
    const other = one.item.variant.form === standard.item.variant.form && shownPrice(one.item, shop, one);
    return other ? [`${finishName(one.item.variant)} ${differenceText(surchargeOver(other, shown))}`] : [];
  });
  return [
    { name: "In the store", value: shownText(shown) },
    ...(finishes.length > 0 ? [{ name: "Other finishes there", value: finishes.join(", ") }] : []),
    ...(shown.ownWords ? [{ name: "Own words on it", value: `${formatDollars(shown.ownWords)} more` }] : []),
  ];
}

/** `$4.00 more`, `$4.00 less`, `the same`. */
export function differenceText(difference: Exact): string {
  if (difference.equals(0)) return "the same";
  return `${formatDollars(difference.abs())} ${difference.compare(0) > 0 ? "more" : "less"}`;
}

function shownText({ amount, from, sold }: ShownPrice): string {
  const how = from === "asked" ? "as you ask" : "the target";
  const by = sold ? `, ${sold.by === "posted" ? "postage in it" : `sold ${soldWords[sold.by]}`}` : "";
  return `${formatDollars(amount)}, ${how}${by}`;
}

const soldWords: Readonly<Record<Exclude<ChannelName, "posted">, string>> = { local: "locally", stall: "at the stall" };

/** Four decimals, so that each line can be worked again from the one above. */
const fine = (amount: Exact): string => `$${amount.valueOf().toFixed(4)}`;

/** The sum of the target, line by line. */
export function foundTable({ channels }: Pricing, { selling }: PricedShop): Table {
  const { profit, profitAs, salesTax } = selling;
  const row = rowsFor(channels);
  const withIt = (one: ChannelPrice) => withProfit(one.cost, profit, profitAs);
  const must = (one: ChannelPrice) => withIt(one).add(one.direct);
  const kept = ({ channel }: ChannelPrice) => exact(1).sub(channel.fee.mul(salesTax.add(1)));
  const before = (one: ChannelPrice) => must(one).add(one.channel.fixed).div(kept(one));
  return {
    caption: "How the target is found",
    heads: ["Step", ...headsFor(channels)],
    rows: [
      row("Cost, with packing", ({ cost }) => fine(cost)),
      row(profitAs === "margin" ? `Divided by 1 − ${percent(profit)}` : `Times 1 + ${percent(profit)}`, (one) =>
        fine(withIt(one)),
      ),
      row("With the sale itself and postage", (one) => fine(must(one))),
      row("With the fixed fee", (one) => fine(must(one).add(one.channel.fixed))),
      row("Divided by 1 − fee × (1 + tax)", (one) => `${kept(one).valueOf().toFixed(5)}: ${fine(before(one))}`),
      row("With the tax, where it is in", (one) =>
        one.channel.tax === "in" ? fine(before(one).mul(salesTax.add(1))) : "added to it",
      ),
      row("Up to the next", ({ channel, target }) => `${formatDollars(channel.step)}: ${formatDollars(target)}`),
    ],
  };
}

/** Floor and target of every way of selling, by how many are made at once. */
export function byBatchTable({ byBatch, channels }: Pricing): Table {
  return {
    caption: "Floor and target, by how many are made at once",
    heads: ["Made at once", ...byBatch.map(({ units }) => String(units))],
    rows: channels.flatMap(({ channel: { name } }) => {
      const row = (what: "floor" | "target") => [
        `${channelWords[name]}, ${what}`,
        ...byBatch.map(({ channels: all }) => {
          const found = all.find(({ channel }) => channel.name === name);
          return found ? formatDollars(found[what]) : "not sent";
        }),
      ];
      return [row("floor"), row("target")];
    }),
  };
}

/** None where the maker has typed none. Ages count to the newest price of the yard, as no clock is asked. */
export function comparedTable({ item, batchCosts }: Pricing): Table | undefined {
  const priced = batchCosts.lines.flatMap((line) => line.priced ?? []).sort();
  const found = compare(item, priced.at(-1) ?? "");
  if (!found) return undefined;
  return {
    caption: `Seen elsewhere: the middle price is ${formatDollars(found.median)}`,
    heads: ["Where", "Price", "Size", "Seen", `Days before ${found.against}`],
    rows: found.rows.map(({ where, price, size, seen, age }) => [
      where,
      formatDollars(price),
      size === undefined ? "not noted" : `${size} in`,
      seen,
      String(age),
    ]),
  };
}
