// How to reach the shop, on every page of the store.
import type { VNode } from "preact";
import type { StoreShop } from "../../src/leaves/store-item.ts";

export const ShopFoot = ({ of }: { of: StoreShop }): VNode => (
  <address>
    {of.name}
    <br />
    {of.place}
    <br />
    {of.contact}
  </address>
);
