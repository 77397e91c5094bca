// A solved linear program -> whole boards, rounded a few at a time and solved again for what is left.
import { converge } from "./columns.ts";
import { costOfFill, type Fill, type Filler } from "./fill.ts";
import { greedyPlan } from "./greedy.ts";
import type { Incumbent } from "./incumbent.ts";
import type { Stock } from "./job.ts";
import type { Master, Solved } from "./master.ts";
import { Rest, type Used } from "./plan.ts";
import { profitsOf, type Range } from "./pricing.ts";

/** One dive. `turn`: at which level it takes the second best rounding instead of the best; -1 for none. Leaves the master changed. */
export function dive(
  pieces: number,
  master: Master,
  stocks: readonly Stock[],
  fillers: readonly Filler[],
  demand: Int32Array,
  ranges: readonly Range[],
  scale: number,
  root: Solved,
  turn: number,
  incumbent: Incumbent,
): void {
  const rest = new Rest(demand, ranges, pieces);
  const plan: Used[] = [];
  let spent = 0;
  let solved = root;
  for (let level = 0; !rest.done; level++) {
    if (level > 0) {
      master.want(rest.want, rest.boards);
      const hopeless = (cost: number): boolean => incumbent.total(spent + cost - 1e-6) >= incumbent.cost;
      const { solved: next } = converge(master, stocks, fillers, rest.want, rest.boards, scale, 30, (bound) =>
        hopeless(bound),
      );
      if (hopeless(next.value) || next.missing > 1e-6) return;
      solved = next;
      const last = rest.linked
        ? undefined
        : greedyPlan(stocks, fillers, profitsOf(solved.worths, scale), rest.want, rest.boards);
      if (last) incumbent.offer(last.map(({ fill }) => fill));
      if (last) incumbent.keep([...plan, ...last]);
      if (incumbent.closed) return;
    }
    const chosen = choose(master.fills, solved.uses, rest, level === turn);
    if (chosen.length === 0) return;
    for (const { fill, times } of chosen) {
      // An earlier filling of this level may already give what this one would.
      if (!rest.takes(fill)) continue;
      const used = rest.take(fill, times);
      plan.push(used);
      spent += costOfFill(stocks, fill) * used.times;
    }
  }
  incumbent.keep(plan);
}

/** All whole parts at once, or one of the filling with the greatest part; `aside`: with the second greatest. */
function choose(fills: readonly Fill[], uses: Float64Array, rest: Rest, aside: boolean): Used[] {
  const whole: Used[] = [];
  const parts: { readonly fill: Fill; readonly part: number }[] = [];
  fills.forEach((fill, i) => {
    const use = uses[i] as number;
    if (use < 1e-6 || !rest.takes(fill)) return;
    if (use >= 1 - 1e-6) whole.push({ fill, times: Math.floor(use + 1e-6) });
    else parts.push({ fill, part: use });
  });
  if (whole.length > 0 && !aside) return whole;
  parts.sort((a, b) => b.part - a.part);
  const chosen = parts[aside && parts.length > 1 ? 1 : 0];
  return chosen ? [{ fill: chosen.fill, times: 1 }] : whole;
}
