// `hole pole + 1/8, centred; lap 2 long, 3/8 deep, in top, at both ends` -> what is taken out of members.
import { nearest } from "../problems/nearest.ts";
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import type { Side } from "../units/side.ts";
import { readDirection } from "./clause-forms.ts";
import { readSide } from "./read-side.ts";
import type { Cut, CutRule, Spot, Sum } from "./recipe.ts";
import { readReference } from "./reference.ts";
import { attempt, type Form, type Gathered, refuse, Scan, split } from "./scan.ts";
import { isSide, readSum } from "./sum.ts";

export const cutForms: readonly (Form & { readonly kind: Cut["kind"] })[] = [
  {
    kind: "hole",
    form: "hole D, SPOT, SPOT[, L deep][, in SIDE]",
    means:
      "A round hole this wide, square to the wide side or to the named side, right through unless it says how deep.",
    example: "hole 3/8, 15/16 from both ends and both edges",
  },
  {
    kind: "notch",
    form: "notch A x B, SPOT, SPOT",
    means: "A rectangle A along the grain by B across it, taken out right through the thickness.",
    example: "notch 1 1/2 x 3/4, at left, at top",
  },
  {
    kind: "lap",
    form: "lap A long, B deep, in SIDE, SPOT",
    means: "Over the whole width, A along the grain, B deep into that side.",
    example: "lap 1 1/2 long, 5/16 deep, in back, at both ends",
  },
];

export const spotForms: readonly Form[] = [
  {
    form: "L from SIDE|both ends|both edges|both ends and both edges",
    means: "The middle of a hole, or the near side of a notch or lap, is that far in; both makes two.",
    example: "15/16 from both ends",
  },
  { form: "at SIDE|both ends|both edges", means: "The cut starts at that side.", example: "at both ends" },
  {
    form: "centred [left to right|front to back|bottom to top]",
    means: "Its middle is on the middle of the member.",
    example: "centred",
  },
];
const [fromForm, atForm, centredForm] = spotForms as readonly [Form, Form, Form];

/** The rule with every cut that can be read; undefined where it can't be told what is cut. */
export function readCuts(key: Written, value: Written, into: Gathered): CutRule | undefined {
  const whole: Form = { form: "X: CUT; CUT", means: "These cuts are taken out of every X.", example: "planks: hole 1" };
  const of = attempt(into.problems, () => {
    const scan = new Scan(key, whole, into);
    const reference = readReference(scan, "the end");
    scan.end();
    return reference;
  });
  const cuts = split(value, ";").map((part) => attempt(into.problems, () => readCut(part, value, into)));
  if (!of) return undefined;
  return { at: key.at, text: `${key.text}: ${value.text}`, of, cuts: cuts.filter((cut) => cut !== undefined) };
}

function readCut(part: Written, value: Written, into: Gathered): Cut {
  if (part.text === "") refuse(problem("empty-clause", part.at, { whole: value.text }));
  const [head = part, ...rest] = split(part, ",");
  const word = head.text.split(/\s+/)[0] ?? "";
  const form = cutForms.find((f) => f.kind === word);
  if (!form) {
    const kinds = cutForms.map((f) => f.kind);
    return refuse(problem("unknown-cut", head.at, { found: word, kinds, nearest: nearest(word, kinds) }));
  }
  const scan = new Scan(head, form, into);
  scan.take();
  const first = readSum(scan);
  if (form.kind === "notch") scan.must("x");
  const second = form.kind === "notch" ? readSum(scan) : undefined;
  if (form.kind === "lap") scan.must("long");
  scan.end();
  const more = readParts(rest, form, part, into);
  const base = { at: head.at, text: part.text, spots: more.spots };
  if (second) return { kind: "notch", ...base, along: first, across: second };
  if (form.kind === "hole")
    return {
      kind: "hole",
      ...base,
      across: first,
      ...(more.deep ? { deep: more.deep } : {}),
      ...(more.into ? { into: more.into } : {}),
    };
  if (!more.deep || !more.into) {
    const missing = more.deep ? 'the side it is cut into, as in "in back"' : 'how deep it is, as in "3/8 deep"';
    return refuse(problem("cut-needs", head.at, { found: part.text, missing, form: form.form, example: form.example }));
  }
  return { kind: "lap", ...base, along: first, deep: more.deep, into: more.into };
}

type Parts = { spots: Spot[]; deep?: Sum; into?: Side };

function readParts(parts: readonly Written[], form: Form, cut: Written, into: Gathered): Parts {
  const result: Parts = { spots: [] };
  for (const part of parts) {
    if (part.text === "") refuse(problem("empty-clause", part.at, { whole: cut.text }));
    if (/^in\s/.test(part.text)) {
      const scan = new Scan(part, form, into);
      scan.take();
      result.into = readSide(scan);
      scan.end();
    } else if (/\sdeep$/.test(part.text)) {
      const scan = new Scan(part, form, into);
      result.deep = readSum(scan);
      scan.must("deep");
      scan.end();
    } else result.spots.push(readSpot(part, into));
  }
  if (result.spots.length === 0) refuse(problem("cut-needs", cut.at, cutWithoutSpot(cut, form)));
  return result;
}

const cutWithoutSpot = (cut: Written, form: Form) => ({
  found: cut.text,
  missing: 'where it is, as in "2 from left" or "centred"',
  form: form.form,
  example: form.example,
});

function readSpot(part: Written, into: Gathered): Spot {
  const at = part.at;
  if (part.text.startsWith("centred")) {
    const scan = new Scan(part, centredForm, into);
    scan.must("centred");
    const axis = readDirection(scan);
    scan.end();
    return { kind: "centred", at, ...(axis ? { axis } : {}) };
  }
  if (/^at\s/.test(part.text)) {
    const scan = new Scan(part, atForm, into);
    scan.take();
    const side = readBoth(scan) ?? readSide(scan);
    scan.end();
    return { kind: "at", at, side };
  }
  const scan = new Scan(part, fromForm, into);
  const distance = readSum(scan);
  scan.must("from");
  const both = readBoth(scan);
  if (both === "both ends" && scan.skip("and", "both", "edges"))
    return { kind: "in from", at, distance, from: "both ends and both edges" };
  const from = both ?? (isSide(scan.peek()) ? readSide(scan) : scan.wants('a side, "both ends" or "both edges"'));
  scan.end();
  return { kind: "in from", at, distance, from };
}

const readBoth = (scan: Scan): "both ends" | "both edges" | undefined =>
  scan.skip("both", "ends") ? "both ends" : scan.skip("both", "edges") ? "both edges" : undefined;
