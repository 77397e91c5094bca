// `height of trestle: 34 1/2`, `weight: 14 lb` -> figures that must be true as printed.
import { further, type Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import { parseNumber, plainSigns } from "../units/parse-number.ts";
import type { Claim, Sum } from "./recipe.ts";
import { attempt, type Form, type Gathered, refuse, Scan } from "./scan.ts";
import { readSum } from "./sum.ts";

export const claimForm: Form = {
  form: "MEASURE [of X]: [at least|at most ]LENGTH",
  means:
    "The build stops unless the worked-out figure, as printed, is this one, or no less or more; a weight is given in lb.",
  example: "height: 26",
};

/** The claim, or undefined where it can't be read. */
export function readClaim(key: Written, value: Written, into: Gathered): Claim | undefined {
  const what = attempt(into.problems, () => {
    const scan = new Scan(key, claimForm, into);
    const sum = readSum(scan);
    scan.end();
    if (!comesOut(sum)) refuse(problem("claim-of-what", key.at, { found: key.text }));
    return sum;
  });
  const bound = (["at least", "at most"] as const).find((words) => value.text.startsWith(`${words} `));
  const rest = bound ? value.text.slice(bound.length + 1) : value.text;
  const figure: Written = { text: rest, at: further(value.at, value.text.length - rest.length) };
  const stated = attempt(into.problems, () => readStated(figure, into));
  const text = `${key.text}: ${value.text}`;
  return what && stated && { at: key.at, text, what, value: stated, ...(bound ? { bound } : {}) };
}

/** Whether a sum asks for anything that is worked out: an overall size, a measure, or a line of a placed thing. */
function comesOut(sum: Sum): boolean {
  switch (sum.kind) {
    case "size":
      return ["width", "depth", "height"].includes(sum.name);
    case "measure":
      return true;
    case "line":
      return sum.of !== undefined;
    case "plus":
    case "minus":
      return comesOut(sum.left) || comesOut(sum.right);
    case "times":
    case "over":
      return comesOut(sum.sum);
    default:
      return false;
  }
}

function readStated(value: Written, into: Gathered): Claim["value"] {
  const pounds = /^(.*?)\s*lb$/.exec(value.text);
  if (!pounds) {
    const scan = new Scan(value, claimForm, into);
    const sum = readSum(scan);
    scan.end();
    return sum;
  }
  const number = parseNumber(plainSigns(pounds[1] ?? ""));
  if (!number.ok) return refuse(problem("bad-weight", value.at, { found: value.text }));
  return { kind: "pounds", at: value.at, value: number.value };
}
