// What a handle prints: JSON on standard output, problems on standard error.
import { printProblems } from "../problems/print.ts";
import { inReadingOrder, type Problem } from "../problems/problem.ts";

export const printJson = (value: unknown): void => {
  process.stdout.write(`${JSON.stringify(value, null, 2)}\n`);
};

/** Prints all problems in reading order and how many there are; answers with the exit code. */
export function tellProblems(problems: readonly Problem[]): 0 | 1 {
  if (problems.length === 0) return 0;
  const ordered = inReadingOrder(problems);
  process.stderr.write(`${printProblems(ordered)}\n\n${countProblems(ordered.length)}\n`);
  return 1;
}

export const countProblems = (count: number): string => (count === 1 ? "1 problem" : `${count} problems`);
