// All orders that can be made -> the order book of the binder, by the day they are due. Private.
import { byDue, pricesTogether } from "../findings/order-book.ts";
import type { Ordered } from "../findings/ordered.ts";
import { formatDollars } from "../units/money.ts";
import type { Shop } from "../yard/yard.ts";
import type { Link } from "./leaf.ts";
import { proofText } from "./order-sheet.ts";
import { indexPath, orderPath } from "./paths.ts";

export type OrderBook = {
  readonly title: string;
  readonly description: string;
  readonly shopName: string;
  readonly notice?: string;
  readonly home: Link;
  readonly heads: readonly string[];
  /** Each row's first cell leads to the order's sheet. */
  readonly rows: readonly { readonly link: Link; readonly cells: readonly string[] }[];
  readonly together: string;
};

export function orderBookLeaf(orders: readonly Ordered[], shop: Shop): OrderBook {
  return {
    title: "Order book",
    description: "Every order by the day it is due.",
    shopName: shop.name,
    ...(shop.notice === undefined ? {} : { notice: shop.notice }),
    home: { path: indexPath, text: "Binder" },
    heads: ["Order", "Due", "What", "Variant", "How many", "Proof", "Agreed for one"],
    rows: byDue(orders).map((ordered) => {
      const { order, item } = ordered;
      return {
        link: { path: orderPath(order.slug), text: order.mark },
        cells: [
          order.due,
          item.title,
          item.variant.name,
          String(order.count),
          proofText(ordered),
          formatDollars(order.price),
        ],
      };
    }),
    together: `${orders.length === 1 ? "One order" : `${orders.length} orders`}, agreed for ${formatDollars(pricesTogether(orders.map(({ order }) => order)))} together.`,
  };
}
