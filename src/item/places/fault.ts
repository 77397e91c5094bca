// A place that can't be worked out: a problem thrown to whoever asked for it, and kept for the maker.
import type { Problem } from "../../problems/problem.ts";

/** Carries a problem out of a computation, with others met on the way; caught in this folder, never seen outside it. */
export class Fault extends Error {
  readonly problem: Problem;
  readonly others: readonly Problem[];
  constructor(problem: Problem, others: readonly Problem[] = []) {
    super(problem.says);
    this.problem = problem;
    this.others = others;
  }
}

/** The value, or the fault that stands in its way. Anything but a Fault goes on. */
export function orFault<T>(compute: () => T): T | Fault {
  try {
    return compute();
  } catch (error) {
    if (error instanceof Fault) return error;
    throw error;
  }
}

/** The value, or undefined with the problem added to the list. */
export function orProblem<T>(problems: Problem[], compute: () => T): T | undefined {
  const value = orFault(compute);
  if (!(value instanceof Fault)) return value;
  // One cause is met again by everything that depends on it.
  for (const each of [value.problem, ...value.others]) if (!problems.includes(each)) problems.push(each);
  return undefined;
}
