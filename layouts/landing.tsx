// Landing -> the page above the shelves.
import type { VNode } from "preact";
import type { Landing } from "../src/leaves/landing.ts";
import { Page } from "./parts/page.tsx";

export const LandingPage = ({ leaf, root }: { leaf: Landing; root: string }): VNode => (
  <Page
    root={root}
    look="guide"
    title={leaf.title}
    description={leaf.description}
    name={leaf.title}
    notice={leaf.notice}
  >
    <h1>{leaf.title}</h1>
    <p class="intro">{leaf.description}</p>
    <ul class="shelves">
      {leaf.shelves.map(({ link, says }) => (
        <li>
          <h2>
            <a href={`${root}${link.path}`}>{link.text}</a>
          </h2>
          <p>{says}</p>
        </li>
      ))}
    </ul>
  </Page>
);
