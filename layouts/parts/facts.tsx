// Facts with their names, and where a fact says so the way to how one knows.
import type { VNode } from "preact";
import type { Fact } from "../../src/leaves/leaf.ts";

export const Facts = ({ of }: { of: readonly Fact[] }): VNode | null =>
  of.length === 0 ? null : (
    <dl class="facts">
      {of.map(({ name, value, from }) => (
        <div>
          <dt>{name}</dt>
          <dd>
            {value}
            {from ? (
              <>
                {" "}
                <a class="origin" href={`#${from}`}>
                  how<span class="unseen"> we know: {name}</span>
                </a>
              </>
            ) : null}
          </dd>
        </div>
      ))}
    </dl>
  );
