// A place that can't be worked out: a problem thrown to whoever asked for it, and kept for the maker.
import type { Problem } from "../../problems/problem.ts";

/** Carries one problem out of a computation; caught in this folder, never seen outside it. */
export class Fault extends Error {
  readonly problem: Problem;
  constructor(problem: Problem) {
    super(problem.says);
    this.problem = problem;
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
  if (!problems.includes(value.problem)) problems.push(value.problem);
  return undefined;
}
