// Cutting sets -> a table: how many are proven, how soon, that none is proven wrongly, and what plans save against habit.
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { checkPlan } from "../../src/cutting/check-plan.ts";
import type { CutProblem } from "../../src/cutting/cut-problem.ts";
import { planCuts } from "../../src/cutting/plan-cuts.ts";
import { researchProblem, researchRows } from "../cutting/research-problem.ts";
import { type Habits, habitsOf } from "./habits.ts";
import { shopProblems } from "./shop-problems.ts";

/** Shares proven within 1 s and 10 s that are aimed at, in percent of processor time. */
const goals: Readonly<Record<string, readonly [number, number]>> = {
  falkenauer_u: [98.8, 100],
  falkenauer_t: [77.5, 100],
  scholl_1: [100, 100],
  scholl_2: [97.3, 99.8],
  scholl_3: [0, 100],
  schwerin_1: [100, 100],
  schwerin_2: [100, 100],
  waescher: [88, 100],
  hard28: [18, 100],
  random_dim: [95.8, 99.5],
  vsbpp_monaci: [96, 100],
  vsbpp_hs: [71.5, 91.5],
  two_a: [79, 91],
  two_gcut: [85, 92],
  two_class: [81, 92],
  two_mb: [38, 40],
  shop_1d: [99, 99],
  shop_rip: [60, 85],
  shop_mitre: [90, 98],
  shop_made: [99, 99],
};

type Row = { readonly problem: CutProblem; readonly name: string; readonly best: number | null };

/** Words: names of sets, and "all" or how many of each, spread evenly; 2 where nothing is said. */
const asked = process.argv.slice(2).filter((word) => word !== "cutting");
const number = asked.find((word) => /^\d+$/.test(word));
const names = asked.filter((word) => word !== "all" && word !== number);
const most = asked.includes("all") ? Number.POSITIVE_INFINITY : number ? Number(number) : names.length > 0 ? 1e9 : 2;

const spread = <T>(rows: readonly T[]): T[] =>
  rows.length <= most
    ? [...rows]
    : Array.from({ length: most }, (_, i) => rows[Math.floor((i * rows.length) / most)] as T);

const files = readdirSync(join(import.meta.dirname, "../reference/cutting"))
  .filter((name) => name.endsWith(".json"))
  .map((name) => name.replace(".json", ""));
const sets: readonly (readonly [string, () => Row[]])[] = [
  ...files.map((set): readonly [string, () => Row[]] => [
    set,
    () =>
      spread(researchRows(set)).map((row) => ({
        problem: researchProblem(set, row),
        name: row.name,
        best: row.best,
      })),
  ]),
  ["shop_made", () => spread(shopProblems(100, 2026)).map((problem) => ({ problem, name: problem.name, best: null }))],
];

let wrong = 0;
const paid = { plans: 0, longest: 0, shortened: 0, bestLength: 0 };
process.stdout.write(
  `${"set".padEnd(14)}${"n".padStart(4)}   ${"1 s".padStart(6)} (goal)   ${"10 s".padStart(6)} (goal)   median      most\n`,
);
for (const [set, read] of sets.filter(([name]) => names.length === 0 || names.includes(name))) {
  const rows = read();
  const times: number[] = [];
  let [soon, later] = [0, 0];
  for (const { problem, name, best } of rows) {
    const before = process.cpuUsage();
    const plan = planCuts(problem);
    const { user, system } = process.cpuUsage(before);
    const milliseconds = (user + system) / 1000;
    times.push(milliseconds);
    const faults = plan === undefined ? ["no plan"] : checkPlan(problem, plan);
    const cents = Math.round((plan?.cost.valueOf() ?? 0) * 100);
    // Shop problems may do better than what is noted: the order is chosen per board.
    const better = best !== null && cents < best && !set.startsWith("shop_");
    const above = best !== null && plan?.proven === true && cents > best;
    if (faults.length > 0 || better || above) {
      wrong++;
      process.stdout.write(`${set} ${name}: WRONG ${faults.join("; ")} ${cents}, best ${best}\n`);
    }
    if (plan?.proven && milliseconds <= 1000) soon++;
    if (plan?.proven && milliseconds <= 10_000) later++;
    if (plan && (set === "shop_1d" || set === "shop_made")) {
      const habits = habitsOf(problem);
      paid.plans += plan.cost.valueOf();
      for (const habit of Object.keys(habits) as (keyof Habits)[]) paid[habit] += habits[habit];
    }
  }
  times.sort((a, b) => a - b);
  const shares = [soon, later].map(
    (count, i) =>
      `${((100 * count) / rows.length).toFixed(1).padStart(6)} (${String(goals[set]?.[i] ?? "-").padStart(4)})`,
  );
  process.stdout.write(
    `${set.padEnd(14)}${String(rows.length).padStart(4)}   ${shares.join("   ")}   ${(times[times.length >> 1] ?? 0).toFixed(0).padStart(6)} ms ${(times.at(-1) ?? 0).toFixed(0).padStart(7)} ms\n`,
  );
}
if (paid.plans > 0) {
  const saved = (habit: number): string => `${((100 * (habit - paid.plans)) / habit).toFixed(1)} %`;
  process.stdout.write(
    `shop problems of lengths cost less than first-fit on the longest board by ${saved(paid.longest)}, with boards then exchanged for shorter ones by ${saved(paid.shortened)}, on the best single length by ${saved(paid.bestLength)}\n`,
  );
}
if (wrong > 0) process.exitCode = 1;
