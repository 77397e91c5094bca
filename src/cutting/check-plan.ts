// A problem and a plan -> everything that is wrong with the plan, added up again from the two alone.
import { exact, zero } from "../units/length.ts";
import { checkBoard } from "./check-board.ts";
import type { CutPlan, CutProblem } from "./cut-problem.ts";

/** Faults in plain words; none where the plan holds. Shares nothing with the planner. Positions may be off by 1e-6 of the problem's unit. */
export function checkPlan(problem: CutProblem, plan: CutPlan): string[] {
  return [
    ...checkCounts(problem, plan),
    ...checkMoney(problem, plan),
    ...checkGroups(problem, plan),
    ...plan.boards.flatMap((planned, i) => {
      const name = `board ${i + 1} (${planned.id})`;
      const board = problem.boards.find(({ id }) => id === planned.id);
      if (board === undefined) return [`${name} is not among the boards`];
      if (planned.pieces.length === 0) return [`${name} gives nothing`];
      return checkBoard(problem, planned, board).map((fault) => `${name}: ${fault}`);
    }),
  ];
}

function checkCounts({ pieces, boards }: CutProblem, plan: CutPlan): string[] {
  const faults: string[] = [];
  const cut = plan.boards.flatMap((board) => board.pieces.map(({ mark }) => mark));
  for (const mark of new Set([...cut, ...pieces.map((piece) => piece.mark)])) {
    const wanted = pieces.find((piece) => piece.mark === mark)?.count ?? 0;
    const got = cut.filter((each) => each === mark).length;
    if (got !== wanted) faults.push(`piece "${mark}" is cut ${got} times, wanted ${wanted}`);
  }
  for (const id of new Set(plan.boards.map((board) => board.id))) {
    const used = plan.boards.filter((board) => board.id === id).length;
    const have = boards.find((board) => board.id === id)?.have ?? Number.POSITIVE_INFINITY;
    if (used > have) faults.push(`board "${id}" is used ${used} times, there are ${have}`);
  }
  return faults;
}

function checkMoney({ boards }: CutProblem, plan: CutPlan): string[] {
  const cost = plan.boards.reduce(
    (sum, { id }) => sum.add(boards.find((board) => board.id === id)?.cost ?? exact(0)),
    zero,
  );
  const faults: string[] = [];
  if (!cost.equals(plan.cost)) faults.push(`the boards cost ${cost.valueOf()}, the plan says ${plan.cost.valueOf()}`);
  if (plan.lowerBound.compare(plan.cost) > 0) faults.push("the bound is above the cost");
  if (plan.proven !== plan.lowerBound.equals(plan.cost))
    faults.push("proven is said where bound and cost differ, or not where they agree");
  return faults;
}

/** All of a group come from one board. */
function checkGroups({ pieces }: CutProblem, plan: CutPlan): string[] {
  const groups = [...new Set(pieces.flatMap(({ together }) => together ?? []))];
  return groups.flatMap((group) => {
    const marks = pieces.filter(({ together }) => together === group).map(({ mark }) => mark);
    const from = plan.boards.filter((board) => board.pieces.some(({ mark }) => marks.includes(mark)));
    return from.length > 1 ? [`the pieces together in "${group}" come from ${from.length} boards`] : [];
  });
}
