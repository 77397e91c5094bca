// Binder index -> the binder's first page.
import type { VNode } from "preact";
import type { BinderIndex } from "../src/leaves/binder-index.ts";
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
      <ul class="sheets">
        {leaf.sheets.map((sheet) => (
          <li>
            <h2>
              <a href={`${root}${sheet.link.path}`}>{sheet.link.text}</a>
            </h2>
            <p>
              {sheet.sizes}, {sheet.weight}, {sheet.pieces} pieces
            </p>
            <p class="note">
              {sheet.line ? `${sheet.line}: ` : ""}
              {sheet.variants}
            </p>
            {sheet.prices ? (
              <p>
                <a href={`${root}${sheet.prices.path}`} aria-label={`${sheet.prices.text}: ${sheet.link.text}`}>
                  {sheet.prices.text}
                </a>
              </p>
            ) : null}
            <p>
              <a href={`${root}${sheet.listing.path}`} aria-label={`${sheet.listing.text}: ${sheet.link.text}`}>
                {sheet.listing.text}
              </a>
            </p>
            {sheet.cards ? (
              <p>
                <a href={`${root}${sheet.cards.path}`} aria-label={`${sheet.cards.text}: ${sheet.link.text}`}>
                  {sheet.cards.text}
                </a>
              </p>
            ) : null}
            {sheet.barred ? <p class="barred">{sheet.barred}</p> : null}
          </li>
        ))}
      </ul>
    </section>
  </Page>
);
