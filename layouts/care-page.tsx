// Care page -> page of the store.
import type { VNode } from "preact";
import type { CarePage } from "../src/leaves/care-page.ts";
import { Page } from "./parts/page.tsx";
import { Unfinished } from "./parts/unfinished.tsx";

export const CarePageView = ({ leaf, root }: { leaf: CarePage; root: string }): VNode => (
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
    <div class="words">
      <h1>{leaf.title}</h1>
      <p class="intro">{leaf.always}</p>
      {leaf.coats.length === 0 ? null : (
        <>
          <h2>By finish</h2>
          <dl class="facts">
            {leaf.coats.map(({ words, care }) => (
              <div>
                <dt>{words}</dt>
                <dd>{care}</dd>
              </div>
            ))}
          </dl>
        </>
      )}
      {leaf.unfinished ? <Unfinished of={leaf.unfinished} /> : null}
      <h2>By what it is</h2>
      {leaf.goods.map(({ title, care, cards }) => (
        <section>
          <h3>{title}</h3>
          <ul>
            {care.map((text) => (
              <li>{text}</li>
            ))}
          </ul>
          <ul class="onward">
            {cards.map(({ path, text }) => (
              <li>
                <a href={`${root}${path}`}>Card: {text}</a>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </div>
  </Page>
);
