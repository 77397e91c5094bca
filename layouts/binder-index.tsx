// Binder index -> the binder's first page.
import type { VNode } from "preact";
import type { BinderIndex, IndexSheet } from "../src/leaves/binder-index.ts";
import { Page } from "./parts/page.tsx";

export const BinderIndexPage = ({ leaf, root }: { leaf: BinderIndex; root: string }): VNode => (
  <Page
    root={root}
    look="binder"
    title={leaf.title}
    description={leaf.description}
    name={leaf.shopName}
    notice={leaf.notice}
  >
    <section class="sheet" aria-labelledby="title">
      <h1 id="title">{leaf.title}</h1>
      <p class="intro">{leaf.description} Private: prices, packing and notes are in it.</p>
      <p>
        <a href={`${root}${leaf.drawings.path}`}>{leaf.drawings.text}</a>
      </p>
      <ul class="batches">
        {leaf.batches.map((batch) => (
          <li>
            <a href={`${root}${batch.path}`}>{batch.text}</a>
          </li>
        ))}
      </ul>
      {leaf.season ? (
        <p>
          <a href={`${root}${leaf.season.path}`}>{leaf.season.text}</a>
        </p>
      ) : null}
      {leaf.orders ? (
        <p>
          <a href={`${root}${leaf.orders.path}`}>{leaf.orders.text}</a>
        </p>
      ) : null}
      <nav class="parts" aria-label="Tabs of the binder">
        <ul>
          {leaf.tabs.map((tab) => (
            <li>
              <a href={`#${tab.id}`}>{tab.name}</a>
            </li>
          ))}
        </ul>
      </nav>
      {leaf.tabs.map((tab) => (
        <>
          <h2 id={tab.id} class="tab">
            {tab.name}
          </h2>
          <ul class="sheets">
            {tab.sheets.map((sheet) => (
              <Entry of={sheet} root={root} />
            ))}
          </ul>
        </>
      ))}
    </section>
  </Page>
);

const Entry = ({ of, root }: { of: IndexSheet; root: string }): VNode => (
  <li>
    <h3>
      <a href={`${root}${of.link.path}`}>{of.link.text}</a>
    </h3>
    <p>
      {of.sizes}, {of.weight}, {of.pieces} pieces
    </p>
    <p class="note">{of.variants}</p>
    {of.revision ? <p class="note">{of.revision}</p> : null}
    {[of.prices, of.listing, of.cards].map((link) =>
      link ? (
        <p>
          <a href={`${root}${link.path}`} aria-label={`${link.text}: ${of.link.text}`}>
            {link.text}
          </a>
        </p>
      ) : null,
    )}
    {of.barred ? <p class="barred">{of.barred}</p> : null}
    {of.changes ? <Changes of={of.changes} /> : null}
  </li>
);

const Changes = ({ of }: { of: readonly string[] }): VNode =>
  of.length === 0 ? (
    <p class="note">Printed as it stands.</p>
  ) : (
    <>
      <p class="changed">Moved since it was printed:</p>
      <ul class="changes">
        {of.map((line) => (
          <li>{line}</li>
        ))}
      </ul>
    </>
  );
