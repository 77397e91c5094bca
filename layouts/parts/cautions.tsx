// Cautions as they stand before the work they guard: signal word, hazard, what it does, how to keep clear.
import type { VNode } from "preact";
import type { CautionText, Markup } from "../../src/leaves/leaf.ts";
import { Line } from "./markup.tsx";

export const Cautions = ({
  of,
  words = [],
  sources,
}: {
  of: readonly CautionText[];
  words?: readonly Markup[];
  sources?: boolean;
}): VNode | null =>
  of.length + words.length === 0 ? null : (
    <ul class="cautions">
      {words.map((word) => (
        <li class="caution signal-caution">
          <strong class="signal">CAUTION</strong>{" "}
          <span class="avoid">
            <Line of={word} />
          </span>
        </li>
      ))}
      {of.map(({ signal, hazard, consequence, avoidance, source }) => (
        <li class={`caution signal-${signal.toLowerCase()}`}>
          <strong class="signal">{signal}</strong> {consequence === "" ? hazard : `${hazard} ${consequence}`}{" "}
          <span class="avoid">{avoidance}</span>
          {sources ? <small class="source"> ({source})</small> : null}
        </li>
      ))}
    </ul>
  );
