// Blocks of a sheet -> elements, one for each kind; steps that follow each other make one numbered list.
import type { VNode } from "preact";
import type { SheetBlock } from "../../src/leaves/sheet-set.ts";
import { Cautions } from "./cautions.tsx";
import { Facts } from "./facts.tsx";
import { Figure } from "./figure.tsx";
import { Line, Block as Markup } from "./markup.tsx";
import { Step } from "./steps.tsx";
import { DataTable } from "./table.tsx";

type StepBlock = Extract<SheetBlock, { kind: "step" }>;

/** `under` is the level of the heading they stand under: 1 on a cover. */
type BlocksProps = { readonly of: readonly SheetBlock[]; readonly under: 1 | 2 };

export const Blocks = ({ of, under }: BlocksProps): VNode => (
  <>
    {runsOf(of).map((run) =>
      Array.isArray(run) ? (
        <ol class="steps">
          {run.map(({ step }) => (
            <Step of={step} />
          ))}
        </ol>
      ) : (
        <Block of={run} under={under} />
      ),
    )}
  </>
);

/** Steps that stand next to each other together, all else by itself. */
function runsOf(blocks: readonly SheetBlock[]): (Exclude<SheetBlock, StepBlock> | StepBlock[])[] {
  const runs: (Exclude<SheetBlock, StepBlock> | StepBlock[])[] = [];
  for (const block of blocks) {
    const last = runs.at(-1);
    if (block.kind !== "step") runs.push(block);
    else if (Array.isArray(last)) last.push(block);
    else runs.push([block]);
  }
  return runs;
}

type BlockProps = { readonly of: Exclude<SheetBlock, StepBlock>; readonly under: 1 | 2 };

const Block = ({ of, under }: BlockProps): VNode => {
  switch (of.kind) {
    case "heading":
      if (of.level === 3) return under === 1 ? <h2>{of.text}</h2> : <h3>{of.text}</h3>;
      return under === 1 ? <h3>{of.text}</h3> : <h4>{of.text}</h4>;
    case "text":
      return <Markup of={of.markup} name={of.small ? "note" : "words"} />;
    case "notice":
      return (
        <p class="notice">
          <strong>{of.title}.</strong> {of.says}
        </p>
      );
    case "facts":
      return <Facts of={of.facts} />;
    case "table":
      return <DataTable of={of.table} name={of.ticks ? "ticked" : ""} />;
    case "list":
      return <List of={of} />;
    case "cautions":
      return <Cautions of={of.cautions} sources={of.sources ?? false} />;
    case "figure":
      return <Figure of={of.picture} name={of.name} />;
    case "row":
      return (
        <div class="figure-row">
          {of.figures.map(({ picture, name }) => (
            <Figure of={picture} name={name} />
          ))}
        </div>
      );
    case "rules":
      return (
        <div class="rules">
          <p>{of.name}</p>
          {Array.from({ length: of.count }, () => (
            <div class="rule" />
          ))}
        </div>
      );
    case "paste":
      return <pre class="paste">{of.text}</pre>;
    case "together":
      return (
        <div class="together">
          <Blocks of={of.blocks} under={under} />
        </div>
      );
  }
};

const List = ({ of }: { of: Extract<SheetBlock, { kind: "list" }> }): VNode => {
  const items = of.items.map((item) => (
    <li>
      <Line of={item} />
    </li>
  ));
  return of.mark === "number" ? <ol>{items}</ol> : <ul class={of.mark === "tick" ? "ticks" : ""}>{items}</ul>;
};
