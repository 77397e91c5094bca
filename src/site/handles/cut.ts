// `shopleaf cut`: a cutting problem's file -> the plan with its proof as JSON.
import { checkPlan } from "../../cutting/check-plan.ts";
import { planCuts } from "../../cutting/plan-cuts.ts";
import { readCutProblem } from "../../cutting/read-problem.ts";
import { problem } from "../../problems/problem.ts";
import { formatMoney } from "../../units/money.ts";
import { isProblem, readSource, startOf } from "../content-files.ts";
import { printJson, tellProblems } from "../print-json.ts";
import { WrongCall } from "../wrong-call.ts";
import { parseOptions } from "./options.ts";

export async function cut(words: readonly string[]): Promise<number> {
  const { alone } = parseOptions(words, []);
  const [path, ...more] = alone;
  if (path === undefined || more.length > 0) throw new WrongCall(`cut takes one problem file, not ${alone.length}`);
  const source = readSource(path);
  if (isProblem(source)) return tellProblems([source]);
  const told = (faults: readonly string[]): 0 | 1 =>
    tellProblems(faults.map((fault) => problem("cut-fault", startOf(path), { fault })));
  let json: unknown;
  try {
    json = JSON.parse(source.text);
  } catch (error) {
    return told([`this is not JSON: ${(error as SyntaxError).message}`]);
  }
  const read = readCutProblem(json);
  if (read.problem === undefined) return told(read.faults);
  const started = performance.now();
  const plan = planCuts(read.problem);
  if (plan === undefined) return told(["these boards are too few for all the pieces"]);
  const wrong = checkPlan(read.problem, plan);
  if (wrong.length > 0) throw new Error(`a cutting plan does not add up: ${wrong.join("; ")}`);
  printJson({
    cost: formatMoney(plan.cost),
    lowerBound: formatMoney(plan.lowerBound),
    proven: plan.proven,
    fewest: plan.fewest,
    settings: plan.settings,
    ...(plan.offcut === undefined ? {} : { offcut: plan.offcut }),
    ms: Math.round(performance.now() - started),
    boards: plan.boards,
  });
  return 0;
}
