// A drawing with its caption; where a leaf gives one for small screens, the style sheet shows the one that fits.
import type { VNode } from "preact";
import type { Picture } from "../../src/leaves/leaf.ts";
import { Block } from "./markup.tsx";

export const Figure = ({ of, name, note }: { of: Picture; name?: string; note?: string }): VNode => (
  <figure class={`drawing${name ? ` ${name}` : ""}`}>
    <Block of={of.svg} name={of.narrow ? "wide-only" : "any-width"} />
    {of.narrow ? <Block of={of.narrow} name="narrow-only" /> : null}
    <figcaption>
      {of.caption}.{note ? ` ${note}` : null}
    </figcaption>
  </figure>
);
