// Lettering proof -> a page that is sent to the buyer: printed, as a PDF, or as it stands on the screen.
import type { VNode } from "preact";
import type { LetteringProof } from "../src/leaves/lettering-proof.ts";
import { Facts } from "./parts/facts.tsx";
import { Figure } from "./parts/figure.tsx";
import { Page } from "./parts/page.tsx";
import { DataTable } from "./parts/table.tsx";

export const LetteringProofPage = ({ leaf, root }: { leaf: LetteringProof; root: string }): VNode => (
  <Page
    root={root}
    look="binder"
    title={leaf.title}
    description={leaf.description}
    name={leaf.shop.name}
    home={leaf.home}
    notice={leaf.shop.notice}
  >
    <section class="sheet proof" aria-labelledby="title">
      <h1 id="title">{leaf.title}</h1>
      <p class="intro">{leaf.description}</p>
      {leaf.pictures.map((picture) => (
        <Figure of={picture} name="letters-drawn" />
      ))}
      <DataTable of={leaf.rows} name="letters" />
      <h2>What we ask of you</h2>
      <ol>
        {leaf.ask.map((text) => (
          <li>{text}</li>
        ))}
      </ol>
      <Facts of={leaf.facts} />
      {leaf.notes.map((note) => (
        <p class="note">{note}</p>
      ))}
      <address>
        {leaf.shop.name} · {leaf.shop.contact}
      </address>
    </section>
  </Page>
);
