// How thick a rope is -> how wide its hole is drilled.
import { type Exact, exact } from "../units/length.ts";
import type { Sum } from "./recipe.ts";
import type { Form, Scan } from "./scan.ts";
import { readSum } from "./sum.ts";

/** A hole is drilled this much wider than its rope (inches); common practice, no source. */
export const ropeHolePlay: Exact = exact(1, 8);

export const ropeHoleForm: Form = {
  form: "hole for D rope, SPOT, SPOT",
  means: "A hole 1/8 wider than a rope of that thickness, right through.",
  example: "hole for 1/4 rope, 15/16 from both ends and both edges",
};

/** `for 1/4 rope` as the width of its hole. */
export function readRopeHole(scan: Scan): Sum {
  scan.must("for");
  const at = scan.here;
  const rope = readSum(scan);
  scan.must("rope");
  return { kind: "plus", at, left: rope, right: { kind: "length", at, value: ropeHolePlay, bare: true } };
}
