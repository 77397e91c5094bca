// `shopleaf lines`: a model file and a view -> its visible lines as JSON, in the file's own units.
import { readModel, tolerancesOf } from "../../geometry/model-file.ts";
import { visibleLines } from "../../geometry/scene.ts";
import { solidOf } from "../../geometry/solid.ts";
import { namedViews, type ViewName } from "../../geometry/view.ts";
import { problem } from "../../problems/problem.ts";
import { isProblem, readSource, startOf } from "../content-files.ts";
import { tellProblems } from "../print-json.ts";
import { WrongCall } from "../wrong-call.ts";
import { parseOptions } from "./options.ts";

export async function lines(words: readonly string[]): Promise<number> {
  const { given, alone } = parseOptions(words, ["view"]);
  const [path, ...more] = alone;
  if (path === undefined || more.length > 0) throw new WrongCall(`lines takes one model file, not ${alone.length}`);
  const view = parseView(given.view);
  const source = readSource(path);
  if (isProblem(source)) return tellProblems([source]);
  let json: unknown;
  try {
    json = JSON.parse(source.text);
  } catch (error) {
    return tellProblems([problem("not-json", startOf(path), { why: (error as SyntaxError).message })]);
  }
  const { model, faults } = readModel(json);
  if (faults.length > 0) return tellProblems(faults.map((fault) => problem("model-fault", startOf(path), { fault })));
  const tolerances = tolerancesOf(model);
  const parts = model.parts.map(({ id, shape }) => ({ id, solid: solidOf(shape, tolerances) }));
  process.stdout.write(`${JSON.stringify({ visible: visibleLines(parts, namedViews[view], tolerances) })}\n`);
  return 0;
}

function parseView(text: string | undefined): ViewName {
  const names = Object.keys(namedViews);
  if (text === undefined || !names.includes(text)) {
    throw new WrongCall(`--view is one of ${names.join(", ")}${text === undefined ? "" : `, not "${text}"`}`);
  }
  return text as ViewName;
}
