// A table whose rows lead somewhere: the first cell of each is a link.
import type { VNode } from "preact";
import type { LinkedTable } from "../../src/leaves/leaf.ts";

export const Linked = ({ of, name, root }: { of: LinkedTable; name: string; root: string }): VNode => (
  <section class="scroll" aria-label={name} tabindex={0}>
    <table class="orders">
      <thead>
        <tr>
          {of.heads.map((head) => (
            <th scope="col">{head}</th>
          ))}
        </tr>
      </thead>
      <tbody>
        {of.rows.map(({ link, cells }) => (
          <tr>
            <th scope="row">
              <a href={`${root}${link.path}`}>{link.text}</a>
            </th>
            {cells.map((cell) => (
              <td>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  </section>
);
