// A whole document: head, skip link, banner, main, foot. `root` leads from the page to its shelf's root: "", "../".
import type { ComponentChildren, VNode } from "preact";
import type { Link, Markup } from "../../src/leaves/leaf.ts";
import type { OnTheWeb } from "../../src/leaves/on-the-web.ts";

export type PageFrame = {
  readonly root: string;
  readonly look: "binder" | "store" | "guide";
  readonly title: string;
  readonly description: string;
  readonly name: string;
  /** Where the name leads; absent on the shelf's first page. */
  readonly home?: Link;
  readonly notice?: string | undefined;
  /** For machines: data that no browser runs, and what is told where the page is linked to. */
  readonly data?: Markup;
  readonly web?: OnTheWeb | undefined;
  /** Style of this page alone, made by a leaf. */
  readonly style?: Markup;
  readonly children: ComponentChildren;
};

export const Page = ({
  root,
  look,
  title,
  description,
  name,
  home,
  notice,
  data,
  web,
  style,
  children,
}: PageFrame): VNode => (
  <html lang="en">
    <head>
      <meta charset="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <title>{title === name ? title : `${title} · ${name}`}</title>
      <meta name="description" content={description} />
      {web ? <WebHead of={web} root={root} title={title} description={description} name={name} /> : null}
      {data ? <script type="application/ld+json" dangerouslySetInnerHTML={{ __html: data.html }} /> : null}
      <link rel="icon" href="data:," />
      <link rel="stylesheet" href={`${root}assets/paper.css`} />
      <link rel="stylesheet" href={`${root}assets/${look}.css`} />
      {style ? <style dangerouslySetInnerHTML={{ __html: style.html }} /> : null}
    </head>
    <body class={look}>
      <a class="skip" href="#main">
        Skip to the text
      </a>
      <header class="banner">
        <p class="name">{home ? <a href={`${root}${home.path}`}>{name}</a> : name}</p>
      </header>
      <main id="main" tabindex={-1}>
        {children}
      </main>
      {notice ? (
        <footer class="foot">
          <p>{notice}</p>
        </footer>
      ) : null}
    </body>
  </html>
);

type WebHeadProps = Pick<PageFrame, "root" | "title" | "description" | "name"> & { readonly of: OnTheWeb };

/** Open Graph's names for title, words and picture; the feed stands in the shelf itself. */
const WebHead = ({ of, root, title, description, name }: WebHeadProps): VNode => (
  <>
    <link rel="canonical" href={of.canonical} />
    {of.feed ? <link rel="alternate" type="application/atom+xml" title={name} href={`${root}${of.feed}`} /> : null}
    <meta property="og:type" content={of.kind} />
    <meta property="og:site_name" content={name} />
    <meta property="og:title" content={title} />
    <meta property="og:description" content={description} />
    <meta property="og:url" content={of.canonical} />
    {of.picture ? (
      <>
        <meta property="og:image" content={of.picture.url} />
        <meta property="og:image:type" content={of.picture.type} />
        <meta property="og:image:width" content={of.picture.width} />
        <meta property="og:image:height" content={of.picture.height} />
        <meta property="og:image:alt" content={of.picture.alt} />
      </>
    ) : null}
  </>
);
