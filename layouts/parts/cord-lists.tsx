// Ropes and rows of letters.
import type { VNode } from "preact";
import type { CordSheet } from "../../src/leaves/cord-sheet.ts";
import { DataTable } from "./table.tsx";

export const CordLists = ({ of }: { of: CordSheet }): VNode => (
  <>
    {of.ropes ? <DataTable of={of.ropes} /> : null}
    {of.notes.map((note) => (
      <p class="note">{note}</p>
    ))}
    {of.letters ? <DataTable of={of.letters} /> : null}
  </>
);
