// Cards of one item -> page of the binder: on screen one after another, on paper full sheets to cut up.
import type { ComponentChildren, VNode } from "preact";
import type { AssemblyCard } from "../src/leaves/assembly-card.ts";
import type { CardSheets, Cards, HangTag, PackingSlip, StallCard } from "../src/leaves/cards.ts";
import type { StoreShop } from "../src/leaves/store-item.ts";
import { CareCardBody } from "./parts/care-card-body.tsx";
import { Cautions } from "./parts/cautions.tsx";
import { Facts } from "./parts/facts.tsx";
import { Line } from "./parts/markup.tsx";
import { Page } from "./parts/page.tsx";
import { ToFill } from "./parts/to-fill.tsx";

export const CardsPage = ({ leaf, root }: { leaf: Cards; root: string }): VNode => (
  <Page
    root={root}
    look="binder"
    title={leaf.title}
    description={leaf.description}
    name={`${leaf.shop.name}: binder`}
    home={leaf.home}
    notice={leaf.shop.notice}
  >
    <section class="sheet cards-head" aria-labelledby="title">
      <h1 id="title">{leaf.title}</h1>
      <p class="intro">
        {leaf.description} Print at 100 %, with background graphics for the cut marks; then cut along them. See the{" "}
        <a href={`${root}${leaf.buildSheet.path}`}>{leaf.buildSheet.text.toLowerCase()}</a>.
      </p>
    </section>
    <Sheets of={leaf.tags} card={(card) => <Tag of={card} shop={leaf.shop} />} />
    {leaf.stall ? <Sheets of={leaf.stall} card={(card) => <Stall of={card} shop={leaf.shop} />} /> : null}
    <Sheets of={leaf.care} card={(card) => <CareCardBody of={card} />} />
    <Sheets of={leaf.slips} card={(card) => <Slip of={card} shop={leaf.shop} />} />
    {leaf.assembly ? <Sheets of={leaf.assembly} card={(card) => <Assembly of={card} shop={leaf.shop} />} /> : null}
  </Page>
);

type SheetsProps<K extends string, C> = {
  readonly of: CardSheets<K, C>;
  readonly card: (card: C) => ComponentChildren;
};

const Sheets = <K extends string, C>({ of, card }: SheetsProps<K, C>): VNode => (
  <section class="sheet card-sheets" aria-labelledby={of.kind}>
    <h2 id={of.kind}>{of.title}</h2>
    <p class="note">{of.says}.</p>
    {of.sheets.map((cards) => (
      <div class={`up up-${of.kind}`}>
        {cards.map((one) => (
          <div class={`cut cut-${of.kind}`}>{card(one)}</div>
        ))}
      </div>
    ))}
  </section>
);

type CardProps<C> = { readonly of: C; readonly shop: StoreShop };

const Tag = ({ of, shop }: CardProps<HangTag>): VNode => (
  <>
    <p class="over">{shop.name}</p>
    <p class="card-title">
      {of.title} <span class="variant">{of.variant}</span>
    </p>
    <Facts of={of.facts} />
    {of.unfinished ? <p class="bare">Unfinished: coat it before its first season outdoors.</p> : null}
    <ToFill of={of.toFill} />
  </>
);

const Stall = ({ of, shop }: CardProps<StallCard>): VNode => (
  <>
    <p class="card-title">{of.title}</p>
    <p class="variant">{of.variant}</p>
    <p class="stall-price">{of.price}</p>
    <p class="tax">{of.tax}</p>
    <p class="sizes">
      {of.sizes} <span class="over">{shop.name}</span>
    </p>
  </>
);

const Slip = ({ of, shop }: CardProps<PackingSlip>): VNode => (
  <>
    <p class="over">{shop.name}</p>
    <p class="card-title">In this parcel</p>
    <ul class="ticks">
      {of.included.map((text) => (
        <li>{text}</li>
      ))}
    </ul>
    {of.variants.length > 0 ? (
      <>
        <p>Variant:</p>
        <ul class="ticks across">
          {of.variants.map((name) => (
            <li>{name}</li>
          ))}
        </ul>
      </>
    ) : null}
    <p>{of.care} The care card says more.</p>
    {of.says.map((text) => (
      <p>{text}</p>
    ))}
    <ToFill of={of.toFill} />
  </>
);

const Assembly = ({ of, shop }: CardProps<AssemblyCard>): VNode => (
  <>
    <p class="over">{shop.name}</p>
    <p class="card-title">
      {of.title}: {of.heading.toLowerCase()}
    </p>
    <Counted name="In the parcel" of={of.parts} />
    <Counted name="Fasteners" of={of.fasteners} />
    <Counted name={`Tools you need: ${of.tools.length}`} of={of.tools} />
    <Cautions of={of.cautions} />
    <ol>
      {of.steps.map((step) => (
        <li>
          {step.words.map((word) => (
            <p>
              <strong>CAUTION</strong> <Line of={word} />
            </p>
          ))}
          <Line of={step.text} />
          {step.checks.map((check) => (
            <p>
              <strong>Check:</strong> <Line of={check} />
            </p>
          ))}
        </li>
      ))}
    </ol>
    <p class="contact">{shop.contact}</p>
  </>
);

const Counted = ({ name, of }: { name: string; of: readonly string[] }): VNode | null =>
  of.length === 0 ? null : (
    <>
      <p class="card-head">{name}</p>
      <ul class="ticks across">
        {of.map((text) => (
          <li>{text}</li>
        ))}
      </ul>
    </>
  );
