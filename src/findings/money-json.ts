// A variant and the shop -> the keys hours, cost and price of the worked-out item's JSON. Money is text with two decimals.
import type { Item } from "../item/item.ts";
import { inches } from "../units/length.ts";
import { formatMoney } from "../units/money.ts";
import type { Shop } from "../yard/yard.ts";
import type { Hours } from "./hours.ts";
import { allHours, isPriced, type Pricing, plansOf, pricingOf } from "./pricing.ts";

/** Without minutes in the shop file there are no hours, without selling neither cost nor price. */
export function moneyJson(item: Item, shop: Shop) {
  if (!shop.minutes) return {};
  const plans = plansOf(item, shop.kerf);
  const hours = hoursJson(allHours(item, plans, shop.kerf, shop.minutes));
  if (!isPriced(shop)) return { hours };
  const pricing = pricingOf(item, shop, plans);
  return { hours, cost: costJson(pricing), price: priceJson(pricing) };
}

/** At most twelve decimals, as a plain number. */
const plain = (value: { valueOf(): number }): number => Number(value.valueOf().toFixed(12));

const hoursJson = (all: readonly Hours[]) =>
  all.map(({ units, made, perUnit, minutes, fetch, lines }) => ({
    units,
    made,
    perUnit: plain(perUnit.div(60)),
    whole: plain(minutes.div(60)),
    fetchMinutes: plain(fetch),
    work: lines.map((line) => ({
      work: line.work,
      count: plain(line.count),
      setUps: line.setUps,
      minutes: plain(line.minutes),
      minutesEach: plain(line.rate.each),
      minutesSetUp: plain(line.rate.setUp),
      ...(line.taken
        ? { timed: { n: line.taken.n, least: plain(line.taken.least), most: plain(line.taken.most) } }
        : {}),
      ...(line.own
        ? {
            own: {
              n: line.own.n,
              share: plain(line.own.share),
              least: plain(line.own.least),
              most: plain(line.own.most),
            },
          }
        : {}),
    })),
  }));

const costJson = ({ costs, batchCosts }: Pricing) => ({
  batch: batchCosts.units,
  perUnit: formatMoney(batchCosts.whole),
  batches: costs.map(({ units, material, labour, overhead, whole, laidOut }) => ({
    units,
    material: formatMoney(material),
    labour: formatMoney(labour),
    overhead: formatMoney(overhead),
    perUnit: formatMoney(whole),
    laidOut: formatMoney(laidOut),
  })),
  material: batchCosts.lines.map(({ kind, name, amount, length, cost, priced }) => ({
    kind,
    name,
    amount: plain(amount),
    ...(length === undefined ? {} : { length: inches(length) }),
    cost: formatMoney(cost),
    ...(priced === undefined ? {} : { priced }),
  })),
});

const priceJson = ({ batchCosts, parcel, channels, alarm }: Pricing) => ({
  batch: batchCosts.units,
  channels: channels.map(({ channel, cost, direct, floor, target, net, hourly, pays, even, asked }) => ({
    name: channel.name,
    tax: channel.tax,
    cost: formatMoney(cost),
    direct: formatMoney(direct),
    floor: formatMoney(floor),
    target: formatMoney(target),
    net: formatMoney(net),
    ...(hourly === undefined ? {} : { hourly: formatMoney(hourly) }),
    ...(pays === undefined ? {} : { pays }),
    ...(even.setUp === undefined ? {} : { paysSetUp: even.setUp }),
    ...(even.day === undefined ? {} : { paysDay: even.day }),
    ...(asked ? { asked: formatMoney(asked.price), ...(asked.under ? { under: asked.under } : {}) } : {}),
  })),
  parcel: {
    sizes: parcel.sizes,
    actual: parcel.actual,
    bySize: parcel.bySize,
    billed: parcel.billed,
    ...(parcel.postage ? { postage: formatMoney(parcel.postage) } : {}),
  },
  alarm: alarm.boards.flatMap(({ board, lengths }) =>
    lengths.map(({ length, now, most }) => ({
      board,
      length: inches(length),
      now: formatMoney(now),
      most: formatMoney(most),
    })),
  ),
});
