// All saw cuts of a plan -> the order in which the saws are set, each setting with the cuts made before the next: few changes.
import { inches } from "../units/length.ts";
import type { SawCut, SawSetting } from "./saw-cuts.ts";

export type SawRun = SawSetting & { readonly cuts: readonly SawCut[] };

/**
 * Every cut comes after those that it waits for. Of the settings that something waits for, one that can be finished for good is
 * taken first, and of these one on the saw that is running, then the smallest; tried from both saws, the fewer runs stand. Mitres are
 * told without their hand: the board is turned over, not the saw. A fresh end needs no stop, so it is made whatever the stop stands at.
 */
export function sawRunsOf(cuts: readonly SawCut[]): SawRun[] {
  const [rip, crosscut] = [runsFrom(cuts, "rip"), runsFrom(cuts, "crosscut")];
  return crosscut.length < rip.length ? crosscut : rip;
}

const anglesOf = ({ saw, mitre, bevel }: SawSetting): string =>
  [saw, Math.abs(mitre).toFixed(3), bevel.toFixed(3)].join(" ");
const keyOf = (setting: SawSetting): string =>
  `${setting.size === undefined ? "" : inches(setting.size).toFixed(6)} ${anglesOf(setting)}`;

function runsFrom(cuts: readonly SawCut[], first: SawSetting["saw"]): SawRun[] {
  const done = new Set<string>();
  const idOf = (board: number, number: number): string => `${board}:${number}`;
  const bySetting = new Map<string, SawCut[]>();
  for (const cut of cuts) bySetting.set(keyOf(cut), [...(bySetting.get(keyOf(cut)) ?? []), cut]);
  const runs: SawRun[] = [];
  let running: SawSetting["saw"] = first;
  while (bySetting.size > 0) {
    const choices = [...bySetting].flatMap(([key, waiting]) => {
      const [setting] = waiting;
      if (setting === undefined) return [];
      const ends = setting.size === undefined ? [] : (bySetting.get(keyOf({ ...setting, size: undefined })) ?? []);
      const run = cutNow([...waiting, ...ends].sort(asTheyLie), done, idOf);
      const own = run.filter(({ size }) => (size === undefined) === (setting.size === undefined)).length;
      return own > 0 ? [{ key, setting, run, own, whole: own === waiting.length }] : [];
    });
    const [chosen] = choices.sort(
      (a, b) =>
        Number(b.whole) - Number(a.whole) ||
        Number(isSlantedEnd(a.setting)) - Number(isSlantedEnd(b.setting)) ||
        Number(b.setting.saw === running) - Number(a.setting.saw === running) ||
        (a.whole ? 0 : b.own - a.own) ||
        sizeOf(a.setting) - sizeOf(b.setting) ||
        (a.key < b.key ? -1 : 1),
    );
    if (!chosen) throw new Error("cuts wait for each other");
    const { saw, size, mitre, bevel } = chosen.setting;
    runs.push({ ...{ saw, mitre: Math.abs(mitre), bevel, cuts: chosen.run }, ...(size === undefined ? {} : { size }) });
    for (const cut of chosen.run) done.add(idOf(cut.board, cut.number));
    for (const key of new Set(chosen.run.map(keyOf))) {
      const left = (bySetting.get(key) ?? []).filter((cut) => !done.has(idOf(cut.board, cut.number)));
      if (left.length > 0) bySetting.set(key, left);
      else bySetting.delete(key);
    }
    running = saw;
  }
  return runs;
}

/** A fresh end at an angle waits for a stop that is set at the same angle. */
const isSlantedEnd = ({ size, mitre, bevel }: SawSetting): boolean =>
  size === undefined && (mitre !== 0 || bevel !== 0);

const sizeOf = ({ size }: SawSetting): number => (size === undefined ? 0 : inches(size));

/** Board after board, each in its own order. */
const asTheyLie = (a: SawCut, b: SawCut): number => a.board - b.board || a.number - b.number;

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
