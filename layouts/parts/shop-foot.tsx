// How to reach the shop and how it sells, on every page of the store.
import type { VNode } from "preact";
import type { StoreShop } from "../../src/leaves/store-item.ts";

export const ShopFoot = ({ of }: { of: StoreShop }): VNode => (
  <section class="ordering" aria-labelledby="ordering">
    <h2 id="ordering">How to order</h2>
    <p>{of.ordering}</p>
    <address>
      {of.place}
      <br />
      {of.contact}
    </address>
  </section>
);
