// `height of trestle: 34 1/2`, `weight: 14 lb` -> figures that must be true as printed.
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import { parseNumber, plainSigns } from "../units/parse-number.ts";
import type { Claim } from "./recipe.ts";
import { attempt, type Form, type Gathered, refuse, Scan } from "./scan.ts";
import { readSum } from "./sum.ts";

export const claimForm: Form = {
  form: "MEASURE [of X]: LENGTH",
  means: "The build stops unless the worked-out figure, as printed, is this one; a weight is given in lb.",
  example: "height: 26",
};

/** The claim, or undefined where it can't be read. */
export function readClaim(key: Written, value: Written, into: Gathered): Claim | undefined {
  const what = attempt(into.problems, () => {
    const scan = new Scan(key, claimForm, into);
    const sum = readSum(scan);
    scan.end();
    const overall = sum.kind === "size" && ["width", "depth", "height"].includes(sum.name);
    if (!overall && sum.kind !== "measure") refuse(problem("claim-of-what", key.at, { found: key.text }));
    return sum;
  });
  const stated = attempt(into.problems, () => readStated(value, into));
  return what && stated && { at: key.at, text: `${key.text}: ${value.text}`, what, value: stated };
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
