// Problems that only repeat another one -> without them.
import type { Problem } from "../problems/problem.ts";

/** A name that can't be one is told where it is given; wherever else it is used it goes wrong for the same reason. */
export function withoutEchoes(problems: readonly Problem[]): Problem[] {
  const refused = new Set(problems.flatMap((p) => (p.code === "reserved-name" && p.found ? [p.found] : [])));
  return problems.filter((p) => p.code !== "form-broken" || p.found === undefined || !refused.has(p.found));
}
