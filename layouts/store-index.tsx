// Store index -> the store's first page. What is asked is answered by the style sheet alone: no script, nothing is sent.
import type { VNode } from "preact";
import type { StoreIndex } from "../src/leaves/store-index.ts";
import { Page } from "./parts/page.tsx";
import { ImageFile, PhotoFile } from "./parts/photo.tsx";
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
    {leaf.sieves.length === 0 ? null : <Sieves leaf={leaf} />}
    <h2 class="unseen">Goods</h2>
    <ul class="goods">
      {leaf.goods.map((good, i) => (
        <li class={`good ${good.fits.join(" ")}`}>
          <div class="frame">
            {good.photo ? (
              <PhotoFile of={good.photo} root={root} soon={i < 3} sizes="(min-width: 40rem) 22rem, 100vw" />
            ) : (
              <ImageFile of={good.look} root={root} soon={i < 3} />
            )}
          </div>
          {good.line ? (
            <p class="over">
              <a href={`${root}${good.line.path}`}>{good.line.text}</a>
            </p>
          ) : null}
          <h3>
            <a href={`${root}${good.link.path}`}>{good.link.text}</a>
          </h3>
          {good.price ? <p class="price">{good.price}</p> : null}
          {good.purpose ? <p>{good.purpose}</p> : null}
          <p class="note">
            Width × depth × height {good.inch} ({good.metric})
          </p>
          <p class="note">{good.choice}</p>
          <p class="note">{good.availability}</p>
        </li>
      ))}
    </ul>
    {leaf.goods.some(({ photo }) => !photo) ? (
      <p class="note">Where there is no photograph yet, there is a drawing made from the measurements.</p>
    ) : null}
    <nav class="onward" aria-label="Lines and more">
      <h2>Lines, side by side</h2>
      <ul>
        {[...leaf.lines, ...leaf.links].map(({ path, text }) => (
          <li>
            <a href={`${root}${path}`}>{text}</a>
          </li>
        ))}
      </ul>
    </nav>
    <section class="ordering" aria-labelledby="ordering">
      <h2 id="ordering">How to order</h2>
      <p>{leaf.shop.ordering}</p>
      <ShopFoot of={leaf.shop} />
    </section>
  </Page>
);

const Sieves = ({ leaf }: { leaf: StoreIndex }): VNode => (
  <form class="sieves" aria-label="Show only">
    {leaf.sieves.map((sieve) => (
      <fieldset>
        <legend>{sieve.legend}</legend>
        {sieve.answers.map(({ id, text }, i) => (
          <label for={id}>
            <input type="radio" name={sieve.name} id={id} checked={i === 0} />
            {text}
          </label>
        ))}
      </fieldset>
    ))}
    <button type="reset">Show all</button>
  </form>
);
