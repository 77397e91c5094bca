// Line page -> page of the store: all goods of a line from the front, at one scale.
import type { VNode } from "preact";
import type { LinePage } from "../src/leaves/line-page.ts";
import { Facts } from "./parts/facts.tsx";
import { Figure } from "./parts/figure.tsx";
import { Page } from "./parts/page.tsx";
import { ShopFoot } from "./parts/shop-foot.tsx";
import { DataTable } from "./parts/table.tsx";

export const LinePageView = ({ leaf, root }: { leaf: LinePage; root: string }): VNode => (
  <Page
    root={root}
    look="store"
    title={leaf.title}
    description={leaf.description}
    name={leaf.shop.name}
    home={leaf.home}
    notice={leaf.shop.notice}
    web={leaf.web}
  >
    <div class="opening">
      <h1>{leaf.title}</h1>
    </div>
    <Figure of={leaf.fronts} name="fronts" note="Drawn from the measurements they are built to." />
    <nav class="onward" aria-label={`Goods of the ${leaf.title}`}>
      <ul>
        {leaf.links.map(({ path, text }) => (
          <li>
            <a href={`${root}${path}`}>{text}</a>
          </li>
        ))}
      </ul>
    </nav>
    {leaf.common.length === 0 ? null : (
      <section aria-labelledby="common">
        <h2 id="common">The same in all of them</h2>
        <Facts of={leaf.common} />
      </section>
    )}
    <section class="choices" aria-labelledby="goods">
      <h2 id="goods">Sizes and prices</h2>
      <DataTable of={leaf.goods} />
    </section>
    <section class="ordering" aria-labelledby="ordering">
      <h2 id="ordering">How to order</h2>
      <p>{leaf.shop.ordering}</p>
      <ShopFoot of={leaf.shop} />
    </section>
  </Page>
);
