// A cutting problem -> the plan with its proof, piece by piece, or that the boards don't suffice.
import { cover } from "./cover.ts";
import type { CutPlan, CutProblem } from "./cut-problem.ts";
import { fillersFor } from "./fillers.ts";
import { type Job, jobOf } from "./job.ts";
import { layOut, sawnBoards } from "./lay-out.ts";
import { type Planned, planTogether } from "./plan-together.ts";
import { recreate } from "./recreate.ts";
import { sawSettings } from "./saw-settings.ts";
import { tidy } from "./tidy.ts";
import { usefulOffcut } from "./useful-offcut.ts";

/** Undefined where there are too few boards for the pieces, as far as the work budget could tell. */
export function planCuts(problem: CutProblem): CutPlan | undefined {
  const plan = planTogether(problem, planFreely);
  if (plan === undefined) return undefined;
  const offcut = usefulOffcut(problem, plan.boards);
  return {
    ...plan,
    settings: sawSettings(problem, plan.boards).length,
    ...(offcut === undefined ? {} : { offcut }),
  };
}

/** The more pieces and boards, the longer a round takes; the fewer pieces, the fewer ways there are. */
function roundsFor({ kinds, stocks, orders }: Job): number {
  const pieces = kinds.reduce((sum, { count }) => sum + count, 0);
  return Math.min(2_000, 8 * pieces * pieces, 3e6 / (pieces * stocks.length * orders.length));
}

function planFreely(problem: CutProblem): Planned | undefined {
  const job = jobOf(problem);
  const { fillers, rows } = fillersFor(job);
  const sizes = Float64Array.from(job.kinds, ({ length, width }) => (length + job.kerf) * (width + job.kerf));
  const demand = new Int32Array(rows);
  job.kinds.forEach(({ count }, kind) => {
    demand[kind] = count;
  });
  const { plan, cost, bound, fewest } = cover(
    ...([job.stocks, fillers, sizes, demand, problem.effort] as const),
    (incumbent) => {
      // Where pieces go side by side, filling board after board is far from best.
      if (rows > job.kinds.length) recreate(job, incumbent, roundsFor(job) * problem.effort);
    },
  );
  if (plan === undefined) return undefined;
  const boards = layOut(job, tidy(problem, job, sawnBoards(job, plan)));
  return {
    cost: job.coin.mul(cost),
    lowerBound: job.coin.mul(bound),
    proven: bound >= cost,
    fewest,
    boards,
  };
}
