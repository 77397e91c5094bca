// What stands on a care card: on its own page with headings, among others on a sheet with plain lines.
import type { VNode } from "preact";
import type { CareCard } from "../../src/leaves/care-card.ts";
import { Cautions } from "./cautions.tsx";
import { Facts } from "./facts.tsx";
import { ToFill } from "./to-fill.tsx";
import { Unfinished } from "./unfinished.tsx";

export const CareCardBody = ({ of, alone }: { of: CareCard; alone?: boolean }): VNode => (
  <>
    <p class="over">{of.shop.name}</p>
    {alone ? (
      <h1>
        {of.title}
        <span class="variant">{of.variant}</span>
      </h1>
    ) : (
      <p class="card-title">
        {of.title} <span class="variant">{of.variant}</span>
      </p>
    )}
    <Facts of={of.facts} />
    {of.unfinished ? <Unfinished of={of.unfinished} /> : null}
    {alone ? <h2>Care</h2> : <p class="card-head">Care</p>}
    <ul>
      {of.care.map((text) => (
        <li>{text}</li>
      ))}
    </ul>
    <Cautions of={of.cautions} />
    <ToFill of={of.toFill} />
    <p class="contact">
      {of.shop.place} · {of.shop.contact}
    </p>
  </>
);
