// Product page -> page of the store.
import type { VNode } from "preact";
import type { ProductPage } from "../src/leaves/product-page.ts";
import { Cautions } from "./parts/cautions.tsx";
import { Facts } from "./parts/facts.tsx";
import { Figure } from "./parts/figure.tsx";
import { Block } from "./parts/markup.tsx";
import { Page } from "./parts/page.tsx";
import { ShopFoot } from "./parts/shop-foot.tsx";
import { DataTable } from "./parts/table.tsx";
import { Unfinished } from "./parts/unfinished.tsx";

export const ProductPageView = ({ leaf, root }: { leaf: ProductPage; root: string }): VNode => (
  <Page
    root={root}
    look="store"
    title={leaf.title}
    description={leaf.description}
    name={leaf.shop.name}
    home={leaf.home}
    notice={leaf.shop.notice}
    data={leaf.data}
    web={leaf.web}
  >
    <div class="product">
      <div class="opening">
        {leaf.line ? <p class="over">{leaf.line}</p> : null}
        <h1>{leaf.title}</h1>
        {leaf.purpose ? <p class="purpose">{leaf.purpose}</p> : null}
        {leaf.intro.map((text) => (
          <Block of={text} name="intro" />
        ))}
      </div>
      <Figure of={leaf.measured} name="measured" note={leaf.pictureNote} />
      <section class="sizes" aria-labelledby="sizes">
        <h2 id="sizes">Size and weight</h2>
        <Facts of={leaf.sizes} />
        <h2>Wood</h2>
        <TextList of={leaf.wood} />
        {leaf.included.length === 0 ? null : (
          <>
            <h2>Comes with it</h2>
            <TextList of={leaf.included} />
          </>
        )}
      </section>
      {leaf.choices ? (
        <section class="choices" aria-labelledby="choices">
          <h2 id="choices">What you can choose</h2>
          <DataTable of={leaf.choices} />
        </section>
      ) : null}
      <section class="finishes" aria-labelledby="finishes">
        <h2 id="finishes">Finishes</h2>
        <ul class="swatches">
          {leaf.finishes.map((finish) => (
            <li>
              <Figure of={finish.picture} />
              <h3>{finish.name}</h3>
              {finish.unfinished ? <Unfinished of={finish.unfinished} /> : <TextList of={finish.coats} />}
              <p>
                <a href={`${root}${finish.care.path}`}>{finish.care.text}</a>
              </p>
            </li>
          ))}
        </ul>
      </section>
      <section class="uses" aria-labelledby="uses">
        <h2 id="uses">What it is made for</h2>
        <p>Made {leaf.madeFor.join(", ")}.</p>
        {leaf.notMadeFor.length === 0 ? null : (
          <>
            <p>It is not made:</p>
            <TextList of={leaf.notMadeFor} />
          </>
        )}
        <Cautions of={leaf.cautions} />
        {leaf.duties.length === 0 ? null : <TextList of={leaf.duties} />}
      </section>
      {leaf.overTime.length === 0 ? null : (
        <section class="over-time" aria-labelledby="over-time">
          <h2 id="over-time">What you will see over time</h2>
          {leaf.overTime.map((text) => (
            <p>{text}</p>
          ))}
        </section>
      )}
      <ShopFoot of={leaf.shop} />
    </div>
  </Page>
);

const TextList = ({ of }: { of: readonly string[] }): VNode => (
  <ul>
    {of.map((text) => (
      <li>{text}</li>
    ))}
  </ul>
);
