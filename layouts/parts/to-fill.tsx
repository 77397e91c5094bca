// Names with a line each, left open for the pen.
import type { VNode } from "preact";

export const ToFill = ({ of }: { of: readonly string[] }): VNode => (
  <dl class="to-fill">
    {of.map((name) => (
      <div>
        <dt>{name}</dt>
        <dd />
      </div>
    ))}
  </dl>
);
