// The body of a recipe -> what the buyer is told, then sections with numbered steps, their checks and cautions.
import { problem } from "../problems/problem.ts";
import { passageOnly, underOnly } from "./choices-only.ts";
import { makesForm, readMakes } from "./makes.ts";
import { type Block, blocksOf } from "./markdown.ts";
import { type Passage, passageOf, placeOf, type Source } from "./passage.ts";
import { readProse } from "./prose.ts";
import type { BodySection, BodyStep, Prose } from "./recipe.ts";
import type { Gathered } from "./scan.ts";
import { proofWord, readStep } from "./step.ts";

export type Body = { readonly intro: readonly Prose[]; readonly sections: readonly BodySection[] };

type Growing<T> = { -readonly [K in keyof T]: T[K] };
type Section = Growing<BodySection> & { readonly steps: BodyStep[]; readonly notes: Prose[] };

export function readBody(file: string, text: string, firstLine: number, into: Gathered): Body {
  const source: Source = { file, lines: text.split("\n"), firstLine };
  const intro: Prose[] = [];
  const sections: Section[] = [];
  let number = 0;
  let before: Block | undefined;
  for (const block of blocksOf(text)) {
    const section = sections.at(-1);
    const at = placeOf(block, source);
    if (block.type === "heading" && block.tag === "h2") {
      const passage = passageOf(block, source);
      if (passage.lines[0]?.text === "") into.problems.push(problem("heading-empty", at, {}));
      sections.push({ at, heading: readProse(passage, into), steps: [], notes: [] });
    } else if (block.type === "heading")
      into.problems.push(problem("heading-level", at, { sharps: Number(block.tag[1]) }));
    else if (block.type === "paragraph") {
      const passage = passageOf(block, source);
      if (section && before?.type === "heading" && /^makes(\s|$)/.test(passage.lines[0]?.text ?? "")) {
        const makes = readMakes(passage, into);
        if (makes) section.makes = makes;
      } else {
        if (!section) into.told.push(passage.lines);
        (section?.notes ?? intro).push(readLooseParagraph(passage, into));
      }
    } else if (block.type === "ordered_list") {
      if (!section) into.problems.push(problem("step-outside-section", at, {}));
      for (const item of block.inside) {
        const step = readStep(item, ++number, source, into);
        if (step) section?.steps.push(step);
      }
    } else into.problems.push(problem("not-prose", at, { found: blockWords(block.type) }));
    before = block;
  }
  for (const { makes, steps } of sections)
    if (makes && steps.length === 0)
      into.problems.push(problem("makes-without-steps", makes.at, { panel: makes.panel.text, form: makesForm.form }));
  return { intro, sections };
}

function readLooseParagraph(passage: Passage, into: Gathered): Prose {
  const word = proofWord(passage.lines[0]?.text ?? "");
  if (word) into.problems.push(problem("proof-outside-step", passage.at, { word }));
  const { passage: rest, only } = passageOnly(passage, into);
  return underOnly(readProse(rest, into), only);
}

/** What a block is called in a problem. */
export function blockWords(type: string): string {
  if (type === "bullet_list") return "a list with dots";
  if (type === "code_block") return "a text pushed in by four blanks or more, which reads as program text";
  if (type === "fence") return "a block of program text";
  if (type === "table") return "a table";
  if (type === "blockquote") return "a quotation";
  if (type === "hr") return "a ruled line";
  return "something that is no paragraph";
}
