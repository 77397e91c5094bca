// A recipe's file, or one that `printed` wrote -> the summary that revisions are compared by, or every problem.
import { formsOf } from "../item/variants/forms.ts";
import { type Summary, summaryOf } from "../leaves/revised/summary.ts";
import { parseSummary } from "../leaves/revised/summary-schema.ts";
import { sheetSetOf } from "../leaves/sheets/sheet-set-of.ts";
import { type Problem, problem } from "../problems/problem.ts";
import { isProblem, readSource, startOf } from "./content-files.ts";
import { pricingsFor } from "./pricings.ts";
import { workRecipe } from "./work-recipe.ts";
import { yardFor } from "./yard-for.ts";

export type Summarised = { readonly summary?: Summary; readonly problems: readonly Problem[] };

/** A file that is no summary, though its name says so. */
export const notPrinted = (file: string): Problem =>
  problem("bad-value", startOf(file), {
    key: "printed",
    found: file,
    expected: "a file that shopleaf printed wrote; let it write it again",
  });

export function summaryFor(path: string, contentFolder: string | undefined): Summarised {
  const source = readSource(path);
  if (isProblem(source)) return { problems: [source] };
  if (path.endsWith(".json")) {
    const summary = parseSummary(source.text);
    return summary ? { summary, problems: [] } : { problems: [notPrinted(source.file)] };
  }
  const yard = yardFor(path, contentFolder);
  const { items, problems, hash } = workRecipe(source, yard);
  const [standard, ...others] = items;
  const all = [...yard.problems, ...problems];
  if (!standard || !yard.shop || all.length > 0) return { problems: all };
  const forms = formsOf([standard, ...others]);
  const pricings = pricingsFor(items, yard.shop, hash);
  return { summary: summaryOf(standard, sheetSetOf(forms[0], yard.shop, forms, pricings), pricings), problems: all };
}
