// Store index -> the store's first page.
import type { VNode } from "preact";
import type { StoreIndex } from "../src/leaves/store-index.ts";
import { Figure } from "./parts/figure.tsx";
import { Page } from "./parts/page.tsx";
import { ShopFoot } from "./parts/shop-foot.tsx";

export const StoreIndexPage = ({ leaf, root }: { leaf: StoreIndex; root: string }): VNode => (
  <Page
    root={root}
    look="store"
    title={leaf.title}
    description={leaf.description}
    name={leaf.shop.name}
    notice={leaf.shop.notice}
    web={leaf.web}
  >
    <div class="opening">
      <h1>{leaf.title}</h1>
      <p class="intro">{leaf.description}</p>
    </div>
    {leaf.lines.map((line) => (
      <section class="line">
        <h2>{line.name}</h2>
        <ul class="goods">
          {line.goods.map((good) => (
            <li class="good">
              <Figure of={good.picture} />
              <h3>
                <a href={`${root}${good.link.path}`}>{good.link.text}</a>
              </h3>
              {good.purpose ? <p>{good.purpose}</p> : null}
              <p class="note">
                Width × depth × height {good.inch} ({good.metric})
              </p>
              <p class="note">{good.choice}</p>
            </li>
          ))}
        </ul>
      </section>
    ))}
    <ShopFoot of={leaf.shop} />
  </Page>
);
