// Season planner -> page of the binder.
import type { VNode } from "preact";
import type { SeasonPlanner } from "../src/leaves/season-planner.ts";
import { Linked } from "./parts/linked-table.tsx";
import { Page } from "./parts/page.tsx";

export const SeasonPlannerPage = ({ leaf, root }: { leaf: SeasonPlanner; root: string }): VNode => (
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
      <p class="intro">{leaf.description} Private.</p>
      <Linked of={leaf.table} name="Batches by the day to begin" root={root} />
      {leaf.notes.map((note) => (
        <p class="note">{note}</p>
      ))}
    </section>
  </Page>
);
