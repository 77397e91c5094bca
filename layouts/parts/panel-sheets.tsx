// Panels with their drawings, spacer blocks and proof numbers.
import type { VNode } from "preact";
import type { PanelSheet } from "../../src/leaves/panels-sheet.ts";
import { Facts } from "./facts.tsx";
import { Figure } from "./figure.tsx";

export const PanelSheets = ({ of }: { of: readonly PanelSheet[] }): VNode => (
  <>
    {of.map((panel) => (
      <article class="panel">
        <h3>{panel.name}</h3>
        <p>{panel.times}</p>
        <Facts of={panel.facts} />
        <Figure of={panel.picture} name="panel-drawing" />
      </article>
    ))}
  </>
);
