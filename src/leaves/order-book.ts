// All orders that can be made -> the order book of the binder, by the day they are due. Private.

import type { Hours } from "../findings/hours.ts";
import { byDue, pricesTogether } from "../findings/order-book.ts";
import { orderStart } from "../findings/order-start.ts";
import type { Ordered } from "../findings/ordered.ts";
import type { Item } from "../item/item.ts";
import { formatDollars } from "../units/money.ts";
import { usualBenchHours } from "../yard/bench-hours.ts";
import type { Shop } from "../yard/yard.ts";
import type { Link, LinkedTable } from "./leaf.ts";
import { proofText } from "./order-sheet.ts";
import { indexPath, orderPath } from "./paths.ts";

export type OrderBook = {
  readonly title: string;
  readonly description: string;
  readonly shopName: string;
  readonly notice?: string;
  readonly home: Link;
  /** Each row leads to the order's sheet. */
  readonly table: LinkedTable;
  readonly together: string;
};

/** `hoursFor` tells the hours of a variant by batch, where the shop has said its minutes. */
export function orderBookLeaf(
  orders: readonly Ordered[],
  shop: Shop,
  hoursFor: (item: Item) => readonly Hours[] | undefined,
): OrderBook {
  const bench = shop.benchHours ?? usualBenchHours;
  return {
    title: "Order book",
    description: "Every order by the day it is due.",
    shopName: shop.name,
    ...(shop.notice === undefined ? {} : { notice: shop.notice }),
    home: { path: indexPath, text: "Binder" },
    table: {
      heads: ["Order", "Due", "Begin by", "What", "Variant", "How many", "Proof", "Agreed for one"],
      rows: byDue(orders).map((ordered) => {
        const { order, item } = ordered;
        const hours = hoursFor(item);
        return {
          link: { path: orderPath(order.slug), text: order.mark },
          cells: [
            order.due,
            hours ? orderStart(ordered, hours, bench).day : "",
            item.title,
            item.variant.name,
            String(order.count),
            proofText(ordered),
            formatDollars(order.price),
          ],
        };
      }),
    },
    together: `${orders.length === 1 ? "One order" : `${orders.length} orders`}, agreed for ${formatDollars(pricesTogether(orders.map(({ order }) => order)))} together.`,
  };
}
