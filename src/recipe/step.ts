// An entry of a numbered list -> one step: its text, what it adds, its checks and cautions.
import { problem } from "../problems/problem.ts";
import { passageOnly, underOnly } from "./choices-only.ts";
import type { Block } from "./markdown.ts";
import { boldIn, type Passage, passageAfter, passageOf, placeOf, type Source } from "./passage.ts";
import { readProse } from "./prose.ts";
import type { BodyStep, Prose, Reference } from "./recipe.ts";
import { readReference } from "./reference.ts";
import { attempt, type Form, type Gathered, Scan } from "./scan.ts";

export const boldForm: Form = {
  form: "**NAME**",
  means: "What stands in bold in a step is what the step puts in place; stress is written *so*.",
  example: "Screw **rails 6** level with the tops.",
};

/** "Check" or "Caution" where a paragraph starts as one. */
export const proofWord = (text: string): "Check" | "Caution" | undefined =>
  text.startsWith("Check:") ? "Check" : text.startsWith("Caution:") ? "Caution" : undefined;

/** The step, or undefined where the entry is empty. */
export function readStep(item: Block, number: number, source: Source, into: Gathered): BodyStep | undefined {
  const at = placeOf(item, source);
  const checks: Prose[] = [];
  const cautions: Prose[] = [];
  let first: Passage | undefined;
  for (const block of item.inside) {
    const place = placeOf(block, source);
    if (block.type === "ordered_list" || block.type === "bullet_list")
      into.problems.push(problem("step-in-step", place, { number }));
    else if (block.type === "code_block") into.problems.push(problem("step-indent", place, { number }));
    else if (block.type !== "paragraph")
      into.problems.push(problem("not-prose", place, { found: block.type.replaceAll("_", " ") }));
    else {
      const passage = passageOf(block, source);
      const word = proofWord(passage.lines[0]?.text ?? "");
      if (!first) first = passage;
      else if (word)
        (word === "Check" ? checks : cautions).push(readProof(passageAfter(passage, word.length + 1), into));
      else into.problems.push(problem("step-second-paragraph", passage.at, { number }));
      checkProofInLine(passage, into);
    }
  }
  if (!first) {
    into.problems.push(problem("step-empty", at, { number }));
    return undefined;
  }
  const word = proofWord(first.lines[0]?.text ?? "");
  if (word) into.problems.push(problem("proof-outside-step", first.at, { word }));
  const { passage: said, only } = passageOnly(first, into);
  const text = underOnly(readProse(said, into), only);
  const step = { at: first.at, number, text, adds: readAdds(said, into), checks, cautions };
  return only ? { ...step, only } : step;
}

/** A check or a caution, which may stand only with some choice. */
function readProof(passage: Passage, into: Gathered): Prose {
  const { passage: said, only } = passageOnly(passage, into);
  return underOnly(readProse(said, into), only);
}

/** "Check:" at the start of a later line of a paragraph is not a paragraph of its own. */
function checkProofInLine(passage: Passage, into: Gathered): void {
  for (const line of passage.lines.slice(1)) {
    const word = proofWord(line.text.trimStart());
    if (word) into.problems.push(problem("proof-in-paragraph", line.at, { word }));
  }
}

function readAdds(passage: Passage, into: Gathered): Reference[] {
  return boldIn(passage).flatMap((bold) => {
    const adds = attempt(into.problems, () => {
      const scan = new Scan(bold, boldForm, into);
      const reference = readReference(scan, "the end");
      scan.end();
      return reference;
    });
    return adds ? [adds] : [];
  });
}
