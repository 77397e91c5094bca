// Words -> one typed figure: a length, an angle or a plain number, as far as its words reach.
import { problem } from "../problems/problem.ts";
import type { Exact } from "../units/length.ts";
import { angleFaultWords, parseAngle } from "../units/parse-angle.ts";
import { lengthFaultWords, parseLength } from "../units/parse-length.ts";
import type { Sum } from "./recipe.ts";
import { refuse, type Scan } from "./scan.ts";

const digits = /^[-+−–]?\.?[\d\u00bc-\u00be\u2150-\u215e]/;
const units: ReadonlySet<string> = new Set(
  `in inch inches mm cm m metre metres meter meters ft foot feet yd yard yards deg degree degrees ° ' " ′ ″ ’ ”`.split(
    " ",
  ),
);

export const startsFigure = (word: string | undefined): word is string => word !== undefined && digits.test(word);

/** Reads `17 9/16`, `1' 6 1/2"`, `450 mm`, `14 deg`, `3 in 12`. */
export function readFigure(scan: Scan): Sum {
  const at = scan.here;
  const first = scan.read;
  while (startsFigure(scan.peek()) || (scan.read > first && isUnit(scan))) scan.take();
  const found = scan.textFrom(first);
  if (/deg|°/.test(found) || /\din\s+\d|\sin\s+\d/.test(found)) {
    const angle = parseAngle(found);
    if (angle.ok) return { kind: "angle", at, degrees: angle.degrees };
    return refuse(problem("bad-angle", at, { found, why: angleFaultWords[angle.fault], suggestion: angle.suggestion }));
  }
  if (scan.form.form.includes(" x ") && /\dx\.?\d/.test(found))
    refuse(problem("bad-length", at, { found, why: joined, suggestion: found.replace(/\s*x\s*/g, " x ") }));
  const length = parseLength(found);
  if (length.ok) return { kind: "length", at, value: length.value, bare: length.bare };
  return refuse(
    problem("bad-length", at, { found, why: lengthFaultWords[length.fault], suggestion: length.suggestion }),
  );
}

const joined = "the x between two sizes stands between blanks";

/** A unit, but not the "in" of `2 in front of legs`. */
const isUnit = (scan: Scan): boolean => units.has(scan.peek() ?? "") && !scan.is("in", "front", "of");

/** Reads a number that multiplies or divides, which has no unit. */
export function readPlainNumber(scan: Scan): Exact {
  const at = scan.here;
  if (!startsFigure(scan.peek())) scan.wants("a plain number");
  const figure = readFigure(scan);
  return figure.kind === "length" && figure.bare
    ? figure.value
    : refuse(problem("number-has-unit", at, { whole: scan.whole.text }));
}
