// All variants of one item with their hours, costs and prices -> the price sheet of the binder, every figure already text. Private.
import type { CostLine } from "../findings/cost.ts";
import type { WorkLine } from "../findings/hours.ts";
import type { PricedShop, Pricing } from "../findings/pricing.ts";
import type { Exact } from "../units/length.ts";
import { formatDollars } from "../units/money.ts";
import type { Channel, ChannelName, Work } from "../yard/shop-rates.ts";
import { type BinderEdition, binderEdition, setFractions } from "./edition.ts";
import type { Fact, Link, Table } from "./leaf.ts";
import { buildSheetPath, indexPath } from "./paths.ts";

export type PriceSheet = {
  readonly title: string;
  readonly description: string;
  readonly shopName: string;
  readonly notice?: string;
  readonly home: Link;
  readonly buildSheet: Link;
  readonly variant: string;
  readonly facts: readonly Fact[];
  /** Absent where it could only be posted and is too heavy for it. */
  readonly prices?: Table;
  readonly variants?: Table;
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
  return {
    title: `${item.title}: prices`,
    description: `Price sheet of the ${item.title.toLowerCase()}: hours, costs, prices, and when to look at them again.`,
    shopName: shop.name,
    ...(shop.notice === undefined ? {} : { notice: shop.notice }),
    home: { path: indexPath, text: "Binder" },
    buildSheet: { path: buildSheetPath(item.slug), text: "Build sheet" },
    variant: item.variant.name,
    facts: factsOf(standard, shop),
    ...(standard.channels.length > 0 ? { prices: pricesTable(standard, shop) } : {}),
    ...(pricings.length > 1 ? { variants: variantsTable(pricings) } : {}),
    ...(standard.alarm.boards.length > 0 ? { alarm: alarmTable(standard, edition) } : {}),
    material: materialTable(standard, edition),
    batches: batchesTable(standard),
    work: workTable(standard),
    parcel: parcelFacts(standard, shop, edition),
    notes: notesOf(standard, shop),
  };
}

const channelWords: Readonly<Record<ChannelName, string>> = { local: "Local", stall: "Stall", posted: "Posted" };

const percent = (share: Exact): string => `${Number(share.mul(100).valueOf().toFixed(4))} %`;
const number = (value: Exact, places = 2): string => String(Number(value.valueOf().toFixed(places)));

/** `3 h 25 min`, to the nearest minute. */
export function formatMinutes(minutes: Exact): string {
  const whole = Math.round(minutes.valueOf());
  const hours = Math.floor(whole / 60);
  return hours === 0 ? `${whole}\u00a0min` : `${hours}\u00a0h ${whole % 60}\u00a0min`;
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

function pricesTable({ channels }: Pricing, { selling }: PricedShop): Table {
  const row = (name: string, of: (one: Pricing["channels"][number]) => string): string[] => [name, ...channels.map(of)];
  const tax = percent(selling.salesTax);
  return {
    caption: "Prices for one, as shown to the buyer",
    heads: ["Sold", ...channels.map(({ channel }) => channelWords[channel.name])],
    rows: [
      row("Target", ({ target }) => formatDollars(target)),
      row("Floor", ({ floor }) => formatDollars(floor)),
      row(`Sales tax, ${tax}`, ({ channel }) => (channel.tax === "in" ? "in the price" : "added to it")),
      row("Fee", ({ channel }) => feeText(channel)),
      row("Left of the target", ({ net }) => formatDollars(net)),
      row("Cost, with packing", ({ cost }) => formatDollars(cost)),
      row("The sale itself, with postage", ({ direct }) => formatDollars(direct)),
      row("Over the floor", ({ spare }) => formatDollars(spare)),
      row("An hour brings", ({ hourly }) => (hourly ? formatDollars(hourly) : "no work")),
      row("Break-even", ({ pays }) => (pays === undefined ? "never" : `${pays} of ${selling.batch} sold`)),
    ],
  };
}

const feeText = ({ fee, fixed }: Channel): string =>
  [...(fee.equals(0) ? [] : [percent(fee)]), ...(fixed.equals(0) ? [] : [formatDollars(fixed)])].join(" and ") ||
  "none";

/** The difference is to the first variant of the same form: what its finish alone adds. */
function variantsTable(pricings: readonly Pricing[]): Table {
  const names = pricings[0]?.channels.map(({ channel }) => channel.name) ?? [];
  const all = [
    ...new Set([...names, ...pricings.flatMap(({ channels }) => channels.map(({ channel }) => channel.name))]),
  ];
  return {
    caption: "Targets by variant",
    heads: ["Variant", "Costs", ...all.map((name) => channelWords[name]), "Surcharge for its finish"],
    rows: pricings.map((one) => {
      const first = pricings.find(({ item }) => item.variant.form === one.item.variant.form);
      return [
        one.item.variant.name,
        formatDollars(one.batchCosts.whole),
        ...all.map((name) => {
          const price = one.channels.find(({ channel }) => channel.name === name);
          return price ? formatDollars(price.target) : "not sent";
        }),
        first === undefined || first === one ? "none" : surcharge(first, one),
      ];
    }),
  };
}

/** By every way of selling that both have; said once where it is the same for all. */
function surcharge(first: Pricing, other: Pricing): string {
  const more = other.channels.flatMap(({ channel, target }) => {
    const plain = first.channels.find((one) => one.channel.name === channel.name);
    return plain ? [{ name: channel.name, text: differenceText(target.sub(plain.target)) }] : [];
  });
  const [one, ...others] = more;
  if (one && others.every(({ text }) => text === one.text)) return one.text;
  return more.map(({ name, text }) => `${name} ${text}`).join(", ");
}

/** `$4.00 more`, `$4.00 less`, `none`. */
function differenceText(difference: Exact): string {
  if (difference.equals(0)) return "none";
  return `${formatDollars(difference.abs())} ${difference.compare(0) > 0 ? "more" : "less"}`;
}

const times = (factor: Exact): string => `${number(factor)} times`;

const alarmTable = ({ alarm }: Pricing, edition: BinderEdition): Table => ({
  caption: "Board prices at which these targets still pay the floor",
  heads: ["Board", "Length", "Now", "Up to"],
  rows: [
    ...alarm.boards.flatMap(({ board, lengths }) =>
      lengths.map(({ length, now, most }) => [board, edition.length(length), formatDollars(now), formatDollars(most)]),
    ),
    ...(alarm.together && alarm.boards.length > 1 ? [["all boards together", "", "", times(alarm.together)]] : []),
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

export const workWords: Readonly<Record<Work, string>> = {
  rip: "rips",
  plane: "strips planed",
  crosscut: "crosscuts",
  hole: "holes",
  shape: "notches, laps, slopes, openings",
  outline: "outlines sawn",
  glue: "joins glued",
  sand: "sq ft sanded",
  screw: "fasteners driven",
  fit: "fittings fitted",
  tie: "cords tied",
  letter: "rows of letters",
  coat: "sq ft coated",
};

const workTable = ({ batchHours: { lines, fetch, units } }: Pricing): Table => ({
  caption: `Work on a batch of ${units}`,
  heads: ["Work", "Number", "Minutes for one", "Set-ups", "Together", "Timed"],
  rows: [
    ["fetch and lay out", "", "", "", formatMinutes(fetch), ""],
    ...lines.map((line) => [
      workWords[line.work],
      number(line.count),
      number(line.rate.each),
      line.setUps === 0 ? "" : `${line.setUps} × ${number(line.rate.setUp)} min`,
      formatMinutes(line.minutes),
      timedText(line),
    ]),
  ],
});

/** How many times were taken, and between what they lie: `3 times, 0.46 to 0.54`. */
function timedText({ taken }: WorkLine): string {
  if (!taken) return "no, the shop's guess";
  const { n, least, most } = taken;
  return n === 1 ? "once" : `${n} times, ${number(least)} to ${number(most)}`;
}

function parcelFacts({ parcel, channels }: Pricing, { selling }: PricedShop, edition: BinderEdition): Fact[] {
  const { sizes, actual, bySize, billed, postage } = parcel;
  if (!selling.channels.some(({ name }) => name === "posted")) return [];
  const sent = channels.some(({ channel }) => channel.name === "posted") && postage !== undefined;
  return [
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
    "Boards are whole, planned anew for every batch by simple packing, and what is left over is paid by the batch. Fasteners and finish count by what is used, as the rest of a pack serves the next batch; what is laid out counts whole packs and tins, without wages.",
    "At the floor, material, wage, overhead, fees and postage are paid and nothing is left. A price that must leave a sum is found by division: (sum + fixed fee) / (1 − fee). The fee is taken from all the buyer pays, sales tax with it.",
    "Board prices: what a board may cost while all else stays and it is cut as planned; beyond it the target no longer pays the floor in the way of selling that leaves least.",
    "Areas are rounded to 0.01 sq ft, finish up to 0.01 fl oz, parcels up to whole inches and pounds. From there on sums are exact and rounded to the cent only where they are printed, halves up, so that printed lines may differ by a cent from their total; prices go up to the next step.",
    `Rules of thumb: overhead and profit as said above, the greater of the two weights. Common practice, no source. Whether ${percent(selling.salesTax)} sales tax is due, and on what, is for your tax office to say.`,
  ];
}
