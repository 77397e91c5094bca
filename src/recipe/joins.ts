// `rails to legs: 2 pocket screw No. 6 x 1, back; glue` -> what holds to what, and how.
import { nearest } from "../problems/nearest.ts";
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import { readSide } from "./read-side.ts";
import type { JoinRule, JoinWay } from "./recipe.ts";
import { mostMembers, readReferences } from "./reference.ts";
import { attempt, type Form, type Gathered, refuse, Scan, split, wordsOf } from "./scan.ts";

export const joinForm: Form = {
  form: "X[ and X] to Y[ and Y]: WAY; WAY",
  means: "At every place where an X touches a Y they are held in these ways.",
  example: "rails to legs: 2 pocket screw No. 6 x 1, back; glue",
};

export const joinWayForms: readonly Form[] = [
  {
    form: "N FASTENER[, SIDE]",
    means: "N of them go through X into Y at each place; SIDE is the face that their heads or pockets are on.",
    example: "2 pocket screw No. 6 x 1, back",
  },
  { form: "glue", means: "Glue holds the two where they touch.", example: "glue" },
  {
    form: "half-lap",
    means: "Where the two cross, each loses half of the thickness; X keeps the front or upper half.",
    example: "half-lap",
  },
  { form: "let in", means: "Y is cut away where X stands in it.", example: "let in" },
];
const [fastenerForm, ...otherForms] = joinWayForms as readonly [Form, ...Form[]];

/** A rule for each X with each Y, with every way that can be read; none where it can't be told what is joined. */
export function readJoins(key: Written, value: Written, into: Gathered): JoinRule[] {
  const sides = attempt(into.problems, () => {
    const scan = new Scan(key, joinForm, into);
    const a = readReferences(scan);
    scan.must("to");
    const b = readReferences(scan);
    scan.end();
    return { a, b };
  });
  const read = split(value, ";").map((part) => attempt(into.problems, () => readWay(part, value, into)));
  const ways = read.filter((way) => way !== undefined);
  const text = `${key.text}: ${value.text}`;
  return (sides?.a ?? []).flatMap((a) => (sides?.b ?? []).map((b): JoinRule => ({ at: a.at, text, a, b, ways })));
}

function readWay(part: Written, value: Written, into: Gathered): JoinWay {
  if (part.text === "") refuse(problem("empty-clause", part.at, { whole: value.text }));
  const [head = part, side, ...more] = split(part, ",");
  const other = otherForms.find((form) => head.text.split(/\s+/).slice(0, 2).join(" ").startsWith(form.form));
  const scan = new Scan(side ?? head, other ?? fastenerForm, into);
  if (other) {
    if (side) scan.wants('";" before another way');
    return readOtherWay(scan, head);
  }
  const { count, fastener } = readFastener(head);
  if (!side) return { kind: "fastener", at: head.at, count, fastener };
  const from = readSide(scan);
  scan.end();
  if (more[0]) new Scan(more[0], fastenerForm, into).wants('";" before another way');
  return { kind: "fastener", at: head.at, count, fastener, from };
}

function readOtherWay(scan: Scan, head: Written): JoinWay {
  const at = head.at;
  if (scan.skip("half-lap")) return ended(scan, { kind: "half-lap", at });
  if (scan.skip("let", "in")) return ended(scan, { kind: "let in", at });
  scan.must("glue");
  return ended(scan, { kind: "glue", at });
}

function ended<T>(scan: Scan, way: T): T {
  scan.end();
  return way;
}

function readFastener(head: Written): { count: number; fastener: Written } {
  const [first, second] = wordsOf(head);
  if (!first || !/^\d+$/.test(first.text)) {
    const near = nearest(head.text, ["glue", "half-lap", "let in"]);
    return refuse(problem("join-count", head.at, { found: head.text, nearest: near }));
  }
  const count = Number(first.text);
  if (count < 1 || count > mostMembers)
    refuse(problem("count-out-of-range", first.at, { found: first.text, most: mostMembers }));
  if (!second) return refuse(problem("line-of-nothing", first.at, { found: head.text }));
  return { count, fastener: { text: head.text.slice(second.at.column - head.at.column), at: second.at } };
}
