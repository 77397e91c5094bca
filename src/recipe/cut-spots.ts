// `15/16 from both ends`, `at left`, `centred` -> where a cut sits.
import type { Written } from "../problems/place.ts";
import { readDirection } from "./clause-forms.ts";
import { readSide } from "./read-side.ts";
import type { Spot } from "./recipe.ts";
import { type Form, type Gathered, Scan } from "./scan.ts";
import { isSide, readSum } from "./sum.ts";

export const spotForms: readonly Form[] = [
  {
    form: "L from SIDE|both ends|both edges|both ends and both edges",
    means: "The middle of a hole, or the near side of any other cut, is that far in; both makes two.",
    example: "15/16 from both ends",
  },
  { form: "at SIDE|both ends|both edges", means: "The cut starts at that side.", example: "at both ends" },
  {
    form: "centred [left to right|front to back|bottom to top]",
    means: "Its middle is on the middle of the member.",
    example: "centred",
  },
];
export const stopForm: Form = {
  form: "stopped L from SIDE|both ends|both edges",
  means: "A groove, dado or rabbet ends that far short of the side it would run out of, its end cut square.",
  example: "stopped 2 from left",
};
const [fromForm, atForm, centredForm] = spotForms as readonly [Form, Form, Form];

export function readSpot(part: Written, into: Gathered): Spot {
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

/** `both ends` or `both edges`, if that comes next. */
export const readBoth = (scan: Scan): "both ends" | "both edges" | undefined =>
  scan.skip("both", "ends") ? "both ends" : scan.skip("both", "edges") ? "both edges" : undefined;
