// Problems -> the text a maker reads in the terminal.
import type { Place } from "./place.ts";
import type { Problem } from "./problem.ts";

export const printPlace = (at: Place): string => `${at.file}:${at.line}:${at.column}`;

/** Two to four lines: place and sentence; what was expected; the other end; what to do. No stack, no code words. */
export function printProblem(p: Problem): string {
  const lines = [`${printPlace(p.at)}  ${p.says}`];
  if (p.expected) lines.push(`    expected ${p.expected}${p.nearest ? `; did you mean "${p.nearest}"?` : ""}`);
  else if (p.nearest) lines.push(`    did you mean "${p.nearest}"?`);
  if (p.also) lines.push(`    see also ${printPlace(p.also)}`);
  lines.push(`    ${p.mend}`);
  return lines.join("\n");
}

export const printProblems = (problems: readonly Problem[]): string => problems.map(printProblem).join("\n\n");
