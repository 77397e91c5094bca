// Guide page -> page of the authoring guide.
import type { VNode } from "preact";
import type { GuidePage } from "../src/leaves/guide-page.ts";
import { Block } from "./parts/markup.tsx";
import { Page } from "./parts/page.tsx";

export const GuidePageView = ({ leaf, root }: { leaf: GuidePage; root: string }): VNode => (
  <Page
    root={root}
    look="guide"
    title={leaf.title}
    description={leaf.description}
    name={leaf.home.text}
    home={leaf.home}
  >
    <div class="guide-page">
      <article>
        <h1>{leaf.title}</h1>
        {leaf.contents.length < 2 ? null : (
          <nav class="contents" aria-label="On this page">
            <ul>
              {leaf.contents.map(({ id, text }) => (
                <li>
                  <a href={`#${id}`}>{text}</a>
                </li>
              ))}
            </ul>
          </nav>
        )}
        <Block of={leaf.body} name="text" />
      </article>
      <nav class="pages" aria-label="Pages of the guide">
        <ul>
          {leaf.pages.map((page) => (
            <li>
              <a href={`${root}${page.path}`} aria-current={page.here ? "page" : undefined}>
                {page.text}
              </a>
            </li>
          ))}
        </ul>
      </nav>
    </div>
  </Page>
);
