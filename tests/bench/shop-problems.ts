// A seed -> shop problems as a maker has them: one section in three lengths, 5 to 80 pieces in a few sizes, prices a foot that rise with length.
import type { CutProblem } from "../../src/cutting/cut-problem.ts";
import { readCutProblem } from "../../src/cutting/read-problem.ts";

/** Inches on sixteenths; a kerf of 1/8. The same seed gives the same problems on every machine. */
export function shopProblems(count: number, seed: number): CutProblem[] {
  let state = seed;
  // x := 48271 x mod (2^31 - 1), Park and Miller, "Random number generators: good ones are hard to find", CACM 31 (1988), multiplier of 1993.
  const draw = (): number => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
  const pick = (least: number, most: number): number => least + Math.floor(draw() * (most - least + 1));
  return Array.from({ length: count }, (_, i) => {
    const lengths = [72, 96, 120, 144, 192].sort(() => draw() - 0.5).slice(0, 3);
    const longest = Math.max(...lengths);
    const foot = pick(40, 400);
    const rise = draw() * 0.004 - 0.001;
    const wanted = pick(5, 80);
    const pieces: { mark: string; length: number; width: number; count: number }[] = [];
    for (let left = wanted; left > 0; ) {
      const many = Math.min(left, pick(1, 8));
      left -= many;
      const length = pick(5 * 16, Math.floor(longest * 16 * (draw() < 0.3 ? 0.9 : 0.4))) / 16;
      pieces.push({ mark: `${pieces.length + 1}`, length, width: 3.5, count: many });
    }
    const { problem, faults } = readCutProblem({
      name: `made ${i + 1}`,
      kerf: 0.125,
      boards: lengths.map((length) => ({
        id: `${length}`,
        length,
        width: 3.5,
        cost: ((foot * length * (1 + rise * length)) / 1200).toFixed(2),
      })),
      pieces,
    });
    if (problem === undefined) throw new Error(faults.join("; "));
    return problem;
  });
}
