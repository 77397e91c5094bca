// A variant and the shop -> its hours, costs and prices: batches of 1, 2, 5 and 10, every way of selling, and when to look again.
import type { Item } from "../item/item.ts";
import { type Exact, zero } from "../units/length.ts";
import { batches, type Channel, type ChannelName, type Selling, type ShopMinutes } from "../yard/shop-rates.ts";
import type { Shop } from "../yard/yard.ts";
import { type Parcel, parcelOf } from "./billed-weight.ts";
import { type PlannedBoard, planBoards } from "./board-plan.ts";
import { type BreakEven, breakEven, setUpCost } from "./break-even.ts";
import { type Costs, costsOf } from "./cost.ts";
import { type Hours, hoursOf, madeForOne } from "./hours.ts";
import { ownShares, withOwnShares } from "./own-minutes.ts";
import { hourlyReturn, netOfShown, soldToPay, steppedPrice, withOverhead, withProfit } from "./price.ts";
import { alarmOf, type PriceAlarm } from "./price-alarm.ts";
import { yardList } from "./yard-list.ts";

/** A shop that has said what its time and its selling are worth. */
export type PricedShop = Shop & { readonly minutes: ShopMinutes; readonly selling: Selling };

export const isPriced = (shop: Shop): shop is PricedShop => shop.minutes !== undefined && shop.selling !== undefined;

/** Dollars for one thing sold in one way. */
export type ChannelPrice = {
  readonly channel: Channel;
  /** Material with packing, labour with packing, overhead on both; and what the sale and the post cost. */
  readonly cost: Exact;
  readonly direct: Exact;
  /** Prices as shown: at the floor every cost and the wage are paid and nothing is left; the target leaves the profit. */
  readonly floor: Exact;
  readonly target: Exact;
  /** What the target leaves when tax and fee are taken; and over the floor's own net. */
  readonly net: Exact;
  readonly spare: Exact;
  /** Dollars an hour at the target. */
  readonly hourly?: Exact;
  /** How many of the batch pay for what was laid out for it. */
  readonly pays?: number;
  /** How many pay the setting up, and a day there. */
  readonly even: BreakEven;
  /** At the price the maker asks there. */
  readonly asked?: AtPrice & {
    /** What it stays below. */
    readonly under?: "floor" | "target";
  };
};

/** What one sale at a price brings: left after tax and fee, over the floor (below 0 where it falls short), an hour of work. */
export type AtPrice = Pick<ChannelPrice, "net" | "spare" | "hourly" | "pays" | "even"> & { readonly price: Exact };

export type Pricing = {
  readonly item: Item;
  readonly hours: readonly Hours[];
  readonly costs: readonly Costs[];
  /** Those of the batch that prices are made for. */
  readonly batchHours: Hours;
  readonly batchCosts: Costs;
  readonly parcel: Parcel;
  /** None where it could only be posted and is too heavy; then there is no alarm either. */
  readonly channels: readonly ChannelPrice[];
  /** The same for every batch; what the maker asks is not in it. */
  readonly byBatch: readonly { readonly units: number; readonly channels: readonly ChannelPrice[] }[];
  readonly alarm: PriceAlarm;
};

/** The way of selling that the store's price stands for: posted, else local, else at the stall. */
export const storePrice = ({ channels }: Pick<Pricing, "channels">): ChannelPrice | undefined =>
  storeOrder.flatMap((name) => channels.filter(({ channel }) => channel.name === name))[0];

const storeOrder = ["posted", "local", "stall"] as const satisfies readonly ChannelName[];

/** The price that stands: what is asked there, else the target. */
export const standing = (one: ChannelPrice): AtPrice => one.asked ?? { ...one, price: one.target };

/** The boards of every batch, of those that were made too, each planned anew. Variants that differ in their finish alone have the same. */
export type Plans = ReadonlyMap<number, readonly PlannedBoard[]>;

export const plansOf = (item: Item, kerf: Exact): Plans =>
  new Map(
    [...new Set([...batches, ...(item.record ?? []).map(({ units }) => units)])].map((units) => [
      units,
      planBoards(batchOf(item, units), kerf),
    ]),
  );

const batchOf = (item: Item, units: number): Item["pieces"] =>
  item.pieces.map((piece) => ({ ...piece, count: piece.count * units * madeForOne(item) }));

/** The hours of every batch, for a shop that has said its minutes, set right by what batches of it took. */
export function allHours(item: Item, plans: Plans, kerf: Exact, minutes: ShopMinutes): Hours[] {
  const estimate = (units: number) => hoursOf(item, units, plans.get(units) ?? [], kerf, minutes);
  const own = ownShares(item, estimate);
  return batches.map((units) => withOwnShares(estimate(units), own));
}

export function pricingOf(item: Item, shop: PricedShop, plans: Plans = plansOf(item, shop.kerf)): Pricing {
  const { selling, minutes, kerf, wage } = shop;
  const list = yardList(item, kerf);
  const hours = allHours(item, plans, kerf, minutes);
  const costs = hours.map((one) => costsOf(item, list, plans.get(one.units) ?? [], one, wage, selling));
  const batchHours = ofBatch(hours, selling.batch);
  const batchCosts = ofBatch(costs, selling.batch);
  const parcel = parcelOf(item, selling);
  const byBatch = batches.map((units) => ({
    units,
    channels: selling.channels.flatMap((channel) =>
      channelPrice(channel, ofBatch(hours, units), ofBatch(costs, units), parcel, shop),
    ),
  }));
  const channels = withAsked(item, ofBatch(byBatch, selling.batch).channels, (price, of) =>
    atPrice(price, of, batchHours, batchCosts, shop),
  );
  const [first, ...others] = channels.map((one) => standing(one).spare);
  const least = first && others.reduce((a, b) => (b.compare(a) < 0 ? b : a), first);
  return {
    ...{ item, hours, costs, batchHours, batchCosts, parcel, channels, byBatch },
    alarm: least ? alarmOf(batchCosts, least, selling.overhead) : { boards: [] },
  };
}

/** All variants, boards planned once for each form. */
export function pricingsOf(variants: readonly Item[], shop: PricedShop): Pricing[] {
  const byForm = new Map<string, Plans>();
  return variants.map((item) => {
    const plans = byForm.get(item.variant.form) ?? plansOf(item, shop.kerf);
    byForm.set(item.variant.form, plans);
    return pricingOf(item, shop, plans);
  });
}

function ofBatch<T extends { readonly units: number }>(all: readonly T[], units: number): T {
  const found = all.find((one) => one.units === units);
  if (!found) throw new Error(`no batch of ${units}`);
  return found;
}

/** None where the thing is too heavy to be posted. */
function channelPrice(channel: Channel, hours: Hours, costs: Costs, parcel: Parcel, shop: PricedShop): ChannelPrice[] {
  const { overhead, profit, profitAs, salesTax, packing } = shop.selling;
  const posted = channel.name === "posted";
  if (posted && !parcel.postage) return [];
  const minutes = posted ? hours.perUnit.add(packing.minutes) : hours.perUnit;
  const labour = minutes.div(60).mul(shop.wage);
  const box = posted ? packing.material : zero;
  const cost = withOverhead(costs.material.add(box), labour, overhead);
  const direct = channel.sale.add((posted && parcel.postage) || zero);
  const floorNet = cost.add(direct);
  const target = steppedPrice(withProfit(cost, profit, profitAs).add(direct), channel, salesTax);
  const floor = steppedPrice(floorNet, channel, salesTax);
  const { price: _, ...at } = atPrice(target, { channel, cost, direct }, hours, costs, shop);
  return [{ ...{ channel, cost, direct, target, floor }, ...at }];
}

type Paid = Pick<ChannelPrice, "channel" | "cost" | "direct">;

function atPrice(price: Exact, { channel, cost, direct }: Paid, hours: Hours, costs: Costs, shop: PricedShop): AtPrice {
  const { salesTax, packing } = shop.selling;
  const posted = channel.name === "posted";
  const minutes = posted ? hours.perUnit.add(packing.minutes) : hours.perUnit;
  const labour = minutes.div(60).mul(shop.wage);
  const net = netOfShown(price, channel, salesTax);
  const hourly = hourlyReturn(net, cost.add(direct).sub(labour), minutes.div(60));
  const spare = net.sub(cost).sub(direct);
  const setUp = setUpCost(hours, shop.wage, shop.selling.overhead);
  const pays = soldToPay(costs.laidOut, net.sub(direct).sub(posted ? packing.material : zero));
  return {
    ...{ price, net, spare, even: breakEven(spare, setUp, hours.units, channel.day) },
    ...(hourly === undefined ? {} : { hourly }),
    ...(pays === undefined ? {} : { pays }),
  };
}

/** Every way of selling with what the maker asks there; the store's price is that of the way the store stands for. */
function withAsked(
  { asked }: Item,
  channels: readonly ChannelPrice[],
  at: (price: Exact, of: ChannelPrice) => AtPrice,
): ChannelPrice[] {
  const store = storePrice({ channels });
  return channels.map((one) => {
    const { name } = one.channel;
    const price = one === store ? asked?.shown : name === "posted" ? undefined : asked?.[name];
    if (!price) return one;
    const under = price.compare(one.floor) < 0 ? "floor" : price.compare(one.target) < 0 ? "target" : undefined;
    return { ...one, asked: { ...at(price, one), ...(under ? { under } : {}) } };
  });
}
