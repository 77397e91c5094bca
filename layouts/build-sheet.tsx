// Build sheet -> page of the binder, on screen and on paper: every sheet of its set in its order.
import type { VNode } from "preact";
import type { BuildSheet } from "../src/leaves/build-sheet.ts";
import { Page } from "./parts/page.tsx";
import { Sheet } from "./parts/sheet.tsx";

export const BuildSheetPage = ({ leaf, root }: { leaf: BuildSheet; root: string }): VNode => (
  <Page
    root={root}
    look="binder"
    title={leaf.title}
    description={leaf.description}
    name={`${leaf.set.shopName}: binder`}
    home={leaf.home}
    notice={leaf.notice}
    style={leaf.style}
  >
    {leaf.set.sheets.map((sheet, i) => (
      <Sheet of={sheet} set={leaf.set} over={leaf.line} isCover={i === 0}>
        {i === 0 ? <Parts of={leaf} root={root} /> : null}
      </Sheet>
    ))}
  </Page>
);

const Parts = ({ of, root }: { of: BuildSheet; root: string }): VNode => (
  <nav class="parts" aria-label="Parts of this sheet">
    <label class="large-type">
      <input type="checkbox" id="large-type" /> Large type, on screen and on paper
    </label>
    <ul>
      {of.set.sheets.slice(1).map(({ id, title }) => (
        <li>
          <a href={`#${id}`}>{title}</a>
        </li>
      ))}
      <li>
        <a href={`${root}${of.boards.path}`}>{of.boards.text}</a>
      </li>
      {of.prices ? (
        <li>
          <a href={`${root}${of.prices.path}`}>{of.prices.text}</a>
        </li>
      ) : null}
    </ul>
    {of.printed.length > 0 ? (
      <ul>
        {of.printed.map(({ link }) => (
          <li>
            <a href={`${root}${link.path}`}>{link.text}</a>
          </li>
        ))}
      </ul>
    ) : null}
    {of.others.length > 0 ? (
      <>
        <p>Sheets of the other variants:</p>
        <ul>
          {of.others.map((other) => (
            <li>
              <a href={`${root}${other.path}`}>{other.text}</a>
            </li>
          ))}
        </ul>
      </>
    ) : null}
  </nav>
);
