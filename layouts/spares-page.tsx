// Spares page -> page of the store: each kind of piece, where it is, its size.
import type { VNode } from "preact";
import type { SparesPage } from "../src/leaves/spares-page.ts";
import { Facts } from "./parts/facts.tsx";
import { Page } from "./parts/page.tsx";
import { ImageFile } from "./parts/photo.tsx";
import { ShopFoot } from "./parts/shop-foot.tsx";

export const SparesPageView = ({ leaf, root }: { leaf: SparesPage; root: string }): VNode => (
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
    <div class="opening">
      <p class="over">
        <a href={`${root}${leaf.product.path}`}>{leaf.product.text}</a>
      </p>
      <h1>{leaf.title}</h1>
      <p class="intro">{leaf.description}</p>
      {leaf.notes.map((text) => (
        <p>{text}</p>
      ))}
    </div>
    <h2 class="unseen">Pieces</h2>
    <ul class="goods pieces">
      {leaf.pieces.map((piece) => (
        <li class="good">
          <div class="frame">
            <ImageFile of={piece.picture} root={root} />
          </div>
          <h3>{piece.name}</h3>
          <Facts of={piece.facts} />
          {piece.letter ? (
            <p>
              <a href={piece.letter}>
                ask for it by mail<span class="unseen">: {piece.letterText}</span>
              </a>
            </p>
          ) : null}
        </li>
      ))}
    </ul>
    <section class="ordering" aria-labelledby="ordering">
      <h2 id="ordering">Ask for it</h2>
      <ShopFoot of={leaf.shop} />
    </section>
  </Page>
);
