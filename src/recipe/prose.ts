// A passage -> prose with its figures read and taken out; what would go stale or lead out of the page is told.
import { further, type Place, type Written } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";
import { findBareFigures } from "./bare-figures.ts";
import { hasHidden } from "./hidden-characters.ts";
import type { Passage } from "./passage.ts";
import type { Prose, Sum } from "./recipe.ts";
import { attempt, type Form, type Gathered, Scan } from "./scan.ts";
import { readSum } from "./sum.ts";

export const figureForm: Form = {
  form: "{SUM}",
  means: "A figure that is worked out, printed in the units of the sheet.",
  example: "{gap of face rails}",
};

/** The prose; every figure that can't be read is a problem and leaves no mark. */
export function readProse(passage: Passage, into: Gathered): Prose {
  const figures: Sum[] = [];
  const lines = passage.lines.map((line) => readLineOfProse(line, figures, into));
  into.problems.push(...checkLeadsOut(passage));
  return { at: passage.at, markdown: lines.join("\n"), figures };
}

function readLineOfProse(line: Written, figures: Sum[], into: Gathered): string {
  const { text } = line;
  let markdown = "";
  let seen = "";
  for (let i = 0; i < text.length; ) {
    const sign = text[i] ?? "";
    const at = further(line.at, i);
    if (sign === "{") {
      const close = text.indexOf("}", i);
      const inner = text.slice(i + 1, close < 0 ? undefined : close);
      if (close < 0 || inner.includes("{")) {
        into.problems.push(problem("figure-open", at, { found: text.slice(i, i + 30), again: close >= 0 }));
        return markdown;
      }
      const sum = readFigureSum({ text: inner, at: further(at, 1) }, at, into);
      if (sum) markdown += `⟦${figures.push(sum) - 1}⟧`;
      seen += "¤".repeat(close + 1 - i);
      i = close + 1;
      continue;
    }
    if (sign === "}")
      into.problems.push(problem("figure-never-opened", at, { found: text.slice(Math.max(0, i - 30), i + 1) }));
    if (sign === "⟦" || sign === "⟧") into.problems.push(problem("sign-not-for-prose", at, { found: sign }));
    markdown += sign;
    seen += sign;
    i++;
  }
  for (const bare of findBareFigures(seen))
    into.bares.push({ at: further(line.at, bare.index), found: bare.text, plain: bare.sum });
  return markdown;
}

function readFigureSum(inner: Written, brace: Place, into: Gathered): Sum | undefined {
  if (inner.text.trim() === "") {
    into.problems.push(problem("figure-empty", brace, {}));
    return undefined;
  }
  return attempt(into.problems, () => {
    const scan = new Scan(inner, figureForm, into);
    const sum = readSum(scan);
    scan.end();
    return sum;
  });
}

/** Links and pictures lead out of the page; signs spelt as numbers could hide what must not be hidden. */
function checkLeadsOut(passage: Passage): Problem[] {
  const leads = passage.children.some((child) => child.type === "link_open" || child.type === "image");
  const hides = passage.children.some((child) => hasHidden(child.content));
  const find = (sign: RegExp): Place => {
    const line = passage.lines.find((each) => sign.test(each.text));
    return line ? further(line.at, line.text.search(sign)) : passage.at;
  };
  return [
    ...(leads ? [problem("link-in-prose", find(/!?\[|</), {})] : []),
    ...(hides ? [problem("sign-not-for-prose", find(/&/), { found: "&…;" })] : []),
  ];
}
