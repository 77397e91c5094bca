// About page -> page of the store.
import type { VNode } from "preact";
import type { AboutPage } from "../src/leaves/about-page.ts";
import { Facts } from "./parts/facts.tsx";
import { Page } from "./parts/page.tsx";
import { ShopFoot } from "./parts/shop-foot.tsx";

export const AboutPageView = ({ leaf, root }: { leaf: AboutPage; root: string }): VNode => (
  <Page
    root={root}
    look="store"
    title={leaf.title}
    description={leaf.description}
    name={leaf.shop.name}
    home={leaf.home}
    notice={leaf.shop.notice}
    web={leaf.web}
  >
    <div class="words">
      <h1>{leaf.title}</h1>
      {leaf.paragraphs.map((text, i) => (
        <p class={i === 0 ? "intro" : undefined}>{text}</p>
      ))}
      <h2>How it is sold</h2>
      <Facts of={leaf.terms} />
      <h2>What these pages keep to</h2>
      <ul>
        {leaf.promises.map((text) => (
          <li>{text}</li>
        ))}
      </ul>
      <h2>Where we are</h2>
      <ShopFoot of={leaf.shop} />
      <ul class="onward">
        {leaf.links.map(({ path, text }) => (
          <li>
            <a href={`${root}${path}`}>{text}</a>
          </li>
        ))}
      </ul>
    </div>
  </Page>
);
