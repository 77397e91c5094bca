// One sheet of a set -> a section of the page, which starts a page of its own on paper, with the head that makes it complete.
import type { ComponentChildren, VNode } from "preact";
import type { PaperSheet, SheetSet } from "../../src/leaves/sheet-set.ts";
import { Blocks } from "./blocks.tsx";

type SheetProps = {
  readonly of: PaperSheet;
  readonly set: SheetSet;
  /** Over the title of the cover: the line it belongs to. */
  readonly over: string | undefined;
  readonly isCover: boolean;
  readonly children?: ComponentChildren;
};

export const Sheet = ({ of, set, over, isCover, children }: SheetProps): VNode => (
  <section class={`sheet sheet-${of.id}${isCover ? " cover" : ""}`} aria-labelledby={of.id}>
    <p class="sheet-head">
      {[set.title, set.variant, set.revision, set.date].filter((text) => text !== "").join(" · ")}
    </p>
    {isCover && over ? <p class="over">{over}</p> : null}
    {isCover ? <h1 id={of.id}>{of.title}</h1> : <h2 id={of.id}>{of.title}</h2>}
    <Blocks of={of.blocks} under={isCover ? 1 : 2} />
    {children}
  </section>
);
