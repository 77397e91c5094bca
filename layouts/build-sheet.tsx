// Build sheet -> page of the binder, on screen and on paper.
import type { VNode } from "preact";
import type { BuildSheet } from "../src/leaves/build-sheet.ts";
import { BeforeSale } from "./parts/before-sale.tsx";
import { BoardCuts } from "./parts/board-cuts.tsx";
import { Cautions } from "./parts/cautions.tsx";
import { CordLists } from "./parts/cord-lists.tsx";
import { Facts } from "./parts/facts.tsx";
import { Figure } from "./parts/figure.tsx";
import { FinishSchedule } from "./parts/finish-schedule.tsx";
import { Block } from "./parts/markup.tsx";
import { Page } from "./parts/page.tsx";
import { PanelSheets } from "./parts/panel-sheets.tsx";
import { Steps } from "./parts/steps.tsx";
import { DataTable } from "./parts/table.tsx";
import { Unfinished } from "./parts/unfinished.tsx";
import { YardLists } from "./parts/yard-lists.tsx";

const parts = [
  ["pieces", "Pieces"],
  ["tools", "Tools"],
  ["yard", "Yard list"],
  ["cutting", "Cutting"],
  ["panels", "Panels"],
  ["cords", "Rope and letters"],
  ["steps", "Steps"],
  ["finish", "Sanding and finish"],
  ["place", "Where it stands"],
  ["sale", "Before it is sold"],
] as const;

/** The parts that this sheet has. */
const partsOf = (leaf: BuildSheet) => {
  const has = { panels: leaf.panels.length > 0, cords: leaf.cords !== undefined, sale: leaf.sale !== undefined };
  const own = parts.filter(([id]) => !(id in has) || has[id as keyof typeof has]);
  return leaf.forms ? [["variants", "Variants"] as const, ...own] : own;
};

export const BuildSheetPage = ({ leaf, root }: { leaf: BuildSheet; root: string }): VNode => (
  <Page
    root={root}
    look="binder"
    title={leaf.title}
    description={leaf.description}
    name={`${leaf.shopName}: binder`}
    home={leaf.home}
    notice={leaf.notice}
  >
    <section class="sheet cover" aria-labelledby="title">
      {leaf.line ? <p class="over">{leaf.line}</p> : null}
      <h1 id="title">{leaf.title}</h1>
      {leaf.intro.map((text) => (
        <Block of={text} name="intro" />
      ))}
      {leaf.barred ? <p class="barred">{leaf.barred}</p> : null}
      {leaf.unfinished ? <Unfinished of={leaf.unfinished} /> : null}
      <div class="beside">
        <Facts of={leaf.facts} />
        <Figure of={leaf.exploded} name="exploded" />
      </div>
      <nav class="parts" aria-label="Parts of this sheet">
        <ul>
          {partsOf(leaf).map(([id, text]) => (
            <li>
              <a href={`#${id}`}>{text}</a>
            </li>
          ))}
          {leaf.prices ? (
            <li>
              <a href={`${root}${leaf.prices.path}`}>{leaf.prices.text}</a>
            </li>
          ) : null}
        </ul>
      </nav>
    </section>
    {leaf.forms ? (
      <section class="sheet" aria-labelledby="variants">
        <h2 id="variants">Variants</h2>
        <DataTable of={leaf.forms.table} name="variants" />
        <p>Every variant has a sheet of its own:</p>
        <ul>
          {leaf.forms.sheets.map((sheet) => (
            <li>
              <a href={`${root}${sheet.path}`}>{sheet.text}</a>
            </li>
          ))}
        </ul>
      </section>
    ) : null}
    <section class="sheet" aria-labelledby="pieces">
      <h2 id="pieces">Pieces</h2>
      <DataTable of={leaf.pieces} name="pieces" />
      <h2 id="tools">Tools</h2>
      <ul class="tools">
        {leaf.tools.map((tool) => (
          <li>{tool}</li>
        ))}
      </ul>
    </section>
    <section class="sheet" aria-labelledby="yard">
      <h2 id="yard">Yard list</h2>
      <YardLists of={leaf.yard} />
    </section>
    <section class="sheet" aria-labelledby="cutting">
      <h2 id="cutting">Cutting</h2>
      <Cautions of={leaf.cuttingCautions} sources />
      <BoardCuts of={leaf.cutting} />
      <h3>Pieces, drawn</h3>
      <div class="piece-drawings">
        {leaf.pieceDrawings.map((picture) => (
          <Figure of={picture} name="piece" />
        ))}
      </div>
    </section>
    {leaf.panels.length > 0 ? (
      <section class="sheet" aria-labelledby="panels">
        <h2 id="panels">Panels</h2>
        <PanelSheets of={leaf.panels} />
      </section>
    ) : null}
    {leaf.cords ? (
      <section class="sheet" aria-labelledby="cords">
        <h2 id="cords">Rope and letters</h2>
        <CordLists of={leaf.cords} />
      </section>
    ) : null}
    <section class="sheet" aria-labelledby="steps">
      <h2 id="steps">Steps</h2>
      <Facts of={leaf.gaps} />
      {leaf.reading.map((text) => (
        <p class="note">{text}</p>
      ))}
      <Steps of={leaf.sections} />
    </section>
    <section class="sheet" aria-labelledby="finish">
      <h2 id="finish">Sanding and finish</h2>
      <FinishSchedule of={leaf.finish} />
    </section>
    <section class="sheet" aria-labelledby="place">
      <h2 id="place">Where it stands</h2>
      <Cautions of={[...leaf.useCautions, ...leaf.placingCautions]} sources />
      {leaf.notes ? (
        <>
          <h3>Notes of the shop</h3>
          <p class="shop-notes">{leaf.notes}</p>
        </>
      ) : null}
    </section>
    {leaf.sale ? (
      <section class="sheet" aria-labelledby="sale">
        <h2 id="sale">{leaf.sale.title}</h2>
        <BeforeSale of={leaf.sale} />
      </section>
    ) : null}
  </Page>
);
