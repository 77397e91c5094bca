// Markup made by a leaf, set as it is: the only way round escaping.
import type { VNode } from "preact";
import type { Markup } from "../../src/leaves/leaf.ts";

export const Block = ({ of, name }: { of: Markup; name?: string }): VNode => (
  <div class={name} dangerouslySetInnerHTML={{ __html: of.html }} />
);

export const Line = ({ of, name }: { of: Markup; name?: string }): VNode => (
  <span class={name} dangerouslySetInnerHTML={{ __html: of.html }} />
);
