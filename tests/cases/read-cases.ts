// Case files -> broken recipes, each with the problems it must give.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/**
 * A line of five dots or more starts a case; lines of one dot part its title, the recipe and the expected problems, one a
 * line as `line:column code sentence`.
 */
export type Case = {
  readonly title: string;
  /** File and line of the title. */
  readonly from: string;
  readonly recipe: string;
  readonly expected: readonly string[];
};

export function readCases(): Case[] {
  const folder = import.meta.dirname;
  const files = readdirSync(folder).filter((name) => name.endsWith(".txt"));
  return files.sort().flatMap((name) => casesIn(name, readFileSync(join(folder, name), "utf8")));
}

function casesIn(file: string, text: string): Case[] {
  const cases: Case[] = [];
  let line = 1;
  for (const part of text.split(/^\.{5,}\n/m)) {
    if (part.trim() !== "") {
      const [title = "", recipe, expected, ...more] = part.split(/^\.\n/m);
      if (recipe === undefined || expected === undefined || more.length > 0)
        throw new Error(`${file}:${line}: a case has a title, a recipe and its problems`);
      const lines = expected.split("\n").filter((each) => each !== "");
      cases.push({ title: title.trim(), from: `${file}:${line}`, recipe, expected: lines });
    }
    line += part.split("\n").length;
  }
  return cases;
}
