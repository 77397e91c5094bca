// Two thousand slips of the pen in the demo's recipes: none stops the reader or the working-out, each problem has its place.
import fc from "fast-check";
import { expect, it } from "vitest";
import { workOut } from "../../src/item/work-out.ts";
import type { Problem } from "../../src/problems/problem.ts";
import { readRecipe } from "../../src/recipe/read-recipe.ts";
import { demoYard } from "../cases/demo-yard.ts";
import { demoTexts } from "./demo-texts.ts";

const runs = 2000;
const slow = 1000;

type Slip = (text: string, at: number, other: number) => string;

const pieces = (text: string, part: RegExp): RegExpExecArray[] => [...text.matchAll(part)];

/** Does something to one of the parts that the pattern finds, chosen by a number from 0 up to 1. */
const onPart =
  (part: RegExp, change: (found: string, other: string) => string): Slip =>
  (text, at, other) => {
    const found = pieces(text, part);
    const one = found[Math.floor(at * found.length)];
    const two = found[Math.floor(other * found.length)];
    if (!one || !two) return text;
    return text.slice(0, one.index) + change(one[0], two[0]) + text.slice(one.index + one[0].length);
  };

const swap =
  (part: RegExp): Slip =>
  (text, at, other) => {
    const found = pieces(text, part);
    const [one, two] = [at, other]
      .map((n) => found[Math.floor(n * found.length)])
      .sort((a, b) => (a?.index ?? 0) - (b?.index ?? 0));
    if (!one || !two || one.index === two.index) return text;
    const between = text.slice(one.index + one[0].length, two.index);
    return text.slice(0, one.index) + two[0] + between + one[0] + text.slice(two.index + two[0].length);
  };

const word = /[^\s]+/g;
const line = /[^\n]*\n/g;
const sign = /[\s\S]/g;
const number = /\d+/g;
const strange = [
  "{",
  "}",
  "{{",
  ":",
  "#",
  "- ",
  "\t",
  "\u202e",
  "\ufffd",
  "⟦0⟧",
  "&",
  "*",
  "**",
  "|",
  ">",
  "[",
  "'",
  '"',
  "<b>",
  "---\n",
  "(",
  "((((",
  "½",
  "-1",
  "0",
  "999999999999",
  "1/0",
  "x",
];

const slips: readonly Slip[] = [
  onPart(word, () => ""),
  onPart(word, (found) => `${found} ${found}`),
  onPart(word, (_, other) => other),
  swap(word),
  onPart(sign, () => ""),
  onPart(sign, (found) => found + found),
  onPart(sign, (_, other) => other),
  swap(sign),
  onPart(line, () => ""),
  onPart(line, (found) => found + found),
  swap(line),
  onPart(number, (_, other) => other),
  onPart(number, (found) => String(Number(found) * 7 + 1)),
  onPart(number, () => "0"),
  (text, at, other) => {
    const i = Math.floor(at * text.length);
    return text.slice(0, i) + strange[Math.floor(other * strange.length)] + text.slice(i);
  },
  (text, at) => text.slice(0, Math.floor(at * text.length)),
];

const unit = fc.double({ min: 0, max: 0.999999, noNaN: true });
const slipped = fc
  .tuple(
    fc.constantFrom(...demoTexts),
    fc.array(fc.tuple(fc.constantFrom(...slips), unit, unit), { minLength: 1, maxLength: 3 }),
  )
  .map(([{ text }, changes]) => changes.reduce((sum, [slip, at, other]) => slip(sum, at, other), text));

function checkTold(problem: Problem, lines: readonly string[]): void {
  const { line: at, column } = problem.at;
  const facts = `${problem.code} at ${at}:${column}`;
  expect(at, facts).toBeGreaterThanOrEqual(1);
  expect(at, facts).toBeLessThanOrEqual(lines.length);
  expect(column, facts).toBeGreaterThanOrEqual(1);
  expect(column, facts).toBeLessThanOrEqual((lines[at - 1]?.length ?? 0) + 1);
  expect(problem.says.trim(), facts).not.toBe("");
  expect(problem.mend.trim(), facts).not.toBe("");
}

it(`${runs} slips: no stack trace, none over a second, every problem at a place in the file`, {
  timeout: 600_000,
}, () => {
  const yard = demoYard();
  const times: { readonly ms: number; readonly text: string }[] = [];
  let broken = 0;
  fc.assert(
    fc.property(slipped, (text) => {
      const begun = process.cpuUsage();
      const { recipe, problems } = readRecipe("slip.md", text);
      const all = recipe ? workOut(recipe, yard).problems : problems;
      // Time of this process alone: how busy the machine is otherwise doesn't count.
      const { user, system } = process.cpuUsage(begun);
      times.push({ ms: (user + system) / 1000, text });
      if (all.length > 0) broken++;
      if (!recipe) expect(problems.length).toBeGreaterThan(0);
      for (const each of all) checkTold(each, text.split("\n"));
    }),
    { numRuns: runs, seed: 20261103, endOnFailure: true },
  );
  const slowest = times.reduce((a, b) => (a.ms > b.ms ? a : b));
  console.log(`${broken} of ${times.length} slips told; the slowest took ${slowest.ms.toFixed(0)} ms`);
  expect(broken).toBeGreaterThan(runs / 2);
  expect(times.filter((each) => each.ms > slow)).toEqual([]);
});
