// `each planks, 1 1/2 high, between holes, 1/2 inside, by stencil or film, saying Fresh eggs` -> where letters stand.
import type { Written } from "../problems/place.ts";
import { further } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import type { Side } from "../units/side.ts";
import { readSide } from "./read-side.ts";
import { type Sum, type TextRule, type TextWay, textWays } from "./recipe.ts";
import { readReference } from "./reference.ts";
import { attempt, type Form, type Gathered, refuse, Scan, split, wordsOf } from "./scan.ts";
import { readSum } from "./sum.ts";

export const textForm: Form = {
  form: "X, L high, saying TEXT[ / TEXT]",
  means:
    "A row of letters so high along the middle of each X, on its good side; one text for all, or one for each from the top down.",
  example: "each planks, 1 1/2 high, saying Tomatoes / Beans",
};
const highForm: Form = { form: "L high", means: "The letters are so high.", example: "1 1/2 high" };
const betweenForm: Form = {
  form: "between holes",
  means: "The row is as wide as the room between the holes nearest to the middle.",
  example: "between holes",
};
const insideForm: Form = {
  form: "L inside",
  means: "So much is left free at both ends of the row.",
  example: "1/2 inside",
};
const onForm: Form = { form: "on SIDE", means: "The letters stand on that side.", example: "on front" };
const byForm: Form = {
  form: "by stencil|film|engraving[ or …]",
  means: "The ways it is offered in, the standard one first.",
  example: "by stencil or film or engraving",
};
export const textForms: readonly Form[] = [textForm, highForm, betweenForm, insideForm, onForm, byForm];

type Parts = { height?: Sum; side?: Side; betweenHoles?: true; inside?: Sum; ways?: readonly TextWay[] };

/** The rule, or undefined where it can't be told what letters stand on or how high they are. */
export function readText(name: Written, value: Written, into: Gathered): TextRule | undefined {
  // The text itself may hold commas, so it comes last and runs to the end.
  const marked = /,\s*saying(?=\s|$)/.exec(value.text);
  const before = { text: marked ? value.text.slice(0, marked.index) : value.text, at: value.at };
  const [head = before, ...clauses] = split(before, ",");
  const of = attempt(into.problems, () => {
    const scan = new Scan(head, textForm, into);
    const reference = readReference(scan, "the end");
    scan.end();
    return reference;
  });
  const parts: Parts = {};
  const said = new Map<keyof Parts, Written>();
  for (const clause of clauses) attempt(into.problems, () => readClause(clause, value, parts, said, into));
  const sayings = marked ? sayingsIn(value, marked.index + marked[0].length, into) : [];
  if (!marked) into.problems.push(problem("text-says-nothing", value.at, { name: name.text }));
  if (!parts.height && clauses.every((clause) => !clause.text.endsWith(" high")))
    into.problems.push(problem("text-how-high", value.at, { name: name.text }));
  if (!of || !parts.height) return undefined;
  return {
    at: value.at,
    text: value.text,
    name,
    of,
    height: parts.height,
    ...(parts.side ? { side: parts.side } : {}),
    betweenHoles: parts.betweenHoles ?? false,
    ...(parts.inside ? { inside: parts.inside } : {}),
    ways: parts.ways ?? [textWays[0]],
    sayings,
  };
}

function sayingsIn(value: Written, from: number, into: Gathered): Written[] {
  const texts: Written[] = [];
  let start = from;
  for (const part of value.text.slice(from).split(/(?<=\s)\/(?=\s)/)) {
    const lead = part.length - part.trimStart().length;
    texts.push({ text: part.trim(), at: further(value.at, start + lead) });
    start += part.length + 1;
  }
  const empty = texts.find((text) => text.text === "");
  if (empty) into.problems.push(problem("text-empty", empty.at, { count: texts.length }));
  return texts;
}

function readClause(
  clause: Written,
  whole: Written,
  parts: Parts,
  said: Map<keyof Parts, Written>,
  into: Gathered,
): void {
  if (clause.text === "") refuse(problem("empty-clause", clause.at, { whole: whole.text }));
  const once = (key: keyof Parts) => {
    const first = said.get(key);
    if (first) refuse(problem("clause-twice", clause.at, { found: clause.text, first: first.text }, first.at));
    said.set(key, clause);
  };
  const words = wordsOf(clause).map((word) => word.text);
  const scan = (form: Form) => new Scan(clause, form, into);
  if (words.at(-1) === "high") {
    once("height");
    parts.height = readSumBefore(scan(highForm), "high");
  } else if (words.at(-1) === "inside") {
    once("inside");
    parts.inside = readSumBefore(scan(insideForm), "inside");
  } else if (words[0] === "between") {
    once("betweenHoles");
    const reading = scan(betweenForm);
    reading.must("between", "holes");
    reading.end();
    parts.betweenHoles = true;
  } else if (words[0] === "on") {
    once("side");
    const reading = scan(onForm);
    reading.must("on");
    parts.side = readSide(reading);
    reading.end();
  } else if (words[0] === "by") {
    once("ways");
    parts.ways = readWays(scan(byForm));
  } else {
    const like = textForms.slice(1).map((form) => form.form);
    refuse(problem("unknown-clause", clause.at, { found: clause.text, nearest: undefined, like }));
  }
}

function readSumBefore(scan: Scan, word: string): Sum {
  const sum = readSum(scan);
  scan.must(word);
  scan.end();
  return sum;
}

function readWays(scan: Scan): readonly TextWay[] {
  scan.must("by");
  const ways: TextWay[] = [];
  do {
    const way = textWays.find((known) => known === scan.peek());
    if (!way) scan.wants(`a way (${textWays.join(", ")})`);
    else {
      const at = scan.take().at;
      if (ways.includes(way)) refuse(problem("offered-twice", at, { found: way }));
      ways.push(way);
    }
  } while (scan.skip("or"));
  scan.end();
  return ways;
}
