// Listing sheet -> page of the binder with texts to copy, each with its count.
import type { VNode } from "preact";
import type { Counted, ListingCopy } from "../src/leaves/listing-copy.ts";
import type { ListingSheet } from "../src/leaves/listing-sheet.ts";
import { BeforeSale } from "./parts/before-sale.tsx";
import { Page } from "./parts/page.tsx";

export const ListingSheetPage = ({ leaf, root }: { leaf: ListingSheet; root: string }): VNode => (
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
      <p class="intro">
        {leaf.description} Every figure comes from the recipe. See the{" "}
        <a href={`${root}${leaf.sheet.path}`}>{leaf.sheet.text.toLowerCase()}</a>.
      </p>
      {leaf.barred ? <p class="barred">{leaf.barred}</p> : null}
      {leaf.copy ? <Words of={leaf.copy} /> : null}
    </section>
    {leaf.images.length === 0 ? null : (
      <section class="sheet" aria-labelledby="images">
        <h2 id="images">Pictures to upload</h2>
        <p>Photographs of the same sizes lie in the same folder, where there are any. They hold nothing but pixels.</p>
        <dl class="facts">
          {leaf.images.map(({ size, files }) => (
            <div>
              <dt>{size}</dt>
              <dd>
                {files.map(({ path, text }, i) => (
                  <>
                    {i === 0 ? null : ", "}
                    <a href={`${root}${path}`}>{text}</a>
                  </>
                ))}
              </dd>
            </div>
          ))}
        </dl>
      </section>
    )}
    {leaf.copy ? <Pictures of={leaf.copy} /> : null}
    {leaf.sale ? (
      <section class="sheet" aria-labelledby="sale">
        <h2 id="sale">{leaf.sale.title}</h2>
        <BeforeSale of={leaf.sale} />
      </section>
    ) : null}
  </Page>
);

const Words = ({ of }: { of: ListingCopy }): VNode => (
  <>
    <h2>Title</h2>
    <Paste of={of.title} />
    <h2>Short description</h2>
    <Paste of={of.short} />
    <h2>Long description</h2>
    <Paste of={of.long} />
    <h2>Measurements</h2>
    <Lines of={of.measures} />
    <h2>Materials</h2>
    <Lines of={of.materials} />
    <h2>Care</h2>
    <Lines of={of.care} />
    <h2>Prices in the store</h2>
    <Lines of={of.prices} />
    <h2>Keywords</h2>
    <p class="paste">{of.keywords.join(", ")}</p>
  </>
);

const Pictures = ({ of }: { of: ListingCopy }): VNode => (
  <section class="sheet" aria-labelledby="pictures">
    <h2 id="pictures">Texts for pictures</h2>
    {of.altTexts.map(({ picture, alt }) => (
      <>
        <h3>{picture}</h3>
        <Paste of={alt} />
      </>
    ))}
    <h2>Pictures to take</h2>
    <ol class="shots">
      {of.shots.map((shot) => (
        <li>
          <span class="tick" aria-hidden="true" /> {shot}
        </li>
      ))}
    </ol>
    {of.scripts.map(({ title, steps }, n) => (
      <>
        <h2>
          Staging {n + 1}: {title.toLowerCase()}
        </h2>
        <ol>
          {steps.map((step) => (
            <li>{step}</li>
          ))}
        </ol>
      </>
    ))}
  </section>
);

const Paste = ({ of }: { of: Counted }): VNode => (
  <>
    <div class="paste">{of.text}</div>
    <p class="count">
      {of.count}
      {of.over ? <strong>: {of.over}</strong> : null}
    </p>
  </>
);

const Lines = ({ of }: { of: readonly string[] }): VNode => (
  <ul class="paste">
    {of.map((line) => (
      <li>{line}</li>
    ))}
  </ul>
);
