// `shopleaf printed`: the sheets of a recipe were printed -> what they say is kept, so that later ones tell what moved since.
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { findContentFolder, startOf } from "../content-files.ts";
import { tellProblems } from "../print-json.ts";
import { summaryFor } from "../summary-for.ts";
import { WrongCall } from "../wrong-call.ts";
import { parseOptions } from "./options.ts";

/** Prints the path of the file, in the folder `printed` of the content; what was kept of it before is written over. */
export async function printed(words: readonly string[]): Promise<number> {
  const { given, alone } = parseOptions(words, ["content"]);
  const [path, ...more] = alone;
  if (path === undefined || more.length > 0) throw new WrongCall(`printed takes one recipe, not ${alone.length}`);
  const { summary, problems } = summaryFor(path, given.content);
  if (!summary || problems.length > 0) return tellProblems(problems);
  const folder = join(given.content ?? findContentFolder(path) ?? "content", "printed");
  mkdirSync(folder, { recursive: true });
  const file = join(folder, `${summary.slug}.json`);
  writeFileSync(file, `${JSON.stringify(summary, null, 2)}\n`);
  process.stdout.write(`${startOf(file).file}\n`);
  return 0;
}
