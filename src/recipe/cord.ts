// `rope 1/4, up through the left holes of planks, hanger 10 above planks 5, …` -> which rope goes which way.
import { nearest } from "../problems/nearest.ts";
import type { Written } from "../problems/place.ts";
import { type Problem, problem } from "../problems/problem.ts";
import { opposite, type Side } from "../units/side.ts";
import type { CordPart, CordRule, Sum } from "./recipe.ts";
import { readReference } from "./reference.ts";
import { attempt, type Form, type Gathered, refuse, Scan, split, wordsOf } from "./scan.ts";
import { isSide, readSum } from "./sum.ts";

const holesForm: Form = {
  form: "up|down|left|right|back|forward through the [SIDE] holes of X",
  means: "The rope goes that way through the holes of X, or through those on the named side of each board.",
  example: "up through the left holes of planks",
};
const hangerForm: Form = {
  form: "hanger L above X",
  means:
    "The rope runs over a hook that high above the middle of X, or is tied to it where the rope starts or ends there.",
  example: "hanger 10 above planks 5",
};
const loopForm: Form = {
  form: "loop L above X",
  means: "The rope ends in a loop that high above X, straight over its last hole.",
  example: "loop 12 above planks 5",
};
const sidesForm: Form = {
  form: "SIDE and SIDE",
  means: "It goes in from the first side, comes out at the second, and changes sides at every hole.",
  example: "front and back",
};
const knotForm: Form = {
  form: "knot at start|knot at end|knots at both ends",
  means: "A knot keeps that end from slipping through its hole.",
  example: "knots at both ends",
};
const knotRopeForm: Form = {
  form: "L for each knot",
  means: "So much rope goes into each knot and what hangs out of it.",
  example: "4 for each knot",
};
const slackForm: Form = { form: "slack L", means: "So much rope more, for play.", example: "slack 2" };

export const cordForm: Form = {
  form: "ROPE, WAY, KNOTS, L for each knot",
  means: "One rope of the yard, the way it goes, and what its knots take.",
  example: "rope 1/4, up through the holes of planks, knots at both ends, 4 for each knot",
};
export const cordForms: readonly Form[] = [
  cordForm,
  holesForm,
  hangerForm,
  loopForm,
  sidesForm,
  knotForm,
  knotRopeForm,
  slackForm,
];

const towards: Readonly<Record<string, Side>> = {
  up: "top",
  down: "bottom",
  left: "left",
  right: "right",
  back: "back",
  forward: "front",
};

type Said =
  | { readonly kind: "way"; readonly part: CordPart }
  | { readonly kind: "from"; readonly from: Side }
  | { readonly kind: "knots"; readonly start: boolean; readonly end: boolean }
  | { readonly kind: "per knot" | "slack"; readonly sum: Sum };

/** The rule with every clause that can be read. */
export function readCord(name: Written, value: Written, into: Gathered): CordRule {
  const [rope = value, ...parts] = split(value, ",");
  if (rope.text === "") into.problems.push(problem("empty-clause", rope.at, { whole: value.text }));
  const said = parts.flatMap(
    (part) => attempt(into.problems, () => ({ part, said: readClause(part, value, into) })) ?? [],
  );
  into.problems.push(...checkOnce(said));
  const find = <K extends Said["kind"]>(kind: K) =>
    said.map((one) => one.said).find((one): one is Said & { kind: K } => one.kind === kind);
  const from = find("from");
  const knots = find("knots");
  const perKnot = find("per knot");
  const slack = find("slack");
  return {
    at: value.at,
    text: value.text,
    name,
    rope,
    way: said.flatMap((one) => (one.said.kind === "way" ? [one.said.part] : [])),
    from: from?.from ?? "front",
    fromSaid: from !== undefined,
    knots: { start: knots?.start ?? false, end: knots?.end ?? false },
    ...(perKnot ? { perKnot: perKnot.sum } : {}),
    ...(slack ? { slack: slack.sum } : {}),
  };
}

/** Only the way may have several clauses. */
function checkOnce(said: readonly { readonly part: Written; readonly said: Said }[]): Problem[] {
  return said.flatMap(({ part, said: one }, i) => {
    const first = said.slice(0, i).find((other) => one.kind !== "way" && other.said.kind === one.kind);
    return first ? [problem("clause-twice", part.at, { found: part.text, first: first.part.text }, first.part.at)] : [];
  });
}

function readClause(part: Written, whole: Written, into: Gathered): Said {
  const words = wordsOf(part).map((word) => word.text);
  const [first = ""] = words;
  if (first === "") refuse(problem("empty-clause", part.at, { whole: whole.text }));
  if (words.slice(-3).join(" ") === "for each knot") return readSumAnd(part, knotRopeForm, into, "per knot", 3);
  if (first === "slack") return readSumAnd(part, slackForm, into, "slack", 0);
  if (first === "knot" || first === "knots") return readKnots(new Scan(part, knotForm, into));
  if (first === "hanger" || first === "loop") return { kind: "way", part: readHanger(part, first, into) };
  if (isSide(first) && words[1] === "and") return readSides(new Scan(part, sidesForm, into));
  if (towards[first] && words.length > 1) return { kind: "way", part: readHoles(part, into) };
  const like = cordForms.filter((form) => form !== cordForm).map((form) => form.form);
  const near = nearest(first, [...Object.keys(towards), "hanger", "loop", "knots", "slack"]);
  const mended = near === undefined ? undefined : [near, ...words.slice(1)].join(" ");
  return refuse(problem("unknown-clause", part.at, { found: part.text, nearest: mended, like }));
}

function readSumAnd(part: Written, form: Form, into: Gathered, kind: "per knot" | "slack", after: number): Said {
  const scan = new Scan(part, form, into);
  if (kind === "slack") scan.must("slack");
  const sum = readSum(scan);
  if (after > 0) scan.must("for", "each", "knot");
  scan.end();
  return { kind, sum };
}

function readKnots(scan: Scan): Said {
  if (scan.skip("knot")) {
    scan.must("at");
    const start = scan.skip("start");
    if (!start) scan.must("end");
    scan.end();
    return { kind: "knots", start, end: !start };
  }
  scan.must("knots", "at", "both", "ends");
  scan.end();
  return { kind: "knots", start: true, end: true };
}

function readHanger(part: Written, kind: "hanger" | "loop", into: Gathered): CordPart {
  const scan = new Scan(part, kind === "hanger" ? hangerForm : loopForm, into);
  scan.must(kind);
  const above = readSum(scan);
  scan.must("above");
  const of = readReference(scan, "the end");
  scan.end();
  return { kind, at: part.at, text: part.text, above, of };
}

function readSides(scan: Scan): Said {
  const from = scan.take().text as Side;
  scan.must("and", opposite[from]);
  scan.end();
  return { kind: "from", from };
}

function readHoles(part: Written, into: Gathered): CordPart {
  const scan = new Scan(part, holesForm, into);
  const toward = towards[scan.take().text] as Side;
  scan.must("through", "the");
  const word = scan.peek();
  const side = isSide(word) ? word : undefined;
  if (side) scan.take();
  scan.must("holes", "of");
  const of = readReference(scan, "the end");
  scan.end();
  return { kind: "holes", at: part.at, text: part.text, toward, ...(side ? { side } : {}), of };
}
