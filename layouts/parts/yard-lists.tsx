// What to buy, with prices and the days they were seen.
import type { VNode } from "preact";
import type { YardSheet } from "../../src/leaves/yard-sheet.ts";
import { DataTable } from "./table.tsx";

export const YardLists = ({ of }: { of: YardSheet }): VNode => (
  <>
    <DataTable of={of.boards} />
    {of.fasteners ? <DataTable of={of.fasteners} /> : null}
    {of.fittings ? <DataTable of={of.fittings} /> : null}
    {of.ropes ? <DataTable of={of.ropes} /> : null}
    {of.finishes ? <DataTable of={of.finishes} /> : null}
    {of.glues.length === 0 ? null : <p>Also, without a price in the yard: {of.glues.join(", ")}.</p>}
    <DataTable of={of.costs} />
    {of.notes.map((note) => (
      <p class="note">{note}</p>
    ))}
  </>
);
