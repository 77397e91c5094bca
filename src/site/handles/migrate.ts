// `shopleaf migrate`: recipes of an older format -> the same files, rewritten step by step to the format that is read now.
import { writeFileSync } from "node:fs";
import type { Problem } from "../../problems/problem.ts";
import { textUnder } from "../../problems/yaml-tree.ts";
import { knownFormat, migrated, migrationPath } from "../../recipe/format-migrations.ts";
import { readFrontMatter } from "../../recipe/front-matter.ts";
import { checkFormat } from "../../recipe/head.ts";
import { isProblem, readSource } from "../content-files.ts";
import { printJson, tellProblems } from "../print-json.ts";
import { WrongCall } from "../wrong-call.ts";
import { parseOptions } from "./options.ts";

/** Files that are of the known format already stay as they are; one whose format leads nowhere is told. */
export async function migrate(words: readonly string[]): Promise<number> {
  const { alone } = parseOptions(words, []);
  if (alone.length === 0) throw new WrongCall("migrate takes at least one recipe");
  const problems: Problem[] = [];
  const done = alone.flatMap((path) => {
    const source = readSource(path);
    if (isProblem(source)) {
      problems.push(source);
      return [];
    }
    const format = textUnder(readFrontMatter(source.file, source.text).tree, "format");
    const from = Number(format?.text ?? knownFormat);
    const steps = migrationPath(from, knownFormat);
    if (!steps) {
      problems.push(...checkFormat(format));
      return [];
    }
    if (steps.length > 0) writeFileSync(path, migrated(source.text, steps));
    return [{ file: source.file, from, to: knownFormat, steps: steps.map(({ says }) => says) }];
  });
  printJson({ migrated: done });
  return tellProblems(problems);
}
