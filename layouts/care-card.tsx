// Care card -> a page that prints as one small card, black only.
import type { VNode } from "preact";
import type { CareCard } from "../src/leaves/care-card.ts";
import { Cautions } from "./parts/cautions.tsx";
import { Facts } from "./parts/facts.tsx";
import { Page } from "./parts/page.tsx";
import { Unfinished } from "./parts/unfinished.tsx";

export const CareCardPage = ({ leaf, root }: { leaf: CareCard; root: string }): VNode => (
  <Page
    root={root}
    look="store"
    title={`Care of the ${leaf.title}, ${leaf.variant}`}
    description={leaf.description}
    name={leaf.shop.name}
    home={leaf.home}
    notice={leaf.shop.notice}
  >
    <article class="card">
      <p class="over">{leaf.shop.name}</p>
      <h1>
        {leaf.title}
        <span class="variant">{leaf.variant}</span>
      </h1>
      <Facts of={leaf.facts} />
      {leaf.unfinished ? <Unfinished of={leaf.unfinished} /> : null}
      <h2>Care</h2>
      <ul>
        {leaf.care.map((text) => (
          <li>{text}</li>
        ))}
      </ul>
      <Cautions of={leaf.cautions} />
      <dl class="to-fill">
        {leaf.toFill.map((name) => (
          <div>
            <dt>{name}</dt>
            <dd />
          </div>
        ))}
      </dl>
      <p class="contact">
        {leaf.shop.place} · {leaf.shop.contact}
      </p>
    </article>
    <nav class="back" aria-label="Back">
      <a href={`${root}${leaf.product.path}`}>{leaf.product.text}</a>
    </nav>
  </Page>
);
