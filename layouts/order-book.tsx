// Order book -> page of the binder.
import type { VNode } from "preact";
import type { OrderBook } from "../src/leaves/order-book.ts";
import { Page } from "./parts/page.tsx";

export const OrderBookPage = ({ leaf, root }: { leaf: OrderBook; root: string }): VNode => (
  <Page
    root={root}
    look="binder"
    title={leaf.title}
    description={leaf.description}
    name={`${leaf.shopName}: binder`}
    home={leaf.home}
    notice={leaf.notice}
  >
    <section class="sheet" aria-labelledby="title">
      <h1 id="title">{leaf.title}</h1>
      <p class="intro">{leaf.description} Private.</p>
      <section class="scroll" aria-label={leaf.title} tabindex={0}>
        <table class="orders">
          <thead>
            <tr>
              {leaf.heads.map((head) => (
                <th scope="col">{head}</th>
              ))}
            </tr>
          </thead>
          <tbody>
            {leaf.rows.map(({ link, cells }) => (
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
      <p>{leaf.together}</p>
    </section>
  </Page>
);
