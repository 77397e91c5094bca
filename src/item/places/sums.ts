// A sum as written -> its value, with the lines and measures it names asked of whoever knows them.
import type { Place } from "../../problems/place.ts";
import { problem } from "../../problems/problem.ts";
import type { Sum } from "../../recipe/recipe.ts";
import { type Length, minus, over, plus, times } from "../../units/length.ts";
import { Fault } from "./fault.ts";

/** A worked sum. A bare figure ("3") is a length until it meets a plain number. */
export type Value = {
  readonly kind: "length" | "number" | "angle";
  readonly value: Length;
  readonly bare?: boolean;
};

/** Who answers for names, lines and measures. Each may throw a Fault. */
export type Asked = {
  size(name: string, at: Place): Value;
  line(sum: Sum & { kind: "line" }): Value;
  measure(sum: Sum & { kind: "measure" }): Value;
};

const kindWords = { length: "a length", number: "a plain number", angle: "an angle" } as const;

/** The value of a sum. Throws a Fault where two kinds can't be added or a name has no value. */
export function workSum(sum: Sum, asked: Asked): Value {
  switch (sum.kind) {
    case "length":
      return { kind: "length", value: sum.value, bare: sum.bare };
    case "angle":
      return { kind: "angle", value: sum.degrees };
    case "size":
      return asked.size(sum.name, sum.at);
    case "line":
      return asked.line(sum);
    case "measure":
      return asked.measure(sum);
    case "times":
    case "over": {
      const of = workSum(sum.sum, asked);
      return { kind: of.kind, value: sum.kind === "times" ? times(of.value, sum.by) : over(of.value, sum.by) };
    }
    case "plus":
    case "minus": {
      const left = workSum(sum.left, asked);
      const right = workSum(sum.right, asked);
      const value = sum.kind === "plus" ? plus(left.value, right.value) : minus(left.value, right.value);
      if (left.kind === right.kind) return { kind: left.kind, value };
      if (left.bare || right.bare) return { kind: left.bare ? right.kind : left.kind, value };
      const facts = { left: kindWords[left.kind], right: kindWords[right.kind], sign: sum.kind };
      throw new Fault(problem("mixed-sum", sum.right.at, facts, sum.left.at));
    }
  }
}

/** The value of a sum that must be a length in inches. */
export function workLength(sum: Sum, asked: Asked): Length {
  const worked = workSum(sum, asked);
  if (worked.kind === "length" || worked.bare) return worked.value;
  throw new Fault(problem("wants-a-length", sum.at, { is: kindWords[worked.kind] }));
}
