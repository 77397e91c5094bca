// `2 coats white on odd rails; 2 coats stain on the rest` -> what is coated with what.
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import type { Coat, FinishScheme, Reference } from "./recipe.ts";
import { readReference } from "./reference.ts";
import { attempt, type Form, type Gathered, refuse, Scan, split } from "./scan.ts";

export const coatForm: Form = {
  form: "N coats FINISH on X [and Y]|all|the rest",
  means: "These members get N coats of it; the rest is what no other coat of the scheme names.",
  example: "2 coats white on odd rails",
};

/** At most this many coats of one finish. */
const mostCoats = 12;

/** The scheme with every coat that can be read; `none` is bare wood. */
export function readScheme(name: Written, value: Written, into: Gathered): FinishScheme {
  if (value.text === "none") return { name, at: value.at, coats: [] };
  const coats = split(value, ";").map((part) => attempt(into.problems, () => readCoat(part, value, into)));
  return { name, at: value.at, coats: coats.filter((coat) => coat !== undefined) };
}

function readCoat(part: Written, value: Written, into: Gathered): Coat {
  if (part.text === "") refuse(problem("empty-clause", part.at, { whole: value.text }));
  const scan = new Scan(part, coatForm, into);
  const at = scan.here;
  if (!/^\d+$/.test(scan.peek() ?? "")) scan.wants('a number of coats, or "none" alone,');
  const number = scan.take();
  const coats = Number(number.text);
  if (coats < 1 || coats > mostCoats)
    refuse(problem("count-out-of-range", number.at, { found: number.text, most: mostCoats }));
  if (!scan.skip(coats === 1 ? "coat" : "coats")) scan.wants(coats === 1 ? '"coat"' : '"coats"');
  const finishAt = scan.here;
  const first = scan.read;
  while (!scan.done && !scan.is("on")) scan.take();
  const finish = { text: scan.textFrom(first), at: finishAt };
  if (scan.read === first) scan.wants("the name of a finish");
  scan.must("on");
  return { at, coats, finish, on: readWhat(scan) };
}

function readWhat(scan: Scan): Coat["on"] {
  if (scan.skip("all")) {
    scan.end();
    return { kind: "all" };
  }
  if (scan.skip("the", "rest")) {
    scan.end();
    return { kind: "rest" };
  }
  const of: Reference[] = [readReference(scan, "the end")];
  while (scan.skip("and")) of.push(readReference(scan, "the end"));
  scan.end();
  return { kind: "some", of };
}
