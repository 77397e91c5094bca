// Batch sheet -> page of the binder: the sheets of one line's batches, with the build sheets of its things.
import type { VNode } from "preact";
import type { BatchSheet } from "../src/leaves/batch-sheet.ts";
import { Page } from "./parts/page.tsx";
import { Sheet } from "./parts/sheet.tsx";

export const BatchSheetPage = ({ leaf, root }: { leaf: BatchSheet; root: string }): VNode => (
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
