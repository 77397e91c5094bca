// A step for dusty hands: a large number, a box to tick, the caution before the work, the picture beside it.
import type { VNode } from "preact";
import type { SheetStep } from "../../src/leaves/sheet-set.ts";
import { Cautions } from "./cautions.tsx";
import { Figure } from "./figure.tsx";
import { Line } from "./markup.tsx";

export const Step = ({ of }: { of: SheetStep }): VNode => (
  <li class="step" value={of.number}>
    <div class="step-head" aria-hidden="true">
      <span class="number">{of.number}</span>
      <span class="tick" />
    </div>
    <div class="step-words">
      <Cautions of={of.cautions} words={of.words} />
      <p class="do">
        <Line of={of.text} />
      </p>
      {of.pieces.length === 0 ? null : <Needs name="Pieces" of={of.pieces} />}
      {of.fasteners.length === 0 ? null : <Needs name="Fasteners" of={of.fasteners} />}
      {of.places.map((place) => (
        <p class="needs">{place}</p>
      ))}
      {of.checks.map((check) => (
        <p class="check">
          <strong>Check</strong> <Line of={check} />
        </p>
      ))}
    </div>
    {of.picture || of.tape ? (
      <div class="step-pictures">
        {of.picture ? <Figure of={of.picture} name="step-picture" /> : null}
        {of.tape ? <Figure of={of.tape} name="tape" /> : null}
      </div>
    ) : null}
  </li>
);

const Needs = ({ name, of }: { name: string; of: readonly string[] }): VNode => (
  <p class="needs">
    <strong>{name}</strong> {of.join(", ")}
  </p>
);
