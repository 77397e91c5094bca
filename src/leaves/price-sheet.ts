// All variants of one item with their hours, costs and prices -> the price sheet of the binder, every figure already text. Private.
import type { CostLine } from "../findings/cost.ts";
import { type ChannelPrice, type PricedShop, type Pricing, standing } from "../findings/pricing.ts";
import type { Exact } from "../units/length.ts";
import { formatDollars } from "../units/money.ts";
import { type BinderEdition, binderEdition, setFractions } from "./edition.ts";
import type { Fact, Link, Table } from "./leaf.ts";
import { buildSheetPath, indexPath } from "./paths.ts";
import {
  byBatchTable,
  channelWords,
  comparedTable,
  differenceText,
  foundTable,
  percent,
  pricesTable,
  shownFacts,
  warningsOf,
} from "./price-columns.ts";
import { formatMinutes, number, workTable } from "./work-table.ts";

export type PriceSheet = {
  readonly title: string;
  readonly description: string;
  readonly shopName: string;
  readonly notice?: string;
  readonly home: Link;
  readonly buildSheet: Link;
  readonly variant: string;
  /** Where what is asked stays under the floor or the target. */
  readonly warnings: readonly string[];
  readonly facts: readonly Fact[];
  /** Absent where it could only be posted and is too heavy for it. */
  readonly prices?: Table;
  readonly found?: Table;
  readonly byBatch?: Table;
  readonly variants?: Table;
  /** Prices seen elsewhere. */
  readonly compared?: Table;
  readonly alarm?: Table;
  readonly material: Table;
  readonly batches: Table;
  readonly work: Table;
  readonly parcel: readonly Fact[];
  readonly notes: readonly string[];
};

/** The first is the standard variant; the sheet is its, and the others stand beside it in one table. */
export function priceSheetLeaf(pricings: readonly [Pricing, ...Pricing[]], shop: PricedShop): PriceSheet {
  const [standard] = pricings;
  const { item } = standard;
  const edition = binderEdition(shop.division);
  const compared = comparedTable(standard);
  return {
    title: `${item.title}: prices`,
    description: `Price sheet of the ${item.title.toLowerCase()}: hours, costs, prices, and when to look at them again.`,
    shopName: shop.name,
    ...(shop.notice === undefined ? {} : { notice: shop.notice }),
    home: { path: indexPath, text: "Binder" },
    buildSheet: { path: buildSheetPath(item.slug), text: "Build sheet" },
    variant: item.variant.name,
    warnings: warningsOf(standard),
    facts: [...shownFacts(pricings, shop), ...factsOf(standard, shop)],
    ...(standard.channels.length > 0
      ? {
          prices: pricesTable(standard, shop),
          found: foundTable(standard, shop),
          byBatch: byBatchTable(standard),
        }
      : {}),
    ...(pricings.length > 1 ? { variants: variantsTable(pricings) } : {}),
    ...(compared ? { compared } : {}),
    ...(standard.alarm.boards.length > 0 ? { alarm: alarmTable(standard, edition) } : {}),
    material: materialTable(standard, edition),
    batches: batchesTable(standard),
    work: workTable(standard),
    parcel: parcelFacts(standard, shop, edition),
    notes: notesOf(standard, shop),
  };
}

function factsOf({ batchHours, batchCosts, item }: Pricing, { wage, selling }: PricedShop): Fact[] {
  return [
    { name: "Priced for", value: `a batch of ${selling.batch}` },
    ...(item.soldAs ? [{ name: "Sold as", value: item.soldAs.words }] : []),
    { name: "Costs, for one", value: formatDollars(batchCosts.whole) },
    { name: "Time, for one", value: formatMinutes(batchHours.perUnit) },
    { name: "Wage", value: `${formatDollars(wage)} an hour` },
    { name: "Overhead", value: `${percent(selling.overhead)} of material and labour` },
    {
      name: "Profit",
      value:
        selling.profitAs === "margin"
          ? `${percent(selling.profit)} of the price before fees`
          : `${percent(selling.profit)} on top of the cost`,
    },
  ];
}

/** The difference is to the first variant of the same form: what its finish alone adds. */
function variantsTable(pricings: readonly Pricing[]): Table {
  const names = pricings[0]?.channels.map(({ channel }) => channel.name) ?? [];
  const all = [
    ...new Set([...names, ...pricings.flatMap(({ channels }) => channels.map(({ channel }) => channel.name))]),
  ];
  return {
    caption: "Prices by variant: what you ask, else the target",
    heads: ["Variant", "Costs", ...all.map((name) => channelWords[name]), "Surcharge for its finish"],
    rows: pricings.map((one) => {
      const first = pricings.find(({ item }) => item.variant.form === one.item.variant.form);
      return [
        one.item.variant.name,
        formatDollars(one.batchCosts.whole),
        ...all.map((name) => {
          const price = one.channels.find(({ channel }) => channel.name === name);
          return price ? priceText(price) : "not sent";
        }),
        first === undefined || first === one ? "none" : surcharge(first, one),
      ];
    }),
  };
}

/** By every way of selling that both have; said once where it is the same for all. */
function surcharge(first: Pricing, other: Pricing): string {
  const more = other.channels.flatMap((one) => {
    const { channel } = one;
    const plain = first.channels.find((each) => each.channel.name === channel.name);
    return plain ? [{ name: channel.name, text: differenceText(standing(one).price.sub(standing(plain).price)) }] : [];
  });
  const [one, ...others] = more;
  if (one && others.every(({ text }) => text === one.text)) return one.text;
  return more.map(({ name, text }) => `${name} ${text}`).join(", ");
}

const priceText = (one: ChannelPrice): string =>
  `${formatDollars(standing(one).price)}${one.asked ? `, asked${one.asked.under ? ` (under the ${one.asked.under})` : ""}` : ""}`;

const mostText = (most: Exact): string =>
  most.compare(0) > 0 ? `it would have to cost ${formatDollars(most)}` : "not even a free board would do";

const times = (factor: Exact): string => `${number(factor)} times`;

const alarmTable = ({ alarm }: Pricing, edition: BinderEdition): Table => ({
  caption: "Board prices up to which these prices still pay the floor",
  heads: ["Board", "Length", "Now", "Up to"],
  rows: [
    ...alarm.boards.flatMap(({ board, lengths }) =>
      lengths.map(({ length, now, most }) => [
        board,
        edition.length(length),
        formatDollars(now),
        most.compare(now) >= 0 ? formatDollars(most) : `already under it; ${mostText(most)}`,
      ]),
    ),
    ...(alarm.together && alarm.boards.length > 1
      ? [["all boards together", "", "", alarm.together.compare(1) >= 0 ? times(alarm.together) : "already under it"]]
      : []),
  ],
});

function materialTable({ batchCosts: { lines, units } }: Pricing, edition: BinderEdition): Table {
  return {
    caption: `Material for a batch of ${units}`,
    heads: ["What", "Takes", "Together", "For one", "Price seen"],
    rows: lines.map((line) => [
      setFractions(line.name),
      amountText(line, edition),
      formatDollars(line.cost),
      formatDollars(line.cost.div(units)),
      line.priced ?? "shop file",
    ]),
  };
}

function amountText({ kind, amount, length, each }: CostLine, edition: BinderEdition): string {
  switch (kind) {
    case "board":
      return `${number(amount)} of ${edition.length(length ?? 0)}${each ? ` at ${formatDollars(each)}` : ""}`;
    case "finish":
      return `${number(amount)} fl oz`;
    case "rope":
      return edition.length(amount);
    case "abrasives":
      return `${number(amount)} sq ft`;
    case "glue":
      return `${number(amount)} joins`;
    default:
      return number(amount);
  }
}

function batchesTable({ costs, hours }: Pricing): Table {
  const row = (name: string, of: (i: number) => string): string[] => [name, ...costs.map((_, i) => of(i))];
  const money = (of: (cost: Pricing["batchCosts"]) => Exact) => (i: number) => {
    const cost = costs[i];
    return cost ? formatDollars(of(cost)) : "";
  };
  const time = (i: number) => (hours[i] ? formatMinutes(hours[i].perUnit) : "");
  return {
    caption: "For one, by how many are made at once",
    heads: ["Made at once", ...costs.map(({ units }) => String(units))],
    rows: [
      row(
        "Material",
        money(({ material }) => material),
      ),
      row("Time", time),
      row(
        "Labour",
        money(({ labour }) => labour),
      ),
      row(
        "Overhead",
        money(({ overhead }) => overhead),
      ),
      row(
        "Cost",
        money(({ whole }) => whole),
      ),
      row(
        "Laid out for the batch",
        money(({ laidOut }) => laidOut),
      ),
    ],
  };
}

function parcelFacts({ parcel, channels }: Pricing, { selling }: PricedShop, edition: BinderEdition): Fact[] {
  const { sizes, actual, bySize, billed, postage } = parcel;
  if (!selling.channels.some(({ name }) => name === "posted")) return [];
  const sent = channels.some(({ channel }) => channel.name === "posted") && postage !== undefined;
  return [
    {
      name: "Packing",
      value: `${formatDollars(selling.packing.material)} and ${number(selling.packing.minutes)} min`,
    },
    { name: "Parcel", value: `${sizes.join("\u00a0×\u00a0")} in` },
    { name: "Weighs, packed", value: `${actual} lb` },
    { name: "Counts by its size", value: `${bySize} lb, at ${number(selling.postage.divisor)} cubic inches a pound` },
    { name: "Billed", value: `${billed} lb` },
    sent
      ? { name: "Postage", value: formatDollars(postage) }
      : { name: "Postage", value: `not sent: over ${edition.weight(selling.postage.most.valueOf())}` },
  ];
}

function notesOf({ batchCosts }: Pricing, { selling }: PricedShop): string[] {
  const dates = [...new Set(batchCosts.lines.flatMap(({ priced }) => (priced === undefined ? [] : [priced])))].sort();
  return [
    `Prices of the yard were seen on ${dates.join(", ")}; ask again before you quote.`,
    "Boards are whole, cut by the cheapest plan that was found for every batch, and what is left over is paid by the batch. Fasteners and finish count by what is used, as the rest of a pack serves the next batch; what is laid out counts whole packs and tins, without wages.",
    "At the floor, material, wage, overhead, fees and postage are paid and nothing is left. A price that must leave a sum is found by division: (sum + fixed fee) / (1 − fee). The fee is taken from all the buyer pays, sales tax with it.",
    "Board prices: what a board may cost while all else stays and it is cut as planned; beyond it the price (what you ask, else the target) no longer pays the floor in the way of selling that leaves least.",
    "Break-even: how many sold bring back what was laid out for the batch, without wages; what pays the setting up, its wage and overhead with it; what pays a day there out of what is left over the floor.",
    "Areas are rounded to 0.01 sq ft, finish up to 0.01 fl oz, parcels up to whole inches and pounds. From there on sums are exact and rounded to the cent only where they are printed, halves up, so that printed lines may differ by a cent from their total; prices go up to the next step.",
    `Rules of thumb: overhead and profit as said above, the greater of the two weights. Common practice, no source. Whether ${percent(selling.salesTax)} sales tax is due, and on what, is for your tax office to say.`,
  ];
}
