// Words -> a sum: sizes, lines and measures joined by plus and minus, multiplied and divided by plain numbers.
import { nearest } from "../problems/nearest.ts";
import { problem } from "../problems/problem.ts";
import { exact } from "../units/length.ts";
import { type Side, sides } from "../units/side.ts";
import { readFigure, readPlainNumber, startsFigure } from "./figure-words.ts";
import { isName } from "./name.ts";
import type { Measure, Sum } from "./recipe.ts";
import { readReference, type Until } from "./reference.ts";
import { refuse, type Scan } from "./scan.ts";

export const measures: readonly Measure[] = [
  "length",
  "width",
  "thickness",
  "height",
  "depth",
  "gap",
  "diagonal",
  "count",
  "weight",
  "area",
];
const overallSizes: readonly string[] = ["width", "depth", "height"];
/** Measures that can be asked of the whole item. */
const wholeMeasures: readonly string[] = ["weight", "area", "count"];

/** More words than this in one sum are no shop figure; the bound also keeps its tree shallow. */
const mostWords = 80;

export const isSide = (word: string | undefined): word is Side => sides.some((side) => side === word);

/** Reads as far as the words make a sum. `until` is "to" where that word parts two sums. */
export function readSum(scan: Scan, until: Until = "the end"): Sum {
  if (scan.words.length > mostWords) refuse(problem("sum-too-long", scan.here, { most: mostWords }));
  let sum = readProduct(scan, until);
  for (;;) {
    const at = sum.at;
    if (scan.skip("+")) sum = { kind: "plus", at, left: sum, right: readProduct(scan, until) };
    else if (scan.skip("-")) sum = { kind: "minus", at, left: sum, right: readProduct(scan, until) };
    else if (/^[-+−–]\S/.test(scan.peek() ?? "") || /^[−–]$/.test(scan.peek() ?? ""))
      refuse(problem("sign-needs-blanks", scan.here, { whole: scan.whole.text, found: scan.peek() ?? "" }));
    else return sum;
  }
}

function readProduct(scan: Scan, until: Until): Sum {
  let sum = readTerm(scan, until);
  for (;;) {
    const at = sum.at;
    if (scan.skip("*")) {
      const turned = sum.kind === "length" && sum.bare && !startsFigure(scan.peek());
      sum =
        turned && sum.kind === "length"
          ? { kind: "times", at, sum: readTerm(scan, until), by: sum.value }
          : { kind: "times", at, sum, by: readPlainNumber(scan) };
    } else if (scan.is("/")) {
      scan.take();
      const by = scan.here;
      const number = readPlainNumber(scan);
      if (number.equals(0)) refuse(problem("over-zero", by, { whole: scan.whole.text }));
      sum = { kind: "over", at, sum, by: number };
    } else return sum;
  }
}

function readTerm(scan: Scan, until: Until): Sum {
  const at = scan.here;
  const word = scan.peek();
  if (startsFigure(word)) return readFigure(scan);
  if (scan.skip("(")) {
    const inner = readSum(scan, until);
    scan.must(")");
    return inner;
  }
  if (scan.skip("half")) {
    scan.skip("of");
    return { kind: "over", at, sum: readTerm(scan, until), by: exact(2) };
  }
  if (isSide(word) || word === "middle" || word === "floor") return readLine(scan, until);
  if (measures.some((measure) => measure === word)) return readMeasure(scan, until);
  if (isName(word)) {
    const name = scan.take();
    if (scan.is("of")) {
      const apart = minusBefore(name.text);
      if (apart) {
        const rest = scan.words.slice(scan.read).map((w) => w.text);
        const end = rest.findIndex((w) => /^[-+*/(),]$/.test(w));
        const of = rest.slice(0, end < 0 ? undefined : end).join(" ");
        refuse(problem("hyphen-for-minus", at, { found: `${name.text} ${of}`, apart: `${apart} ${of}` }));
      }
      const facts = { found: name.text, measures, nearest: nearest(name.text, [...measures, ...sides, "middle"]) };
      refuse(problem("unknown-measure", at, facts));
    }
    scan.gathered.sizes.push(name);
    return { kind: "size", at, name: name.text };
  }
  return scan.wants("a length, the name of a size, a side or a measure");
}

/** `height-thickness` as `height - thickness`, where what stands before `of` is a measure, a side or the middle. */
function minusBefore(name: string): string | undefined {
  const cut = name.lastIndexOf("-");
  const right = name.slice(cut + 1);
  const asked = isSide(right) || right === "middle" || measures.some((measure) => measure === right);
  return cut > 0 && asked ? `${name.slice(0, cut)} - ${right}` : undefined;
}

/** `top`, `top of legs 1`, `middle of back-face`; the floor is the bottom. */
function readLine(scan: Scan, until: Until): Sum {
  const word = scan.take();
  const side = word.text === "floor" ? "bottom" : word.text === "middle" ? "middle" : (word.text as Side);
  if (scan.skip("of")) return { kind: "line", at: word.at, side, of: readReference(scan, until, true) };
  if (side === "middle") scan.wants('"of" and a name');
  return { kind: "line", at: word.at, side };
}

function readMeasure(scan: Scan, until: Until): Sum {
  const word = scan.take();
  const measure = word.text as Measure;
  if (scan.skip("of")) return { kind: "measure", at: word.at, measure, of: readReference(scan, until, true) };
  if (overallSizes.includes(measure)) return { kind: "size", at: word.at, name: measure };
  if (wholeMeasures.includes(measure)) return { kind: "measure", at: word.at, measure };
  return refuse(problem("measure-of-nothing", word.at, { measure }));
}
