// Price sheet -> page of the binder, on screen and on paper.
import type { VNode } from "preact";
import type { PriceSheet } from "../src/leaves/price-sheet.ts";
import { Facts } from "./parts/facts.tsx";
import { Page } from "./parts/page.tsx";
import { DataTable } from "./parts/table.tsx";

export const PriceSheetPage = ({ leaf, root }: { leaf: PriceSheet; root: string }): VNode => (
  <Page
    root={root}
    look="binder"
    title={leaf.title}
    description={leaf.description}
    name={`${leaf.shopName}: binder`}
    home={leaf.home}
    notice={leaf.notice}
  >
    <section class="sheet priced" aria-labelledby="title">
      <h1 id="title">{leaf.title}</h1>
      <p class="intro">
        Private. <a href={`${root}${leaf.buildSheet.path}`}>{leaf.buildSheet.text}</a>
      </p>
      <p>Standard variant: {leaf.variant}.</p>
      {leaf.warnings.map((warning) => (
        <p class="barred">{warning}</p>
      ))}
      <Facts of={leaf.facts} />
      <h2>Prices</h2>
      {leaf.prices ? (
        <DataTable of={leaf.prices} name="money" />
      ) : (
        <p>It is too heavy to be posted, the only way to sell.</p>
      )}
      {leaf.variants ? <DataTable of={leaf.variants} name="money" /> : null}
      {leaf.byBatch ? <DataTable of={leaf.byBatch} name="money" /> : null}
      {leaf.compared ? <DataTable of={leaf.compared} name="money" /> : null}
    </section>
    <section class="sheet priced" aria-labelledby="costs">
      <h2 id="costs">Costs</h2>
      <DataTable of={leaf.batches} name="money" />
      <DataTable of={leaf.material} name="money" />
      {leaf.alarm ? (
        <>
          <h2>When to look again</h2>
          <DataTable of={leaf.alarm} name="money" />
        </>
      ) : null}
      {leaf.parcel.length > 0 ? (
        <>
          <h2>Posting</h2>
          <Facts of={leaf.parcel} />
        </>
      ) : null}
    </section>
    <section class="sheet priced" aria-labelledby="work">
      <h2 id="work">Work</h2>
      <DataTable of={leaf.work} name="money" />
      <h2>How this is counted</h2>
      {leaf.found ? <DataTable of={leaf.found} name="money" /> : null}
      {leaf.notes.map((note) => (
        <p class="note">{note}</p>
      ))}
    </section>
  </Page>
);
