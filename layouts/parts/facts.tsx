// Facts with their names.
import type { VNode } from "preact";
import type { Fact } from "../../src/leaves/leaf.ts";

export const Facts = ({ of }: { of: readonly Fact[] }): VNode | null =>
  of.length === 0 ? null : (
    <dl class="facts">
      {of.map(({ name, value }) => (
        <div>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
