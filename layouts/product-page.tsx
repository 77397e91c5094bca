// Product page -> page of the store.
import type { VNode } from "preact";
import type { ProductPage } from "../src/leaves/product-page.ts";
import { Cautions } from "./parts/cautions.tsx";
import { Facts } from "./parts/facts.tsx";
import { Figure } from "./parts/figure.tsx";
import { Block } from "./parts/markup.tsx";
import { Page } from "./parts/page.tsx";
import { ImageFile, PhotoFigure } from "./parts/photo.tsx";
import { ShopFoot } from "./parts/shop-foot.tsx";
import { DataTable } from "./parts/table.tsx";
import { Unfinished } from "./parts/unfinished.tsx";

type Parts = { leaf: ProductPage; root: string };

export const ProductPageView = ({ leaf, root }: Parts): VNode => (
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
    <article class="product">
      <Opening leaf={leaf} root={root} />
      <Pictures leaf={leaf} root={root} />
      <div class="wide" id="measured">
        <Figure of={leaf.measured} name="measured" note={leaf.pictureNote} />
      </div>
      <section class="sizes" aria-labelledby="sizes">
        <h2 id="sizes">Size and weight</h2>
        <Facts of={leaf.sizes} />
        <h2 id="wood">Wood</h2>
        <TextList of={leaf.wood} />
        <h2>What you get</h2>
        <TextList of={leaf.included} />
      </section>
      <Offers leaf={leaf} />
      <Finishes leaf={leaf} root={root} />
      <Uses leaf={leaf} />
      {leaf.fit.length === 0 ? null : (
        <section class="fit" aria-labelledby="fit">
          <h2 id="fit">Will it fit?</h2>
          <Facts of={leaf.fit} />
        </section>
      )}
      <section class="over-time" aria-labelledby="over-time">
        <h2 id="over-time">What you will see over time</h2>
        {leaf.overTime.map((text) => (
          <p>{text}</p>
        ))}
        <p class="note">
          <a href="#from-movement">How we know</a>
        </p>
      </section>
      <Ordering leaf={leaf} />
      <Origins leaf={leaf} />
      <nav class="onward" aria-label="More">
        <ul>
          {leaf.links.map(({ path, text }) => (
            <li>
              <a href={`${root}${path}`}>{text}</a>
            </li>
          ))}
        </ul>
      </nav>
    </article>
  </Page>
);

const Opening = ({ leaf, root }: Parts): VNode => (
  <div class="opening">
    {leaf.line ? (
      <p class="over">
        <a href={`${root}${leaf.line.path}`}>{leaf.line.text}</a>
      </p>
    ) : null}
    <h1>{leaf.title}</h1>
    {leaf.purpose ? <p class="purpose">{leaf.purpose}</p> : null}
    {leaf.price ? (
      <p class="price">
        <strong>{leaf.price.text}</strong>
        <span class="says">
          {leaf.price.says === "" ? null : `${leaf.price.says}. `}
          <a href="#from-price">How it is made up</a>
        </span>
      </p>
    ) : null}
    <p class="availability">
      {leaf.availability} · <a href="#order">How to order</a>
    </p>
    {leaf.intro.map((text) => (
      <Block of={text} name="intro" />
    ))}
  </div>
);

const Pictures = ({ leaf, root }: Parts): VNode =>
  leaf.photos.length === 0 ? (
    <figure class="drawing look">
      <ImageFile of={leaf.look} root={root} soon />
      <figcaption>{leaf.lookNote}</figcaption>
    </figure>
  ) : (
    <div class="photos">
      {leaf.photos.map((photo, i) => (
        <PhotoFigure of={photo} root={root} soon={i === 0} />
      ))}
    </div>
  );

const Offers = ({ leaf }: { leaf: ProductPage }): VNode => (
  <section class="choices" aria-labelledby="choices">
    <h2 id="choices">{leaf.offers.length > 1 ? "What you can choose" : "What it costs"}</h2>
    <section class="scroll" aria-label="Prices" tabindex={0}>
      <table class="offers">
        <caption>Prices and what is ready</caption>
        <thead>
          <tr>
            <th scope="col">Choice</th>
            <th scope="col">Price</th>
            <th scope="col">When</th>
            <th scope="col">Weight</th>
            <th scope="col">Order</th>
          </tr>
        </thead>
        <tbody>
          {leaf.offers.map((offer) => (
            <tr>
              <th scope="row">{offer.name}</th>
              <td data-head="Price">{offer.price}</td>
              <td data-head="When">{offer.availability}</td>
              <td data-head="Weight">{offer.weight}</td>
              <td data-head="Order">
                {offer.letter ? (
                  <a href={offer.letter}>
                    order by mail<span class="unseen">: {offer.letterText}</span>
                  </a>
                ) : (
                  offer.instead
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
    {leaf.ownWords ? <p>{leaf.ownWords}</p> : null}
    {leaf.choices ? <DataTable of={leaf.choices} /> : null}
  </section>
);

const Finishes = ({ leaf, root }: Parts): VNode => (
  <section class="finishes" aria-labelledby="finishes">
    <h2 id="finishes">Finishes</h2>
    <ul class="swatches">
      {leaf.finishes.map((finish) => (
        <li>
          <ImageFile of={finish.picture} root={root} />
          <h3>{finish.name}</h3>
          {finish.price ? <p class="from-price">{finish.price}</p> : null}
          {finish.unfinished ? <Unfinished of={finish.unfinished} /> : <TextList of={finish.coats} />}
          <p>
            <a href={`${root}${finish.care.path}`}>{finish.care.text}</a>
          </p>
        </li>
      ))}
    </ul>
  </section>
);

const Uses = ({ leaf }: { leaf: ProductPage }): VNode => (
  <section class="uses" aria-labelledby="uses">
    <h2 id="uses">What it is made for</h2>
    {leaf.madeFor.length === 0 ? null : <p>Made {leaf.madeFor.join(", ")}.</p>}
    <Facts of={leaf.whom} />
    {leaf.notMadeFor.length === 0 ? null : (
      <>
        <p>It is not made:</p>
        <TextList of={leaf.notMadeFor} />
      </>
    )}
    <Cautions of={leaf.cautions} />
    {leaf.duties.length === 0 ? null : <TextList of={leaf.duties} />}
  </section>
);

const Ordering = ({ leaf }: { leaf: ProductPage }): VNode => (
  <section class="ordering" aria-labelledby="order">
    <h2 id="order">How to order</h2>
    <div class="two">
      <div>
        {leaf.order.says.map((text) => (
          <p>{text}</p>
        ))}
        <Facts of={leaf.terms} />
        <ShopFoot of={leaf.shop} />
      </div>
      {leaf.order.text === undefined ? null : <pre class="letter">{leaf.order.text}</pre>}
    </div>
  </section>
);

const Origins = ({ leaf }: { leaf: ProductPage }): VNode => (
  <section class="origins" aria-labelledby="origins">
    <h2 id="origins">Where the figures come from</h2>
    <dl class="facts">
      {leaf.origins.map(({ id, name, value, to }) => (
        <div id={id}>
          <dt>{name}</dt>
          <dd>
            {value}
            {to ? (
              <>
                {" "}
                See <a href={`#${to.id}`}>{to.text}</a>.
              </>
            ) : null}
          </dd>
        </div>
      ))}
    </dl>
  </section>
);

const TextList = ({ of }: { of: readonly string[] }): VNode => (
  <ul>
    {of.map((text) => (
      <li>{text}</li>
    ))}
  </ul>
);
