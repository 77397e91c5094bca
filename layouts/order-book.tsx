// Order book -> page of the binder.
import type { VNode } from "preact";
import type { OrderBook } from "../src/leaves/order-book.ts";
import { Linked } from "./parts/linked-table.tsx";
import { Page } from "./parts/page.tsx";

export const OrderBookPage = ({ leaf, root }: { leaf: OrderBook; root: string }): VNode => (
  <Page
    root={root}
    look="binder"
    title={leaf.title}
    description={leaf.description}
    name={`${leaf.shopName}: binder`}
    home={leaf.home}
    notice={leaf.notice}
  >
    <section class="sheet" aria-labelledby="title">
      <h1 id="title">{leaf.title}</h1>
      <p class="intro">{leaf.description} Private.</p>
      <Linked of={leaf.table} name="Orders by the day they are due" root={root} />
      <p>{leaf.together}</p>
    </section>
  </Page>
);
