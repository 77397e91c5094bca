// Two summaries of an item -> what moved between them: which sizes, places, drawings, prices, steps and cautions, from what to what.
import type { Division } from "../../units/division.ts";
import { formatLength } from "../../units/format-length.ts";
import { setFractions } from "../edition.ts";
import type { Summary } from "./summary.ts";

export type Change = {
  readonly what: "size" | "place" | "drawing" | "price" | "step" | "caution";
  readonly name: string;
  /** Absent of what is new; `after` of what is gone; both of a place and of a drawing that is only another. */
  readonly before?: string | number;
  readonly after?: string | number;
};

type Values = Readonly<Record<string, string | number | readonly number[]>>;

/** In the order of the later one; what is gone comes last. */
export function changesBetween(before: Summary, after: Summary): readonly Change[] {
  return [
    ...valueChanges("size", before.sizes, after.sizes),
    ...otherChanges("place", before.places, after.places),
    ...otherChanges("drawing", before.drawings, after.drawings),
    ...valueChanges("price", before.prices, after.prices),
    ...valueChanges("step", before.steps, after.steps),
    ...cautionChanges(before.cautions, after.cautions),
  ];
}

const namesOf = (before: Values, after: Values): string[] => [
  ...new Set([...Object.keys(after), ...Object.keys(before)]),
];

const differs = (one: Values[string] | undefined, other: Values[string] | undefined): boolean =>
  JSON.stringify(one) !== JSON.stringify(other);

function valueChanges(
  what: Change["what"],
  before: Readonly<Record<string, string | number>>,
  after: Readonly<Record<string, string | number>>,
): Change[] {
  return namesOf(before, after).flatMap((name) => {
    const [was, is] = [before[name], after[name]];
    if (!differs(was, is)) return [];
    return [{ what, name, ...(was === undefined ? {} : { before: was }), ...(is === undefined ? {} : { after: is }) }];
  });
}

const otherChanges = (what: Change["what"], before: Values, after: Values): Change[] =>
  namesOf(before, after)
    .filter((name) => differs(before[name], after[name]))
    .map((name) => ({
      what,
      name,
      ...(before[name] === undefined ? { after: "new" } : {}),
      ...(after[name] === undefined ? { before: "gone" } : {}),
    }));

const cautionChanges = (before: readonly string[], after: readonly string[]): Change[] => [
  ...after.filter((one) => !before.includes(one)).map((name) => ({ what: "caution", name, after: "new" }) as const),
  ...before.filter((one) => !after.includes(one)).map((name) => ({ what: "caution", name, before: "gone" }) as const),
];

/** "A length 28 23/32 in → 28 1/2 in", "3 drawings other: face panel, step 2, step 3": one line for each sort of change. */
export function changeWords(changes: readonly Change[], division: Division): string[] {
  const of = (what: Change["what"]) => changes.filter((change) => change.what === what);
  const named = (what: Change["what"]) =>
    of(what).map(
      (change) => `${change.name}: ${said(change, change.before, division)} → ${said(change, change.after, division)}`,
    );
  const list = (what: Change["what"], one: string, more: string) => {
    const names = of(what).map(({ name }) => name);
    return names.length === 0 ? [] : [`${names.length} ${names.length === 1 ? one : more}: ${names.join("; ")}`];
  };
  return [
    ...named("size"),
    ...list("place", "piece stands elsewhere", "pieces stand elsewhere"),
    ...list("drawing", "drawing is another", "drawings are others"),
    ...named("price"),
    ...named("step"),
    ...list("caution", "caution came or went", "cautions came or went"),
  ];
}

function said({ name }: Change, value: string | number | undefined, division: Division): string {
  if (value === undefined) return "none";
  if (typeof value === "string") return /^\d+\.\d\d$/.test(value) ? `$${value}` : value;
  if (/mitre|bevel/.test(name)) return `${Number(value.toFixed(1))}°`;
  if (name === "weight") return `${value} lb`;
  return / number$/.test(name) ? String(value) : setFractions(`${formatLength(value, division)} ${division.unit}`);
}
