// Orders -> their pages of the binder: the order book, a work sheet and a proof for each.
import { LetteringProofPage } from "../../layouts/lettering-proof.tsx";
import { OrderBookPage } from "../../layouts/order-book.tsx";
import { OrderSheetPage } from "../../layouts/order-sheet.tsx";
import type { Ordered } from "../findings/ordered.ts";
import type { Pricing } from "../findings/pricing.ts";
import type { Item } from "../item/item.ts";
import { letteringProofLeaf } from "../leaves/lettering-proof.ts";
import { orderBookLeaf } from "../leaves/order-book.ts";
import { hasWords, orderSheetLeaf } from "../leaves/order-sheet.ts";
import { orderBookPath, orderPath, proofPath, rootFrom } from "../leaves/paths.ts";
import { storeShop } from "../leaves/store-item.ts";
import type { Shop } from "../yard/yard.ts";
import { signFont } from "./letter-font.ts";
import { pageHtml } from "./page-html.ts";
import type { Page } from "./site.ts";

/** None where nothing is ordered. `pricingOf` tells the prices of a variant, where there are any. */
export function orderPages(
  orders: readonly Ordered[],
  shop: Shop,
  pricingOf: (item: Item) => Pricing | undefined,
): readonly Page[] {
  if (orders.length === 0) return [];
  const open = storeShop(shop);
  const book = pageHtml(<OrderBookPage leaf={orderBookLeaf(orders, shop, (item) => pricingOf(item)?.hours)} root="" />);
  return [
    { path: `binder/${orderBookPath}`, html: book },
    ...orders.flatMap((ordered) => {
      const path = orderPath(ordered.order.slug);
      const leaf = orderSheetLeaf(ordered, shop, pricingOf(ordered.item));
      const sheet = { path: `binder/${path}`, html: pageHtml(<OrderSheetPage leaf={leaf} root={rootFrom(path)} />) };
      if (!hasWords(ordered)) return [sheet];
      const to = proofPath(ordered.order.slug);
      const proof = letteringProofLeaf(ordered, open, signFont());
      return [sheet, { path: `binder/${to}`, html: pageHtml(<LetteringProofPage leaf={proof} root={rootFrom(to)} />) }];
    }),
  ];
}
