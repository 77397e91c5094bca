// Numbered steps for dusty hands: a large number, a box to tick, the caution before the work, the picture beside it.
import type { VNode } from "preact";
import type { StepSection, StepText } from "../../src/leaves/steps-sheet.ts";
import { Cautions } from "./cautions.tsx";
import { Figure } from "./figure.tsx";
import { Block, Line } from "./markup.tsx";

export const Steps = ({ of }: { of: readonly StepSection[] }): VNode => (
  <>
    {of.map((section) => (
      <section class="step-section">
        <h3>
          <Line of={section.heading} />
        </h3>
        {section.times ? <p class="times">{section.times}</p> : null}
        <ol class="steps">
          {section.steps.map((step) => (
            <Step of={step} />
          ))}
        </ol>
        {section.notes.map((note) => (
          <Block of={note} name="shop-notes" />
        ))}
      </section>
    ))}
  </>
);

const Step = ({ of }: { of: StepText }): VNode => (
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
    {of.picture ? <Figure of={of.picture} name="step-picture" /> : null}
  </li>
);

const Needs = ({ name, of }: { name: string; of: readonly string[] }): VNode => (
  <p class="needs">
    <strong>{name}</strong> {of.join(", ")}
  </p>
);
