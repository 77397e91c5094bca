// Work sheet of an order -> page of the binder, on screen and on paper.
import type { VNode } from "preact";
import type { OrderSheet } from "../src/leaves/order-sheet.ts";
import { Facts } from "./parts/facts.tsx";
import { Page } from "./parts/page.tsx";
import { DataTable } from "./parts/table.tsx";

export const OrderSheetPage = ({ leaf, root }: { leaf: OrderSheet; root: string }): VNode => (
  <Page
    root={root}
    look="binder"
    title={leaf.title}
    description={leaf.description}
    name={`${leaf.shopName}: binder`}
    home={leaf.home}
    notice={leaf.notice}
  >
    <section class="sheet order" aria-labelledby="title">
      <h1 id="title">{leaf.title}</h1>
      <nav class="parts" aria-label="Beside this sheet">
        <ul>
          {[leaf.book, leaf.buildSheet, ...(leaf.proof ? [leaf.proof] : [])].map((link) => (
            <li>
              <a href={`${root}${link.path}`}>{link.text}</a>
            </li>
          ))}
        </ul>
      </nav>
      {leaf.warnings.map((warning) => (
        <p class="barred">{warning}</p>
      ))}
      <Facts of={leaf.facts} />
      {leaf.notes ? <p class="shop-notes">{leaf.notes}</p> : null}
      {leaf.letters ? <DataTable of={leaf.letters} name="letters" /> : null}
      <DataTable of={leaf.pieces} />
      {leaf.coats ? <DataTable of={leaf.coats} /> : null}
      <h2>Done</h2>
      <ul class="ticks">
        {leaf.done.map((text) => (
          <li>{text}</li>
        ))}
      </ul>
    </section>
  </Page>
);
