// A whole document: head, skip link, banner, main, foot. `root` leads from the page to its shelf's root: "", "../".
import type { ComponentChildren, VNode } from "preact";
import type { Link } from "../../src/leaves/leaf.ts";

export type PageFrame = {
  readonly root: string;
  readonly look: "binder" | "store" | "guide";
  readonly title: string;
  readonly description: string;
  readonly name: string;
  /** Where the name leads; absent on the shelf's first page. */
  readonly home?: Link;
  readonly notice?: string | undefined;
  readonly children: ComponentChildren;
};

export const Page = ({ root, look, title, description, name, home, notice, children }: PageFrame): VNode => (
  <html lang="en">
    <head>
      <meta charset="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <title>{title === name ? title : `${title} · ${name}`}</title>
      <meta name="description" content={description} />
      <link rel="icon" href="data:," />
      <link rel="stylesheet" href={`${root}assets/paper.css`} />
      <link rel="stylesheet" href={`${root}assets/${look}.css`} />
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
