// Care card -> a page that prints as one small card, black only.
import type { VNode } from "preact";
import type { CareCard } from "../src/leaves/care-card.ts";
import { CareCardBody } from "./parts/care-card-body.tsx";
import { Page } from "./parts/page.tsx";

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
      <CareCardBody of={leaf} alone />
    </article>
    <nav class="back" aria-label="Back">
      <a href={`${root}${leaf.product.path}`}>{leaf.product.text}</a>
    </nav>
  </Page>
);
