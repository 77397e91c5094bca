// Content -> what can't be put on paper: letters that the font has no shape for, and plans to be sold without terms.
import { type Problem, problem } from "../problems/problem.ts";
import { textUnder } from "../problems/yaml-tree.ts";
import { readFrontMatter } from "../recipe/front-matter.ts";
import type { Shop } from "../yard/yard.ts";
import type { SourceFile } from "./content-files.ts";
import { Letters } from "./pdf/lacking-letters.ts";
import { fontFiles } from "./pdf/page-setter.ts";

let letters: Letters | undefined;

/** The first on each line. What stands behind a # in YAML is for the maker alone; below the front-matter it is a heading. */
export function checkLetters(files: readonly SourceFile[]): Problem[] {
  letters ??= new Letters(fontFiles[0] ?? "");
  const font = letters;
  return files.flatMap(({ file, text }) => {
    const lines = text.split("\n");
    const body = file.endsWith(".md") ? lines.indexOf("---", 1) : lines.length;
    return lines.flatMap((line, i) => {
      const all = [...line];
      const column = all.findIndex((letter) => !/\s/.test(letter) && !font.has(letter));
      const isRemark = i < body && /(^|\s)#/.test(all.slice(0, column).join(""));
      if (column < 0 || isRemark) return [];
      return [problem("letter-not-on-paper", { file, line: i + 1, column: column + 1 }, { found: all[column] ?? "" })];
    });
  });
}

/** One for each recipe that sells a plan, where the shop has no word on plans. */
export function checkPlans(files: readonly SourceFile[], shop: Shop | undefined): Problem[] {
  if (!shop || shop.plans) return [];
  return files.flatMap(({ file, text }) => {
    const plan = textUnder(readFrontMatter(file, text).tree, "plan");
    return plan?.text === "yes" ? [problem("plan-without-terms", plan.at, {})] : [];
  });
}
