// Pack index -> the first page of the packs shelf.
import type { VNode } from "preact";
import type { PackIndex } from "../src/leaves/packs/pack-index.ts";
import { Page } from "./parts/page.tsx";

export const PackIndexPage = ({ leaf, root }: { leaf: PackIndex; root: string }): VNode => (
  <Page
    root={root}
    look="store"
    title={leaf.title}
    description={leaf.description}
    name={leaf.shopName}
    notice={leaf.notice}
  >
    <div class="opening">
      <h1>{leaf.title}</h1>
      <p class="intro">{leaf.description}</p>
    </div>
    {leaf.plans.map((plan) => (
      <section class="line">
        <h2>{plan.title}</h2>
        <p>{plan.says}</p>
        {plan.revision ? <p class="note">{plan.revision}</p> : null}
        <p>
          <a href={`${root}${plan.archive.path}`} aria-label={`${plan.title}: ${plan.archive.text}`}>
            {plan.archive.text}
          </a>
        </p>
        <ul>
          {plan.files.map(({ link, says }) => (
            <li>
              <a href={`${root}${link.path}`} aria-label={`${plan.title}: ${link.text}`}>
                {link.text}
              </a>
              : {says}
            </li>
          ))}
        </ul>
      </section>
    ))}
    <section class="line">
      <h2>Licence</h2>
      <p>{leaf.licence}</p>
    </section>
  </Page>
);
