// Orders -> their order by the day they are due, and what was agreed for them together.
import type { Exact } from "../units/length.ts";
import type { Order } from "../yard/order.ts";
import { sumOf } from "./price.ts";

/** Those of one day by their marks. */
export const byDue = <T extends { readonly order: Pick<Order, "due" | "slug"> }>(all: readonly T[]): T[] =>
  [...all].sort((a, b) => compare(a.order.due, b.order.due) || compare(a.order.slug, b.order.slug));

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Dollars, each price as often as it is ordered. */
export const pricesTogether = (orders: readonly Pick<Order, "price" | "count">[]): Exact =>
  sumOf(orders.map(({ price, count }) => price.mul(count)));
