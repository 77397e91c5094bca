// What goes on what, by variant, with the cautions before it.
import type { VNode } from "preact";
import type { FinishSheet } from "../../src/leaves/finish-sheet.ts";
import { Cautions } from "./cautions.tsx";
import { DataTable } from "./table.tsx";
import { Unfinished } from "./unfinished.tsx";

export const FinishSchedule = ({ of }: { of: FinishSheet }): VNode => (
  <>
    <Cautions of={of.cautions} sources />
    {of.schemes.map((scheme) => (
      <section class="scheme">
        <h3>{scheme.name}</h3>
        {scheme.unfinished ? <Unfinished of={scheme.unfinished} /> : null}
        <Cautions of={scheme.cautions} sources />
        {scheme.table ? <DataTable of={scheme.table} /> : null}
        {scheme.bare ? <p>{scheme.bare}</p> : null}
        {scheme.methods.map((method) => (
          <p>{method}</p>
        ))}
      </section>
    ))}
  </>
);
