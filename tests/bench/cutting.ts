// Cutting sets -> a table: how many are proven, how soon, and that none is proven wrongly. `all` takes every problem, a name one set.
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { checkPlan } from "../../src/cutting/check-plan.ts";
import { planCuts } from "../../src/cutting/plan-cuts.ts";
import { researchProblem, researchRows } from "../cutting/research-problem.ts";

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
};

const asked = process.argv.slice(2);
const sets = readdirSync(join(import.meta.dirname, "../reference/cutting"))
  .filter((name) => name.endsWith(".json"))
  .map((name) => name.replace(".json", ""))
  .filter((name) => asked.length === 0 || asked.includes("all") || asked.includes(name));
let wrong = 0;
process.stdout.write(
  `${"set".padEnd(14)}${"n".padStart(4)}   ${"1 s".padStart(6)} (goal)   ${"10 s".padStart(6)} (goal)   median      most\n`,
);
for (const set of sets) {
  const rows = asked.length > 0 ? researchRows(set) : researchRows(set).slice(0, 2);
  const times: number[] = [];
  let [soon, later] = [0, 0];
  for (const row of rows) {
    const problem = researchProblem(set, row);
    const before = process.cpuUsage();
    const plan = planCuts(problem);
    const { user, system } = process.cpuUsage(before);
    const milliseconds = (user + system) / 1000;
    times.push(milliseconds);
    const faults = plan === undefined ? ["no plan"] : checkPlan(problem, plan);
    const cents = (plan?.cost.valueOf() ?? 0) * 100;
    // Shop problems may do better than what is noted: the order is chosen per board.
    const better = row.best !== null && Math.round(cents) < row.best && !set.startsWith("shop_");
    const above = row.best !== null && plan?.proven === true && Math.round(cents) > row.best;
    if (faults.length > 0 || better || above) {
      wrong++;
      process.stdout.write(`${set} ${row.name}: WRONG ${faults.join("; ")} ${Math.round(cents)}, best ${row.best}\n`);
    }
    if (plan?.proven && milliseconds <= 1000) soon++;
    if (plan?.proven && milliseconds <= 10_000) later++;
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
if (wrong > 0) process.exitCode = 1;
