// `hole pole + 1/8, centred; lap 2 long, 3/8 deep, in top, at both ends` -> what is taken out of members.
import { nearest } from "../problems/nearest.ts";
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import { type CutForm, cutForms } from "./cut-forms.ts";
import { type CutParts, type PartName, readCutParts } from "./cut-parts.ts";
import type { Cut, CutRule } from "./recipe.ts";
import { readReferences } from "./reference.ts";
import { attempt, type Form, type Gathered, refuse, Scan, split } from "./scan.ts";

export const cutsForm: Form = {
  form: "X[ and X]: CUT; CUT",
  means: "These cuts are taken out of every X.",
  example: "cheeks and shelf: hole 3/8, centred; eased arrises 1/8",
};

/** A rule for each X, with every cut that can be read; none where it can't be told what is cut. */
export function readCuts(key: Written, value: Written, into: Gathered): CutRule[] {
  const of = attempt(into.problems, () => {
    const scan = new Scan(key, cutsForm, into);
    const list = readReferences(scan);
    scan.end();
    return list;
  });
  const cuts = split(value, ";").map((part) => attempt(into.problems, () => readCut(part, value, into)));
  const read = cuts.filter((cut) => cut !== undefined);
  const text = `${key.text}: ${value.text}`;
  return (of ?? []).map((each): CutRule => ({ at: each.at, text, of: each, cuts: read }));
}

function readCut(part: Written, value: Written, into: Gathered): Cut {
  if (part.text === "") refuse(problem("empty-clause", part.at, { whole: value.text }));
  const [head = part, ...rest] = split(part, ",");
  const form = formOf(head);
  const scan = new Scan(head, form, into);
  scan.must(...form.kind.split(" "));
  const body = form.read(scan);
  scan.end();
  const parts = readCutParts(rest, form.takes, form, part, into);
  for (const name of form.needs)
    if (!has(parts, name)) refuse(problem("cut-needs", head.at, missing(part, form, name)));
  return { at: head.at, text: part.text, ...form.make(body, parts) };
}

function formOf(head: Written): CutForm {
  const words = head.text.split(/\s+/);
  const form = cutForms.find((f) => f.kind.split(" ").every((word, i) => words[i] === word));
  if (form) return form;
  const kinds = [...new Set(cutForms.map((f) => f.kind))];
  const found = words[0] ?? "";
  const twoWords = kinds.find((kind) => kind.split(" ")[0] === found);
  return refuse(problem("unknown-cut", head.at, { found, kinds, nearest: twoWords ?? nearest(found, kinds) }));
}

const has = (parts: CutParts, name: PartName): boolean =>
  name === "spots" || name === "stops" ? parts[name].length > 0 : parts[name] !== undefined;

const wanted: Readonly<Record<PartName, string>> = {
  spots: 'where it is, as in "2 from left" or "centred"',
  stops: 'where it ends, as in "stopped 2 from left"',
  into: 'the side it is cut into, as in "in back"',
  along: 'the edge or end it runs along, as in "along top"',
  deep: 'how deep it is, as in "3/8 deep"',
  corners: 'how round its corners are, as in "corners 1/2"',
  grid: 'how many and how far apart, as in "8 x 5 every 1 3/4"',
  sink: 'how wide it is at the top, as in "countersink 3/8"',
};

const missing = (cut: Written, form: Form, name: PartName) => ({
  found: cut.text,
  missing: wanted[name],
  form: form.form,
  example: form.example,
});
