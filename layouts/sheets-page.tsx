// A set of sheets -> page of the binder, with the build sheets that it belongs to.
import type { VNode } from "preact";
import type { SheetsPage } from "../src/leaves/sheets-page.ts";
import { Page } from "./parts/page.tsx";
import { Sheet } from "./parts/sheet.tsx";

export const SheetsPageView = ({ leaf, root }: { leaf: SheetsPage; root: string }): VNode => (
  <Page
    root={root}
    look="binder"
    title={leaf.title}
    description={leaf.description}
    name={`${leaf.set.shopName}: binder`}
    home={leaf.home}
    notice={leaf.notice}
  >
    {leaf.set.sheets.map((sheet, i) => (
      <Sheet of={sheet} set={leaf.set} over={undefined} isCover={i === 0}>
        {i === 0 ? (
          <nav class="parts" aria-label="Parts of this sheet">
            <ul>
              {leaf.set.sheets.slice(1).map(({ id, title }) => (
                <li>
                  <a href={`#${id}`}>{title}</a>
                </li>
              ))}
              {leaf.things.map((thing) => (
                <li>
                  <a href={`${root}${thing.path}`}>{thing.text}</a>
                </li>
              ))}
            </ul>
          </nav>
        ) : null}
      </Sheet>
    ))}
  </Page>
);
