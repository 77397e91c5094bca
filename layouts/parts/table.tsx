// A leaf's table: caption, column heads, and the first cell of each row as its head. Too wide, it scrolls, by keyboard too.
import type { VNode } from "preact";
import type { Table } from "../../src/leaves/leaf.ts";

export const DataTable = ({ of, name }: { of: Table; name?: string }): VNode => (
  <section class="scroll" aria-label={of.caption} tabindex={0}>
    <table class={name}>
      <caption>{of.caption}</caption>
      <thead>
        <tr>
          {of.heads.map((head) => (
            <th scope="col" key={head}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {of.rows.map(([first, ...rest]) => (
          <tr>
            <th scope="row">{first}</th>
            {rest.map((cell, i) => (
              <td data-head={of.heads[i + 1]}>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  </section>
);
