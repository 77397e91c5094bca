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

/** The value, or undefined with the problem added to the list. Anything but a Fault goes on. */
export function orProblem<T>(problems: Problem[], compute: () => T): T | undefined {
  try {
    return compute();
  } catch (error) {
    if (!(error instanceof Fault)) throw error;
    problems.push(error.problem);
    return undefined;
  }
}
