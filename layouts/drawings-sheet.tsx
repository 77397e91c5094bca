// Contact sheet -> every drawing on one page.
import type { VNode } from "preact";
import type { DrawingsSheet } from "../src/leaves/drawings-sheet.ts";
import { Figure } from "./parts/figure.tsx";
import { Block } from "./parts/markup.tsx";
import { Page } from "./parts/page.tsx";

export const DrawingsSheetPage = ({ leaf, root }: { leaf: DrawingsSheet; root: string }): VNode => (
  <Page
    root={root}
    look="binder"
    title={leaf.title}
    description={leaf.description}
    name={leaf.shopName}
    notice={leaf.notice}
  >
    <section class="sheet" aria-labelledby="title">
      <p>
        <a href={`${root}${leaf.home.path}`}>{leaf.home.text}</a>
      </p>
      <h1 id="title">{leaf.title}</h1>
      <p class="intro">{leaf.description} Private.</p>
      {leaf.changed.map(({ name, before, after }) => (
        <section>
          <h2>Changed: {name}</h2>
          <div class="contact-sheet">
            <figure class="drawing">
              <Block of={before} />
              <figcaption>Before</figcaption>
            </figure>
            <figure class="drawing">
              <Block of={after} />
              <figcaption>After</figcaption>
            </figure>
          </div>
        </section>
      ))}
      {leaf.items.map((item) => (
        <section>
          <h2>
            <a href={`${root}${item.link.path}`}>{item.link.text}</a>
          </h2>
          <p class="note">{item.count}</p>
          <div class="contact-sheet">
            {item.pictures.map((picture) => (
              <Figure of={picture} />
            ))}
          </div>
        </section>
      ))}
    </section>
  </Page>
);
