// `shopleaf differ`: two recipes, or what was kept when they were printed -> what moved from the first to the second, as JSON.
import { changesBetween } from "../../leaves/revised/changes.ts";
import { printJson, tellProblems } from "../print-json.ts";
import { summaryFor } from "../summary-for.ts";
import { WrongCall } from "../wrong-call.ts";
import { parseOptions } from "./options.ts";

export async function differ(words: readonly string[]): Promise<number> {
  const { given, alone } = parseOptions(words, ["content"]);
  const [first, second, ...more] = alone;
  if (first === undefined || second === undefined || more.length > 0)
    throw new WrongCall(`differ takes two recipes or printed files, not ${alone.length}`);
  const [before, after] = [summaryFor(first, given.content), summaryFor(second, given.content)];
  if (!before.summary || !after.summary) return tellProblems([...before.problems, ...after.problems]);
  printJson({ changes: changesBetween(before.summary, after.summary) });
  return tellProblems([...before.problems, ...after.problems]);
}
