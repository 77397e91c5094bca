// What has to be shown before it is sold: on the build sheet and on the listing sheet.
import type { VNode } from "preact";
import type { SaleSheet } from "../../src/leaves/sale-sheet.ts";
import { DataTable } from "./table.tsx";

export const BeforeSale = ({ of }: { of: SaleSheet }): VNode => (
  <>
    <p class="sale-says">{of.says}</p>
    <DataTable of={of.needs} />
    <ul>
      {of.duties.map((duty) => (
        <li>{duty}</li>
      ))}
    </ul>
  </>
);
