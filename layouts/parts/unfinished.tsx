// The notice due on bare wood.
import type { VNode } from "preact";
import type { Notice } from "../../src/leaves/leaf.ts";

export const Unfinished = ({ of }: { of: Notice }): VNode => (
  <p class="unfinished">
    <strong>{of.title}.</strong> {of.says}
  </p>
);
