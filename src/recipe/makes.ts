// `makes face, twice` under a heading -> the panel that the section builds, and how often.
import { problem } from "../problems/problem.ts";
import { isName } from "./name.ts";
import type { Passage } from "./passage.ts";
import type { BodySection } from "./recipe.ts";
import { attempt, type Form, type Gathered, refuse, Scan, split } from "./scan.ts";

export const makesForm: Form = {
  form: "makes PANEL[, once|twice|N times]",
  means: "The steps under this heading build that panel on the bench, so many times.",
  example: "makes face, twice",
};

/** At most this many of one panel. */
const mostTimes = 99;
const spelt = ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

export function readMakes(passage: Passage, into: Gathered): BodySection["makes"] | undefined {
  return attempt(into.problems, () => {
    const [line, second] = passage.lines;
    if (!line) return undefined;
    if (second) refuse(problem("makes-runs-on", second.at, { found: second.text.slice(0, 40) }));
    const [head = line, often, more] = split(line, ",");
    const scan = new Scan(head, makesForm, into);
    scan.must("makes");
    if (!isName(scan.peek())) scan.wants("the name of a panel");
    const panel = scan.take();
    if (!scan.done) scan.wants('a comma, then "twice" or "3 times"');
    const times = often ? readTimes(new Scan(often, makesForm, into)) : 1;
    if (more) new Scan(more, makesForm, into).wants("nothing more");
    return { panel, times, at: line.at };
  });
}

function readTimes(scan: Scan): number {
  const at = scan.here;
  const fixed = scan.skip("once") ? 1 : scan.skip("twice") ? 2 : undefined;
  if (fixed) {
    scan.end();
    return fixed;
  }
  const word = scan.peek() ?? "";
  const times = /^\d+$/.test(word) ? Number(word) : spelt.indexOf(word) + 1;
  if (word !== "0" && times === 0) scan.wants('"once", "twice" or "3 times"');
  scan.take();
  if (!scan.skip("time") && !scan.skip("times")) scan.wants('"times"');
  scan.end();
  if (times < 1 || times > mostTimes) refuse(problem("count-out-of-range", at, { found: word, most: mostTimes }));
  return times;
}
