// An order and the hours of what it wants -> the last day to begin it.
import type { BenchHours } from "../yard/yard.ts";
import type { Hours } from "./hours.ts";
import { benchMinutes, type Lead, leadOf, startBy } from "./last-start.ts";
import type { Ordered } from "./ordered.ts";

export type OrderStart = { readonly day: string; readonly lead: Lead };

/** Made in one go: as long a piece as in the largest batch that is no larger than the order. `hours` are those of every batch. */
export function orderStart({ order, item }: Ordered, hours: readonly Hours[], bench: BenchHours): OrderStart {
  const fitting = hours.filter(({ units }) => units <= order.count).sort((a, b) => b.units - a.units)[0];
  if (!fitting) throw new Error("no batch as small as an order");
  const lead = leadOf(item, benchMinutes(fitting).div(fitting.units).mul(order.count), bench);
  return { day: startBy(order.due, lead), lead };
}
