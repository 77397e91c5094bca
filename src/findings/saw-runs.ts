// All saw cuts of a plan -> the order in which the saws are set, each setting with the cuts made before the next: few changes.
import { inches } from "../units/length.ts";
import type { SawCut, SawSetting } from "./saw-cuts.ts";

export type SawRun = SawSetting & { readonly cuts: readonly SawCut[] };

/**
 * Every cut comes after those that it waits for. Of the settings that something waits for, one that can be finished for good is
 * taken first, and of these one on the saw that is running, then the smallest; tried from both saws, the fewer runs stand.
 */
export function sawRunsOf(cuts: readonly SawCut[]): SawRun[] {
  const [rip, crosscut] = [runsFrom(cuts, "rip"), runsFrom(cuts, "crosscut")];
  return crosscut.length < rip.length ? crosscut : rip;
}

const keyOf = ({ saw, size, mitre, bevel }: SawSetting): string =>
  [saw, size === undefined ? "" : inches(size).toFixed(6), mitre.toFixed(3), bevel.toFixed(3)].join(" ");

function runsFrom(cuts: readonly SawCut[], first: SawSetting["saw"]): SawRun[] {
  const done = new Set<string>();
  const idOf = (board: number, number: number): string => `${board}:${number}`;
  const bySetting = new Map<string, SawCut[]>();
  for (const cut of cuts) bySetting.set(keyOf(cut), [...(bySetting.get(keyOf(cut)) ?? []), cut]);
  const runs: SawRun[] = [];
  let running: SawSetting["saw"] = first;
  while (bySetting.size > 0) {
    const choices = [...bySetting].flatMap(([key, waiting]) => {
      const run = cutNow(waiting, done, idOf);
      return run.length > 0 ? [{ key, run, whole: run.length === waiting.length }] : [];
    });
    const [chosen] = choices.sort(
      (a, b) =>
        Number(b.whole) - Number(a.whole) ||
        Number(b.run[0]?.saw === running) - Number(a.run[0]?.saw === running) ||
        (a.whole ? 0 : b.run.length - a.run.length) ||
        sizeOf(a.run) - sizeOf(b.run) ||
        (a.key < b.key ? -1 : 1),
    );
    const [setting] = chosen?.run ?? [];
    if (!chosen || !setting) throw new Error("cuts wait for each other");
    const { saw, size, mitre, bevel } = setting;
    runs.push({ ...{ saw, mitre, bevel, cuts: chosen.run }, ...(size === undefined ? {} : { size }) });
    for (const cut of chosen.run) done.add(idOf(cut.board, cut.number));
    const left = (bySetting.get(chosen.key) ?? []).filter((cut) => !done.has(idOf(cut.board, cut.number)));
    if (left.length > 0) bySetting.set(chosen.key, left);
    else bySetting.delete(chosen.key);
    running = saw;
  }
  return runs;
}

const sizeOf = ([cut]: readonly SawCut[]): number => (cut?.size === undefined ? 0 : inches(cut.size));

/** All cuts of one setting that can be made one after the other without another setting between. */
function cutNow(
  waiting: readonly SawCut[],
  done: ReadonlySet<string>,
  idOf: (board: number, number: number) => string,
): SawCut[] {
  const made = new Set<string>();
  const run: SawCut[] = [];
  for (const cut of waiting) {
    const free = cut.after.every((number) => done.has(idOf(cut.board, number)) || made.has(idOf(cut.board, number)));
    if (!free) continue;
    made.add(idOf(cut.board, cut.number));
    run.push(cut);
  }
  return run;
}
