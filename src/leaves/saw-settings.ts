// Saw runs -> the table of settings, ticked off one by one, and words for cuts that would leave too little in the hand.
import { formatDegrees, isSlanted } from "../drawing/end-angle.ts";
import type { ShortHold } from "../findings/hand-safety.ts";
import type { SawCut } from "../findings/saw-cuts.ts";
import type { SawRun } from "../findings/saw-runs.ts";
import type { Length } from "../units/length.ts";
import type { Table } from "./leaf.ts";

type Said = (length: Length) => string;

export const settingsTable = (runs: readonly SawRun[], length: Said): Table => ({
  caption: "Saw settings, in order",
  heads: ["Saw", "Set to", "Cuts", "Gives", "Where"],
  rows: runs.map((run) => [
    run.saw === "rip" ? "Rip" : "Crosscut",
    settingWords(run, length),
    String(run.cuts.length),
    givesWords(run),
    whereWords(run.cuts),
  ]),
});

/** `stop 26 5/8, mitre 14°`. */
function settingWords({ saw, size, mitre, bevel }: SawRun, length: Said): string {
  const angles = [
    ...(isSlanted(mitre) ? [`mitre ${formatDegrees(mitre)}`] : []),
    ...(isSlanted(bevel) ? [`blade tilted ${formatDegrees(bevel)}`] : []),
  ];
  const first = size === undefined ? "no stop" : `${saw === "rip" ? "fence" : "stop"} ${length(size)}`;
  return [first, ...angles].join(", ");
}

function givesWords({ saw, cuts }: SawRun): string {
  const counts = new Map<string, number>();
  for (const { mark, size } of cuts) {
    const name = mark ?? (size === undefined ? "fresh ends" : saw === "rip" ? "strips" : "lengths");
    counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  return [...counts]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, count]) => `${count} × ${name}`)
    .join(", ");
}

/** `board 1: 2–4, 7; boards 2–5: 2`: boards with the same cuts together. */
export function whereWords(cuts: readonly SawCut[]): string {
  const boards = new Map<string, number[]>();
  for (const board of [...new Set(cuts.map((cut) => cut.board))].sort((a, b) => a - b)) {
    const numbers = ranges(cuts.filter((cut) => cut.board === board).map(({ number }) => number)).join(", ");
    boards.set(numbers, [...(boards.get(numbers) ?? []), board]);
  }
  return [...boards].map(([numbers, own]) => `${boardWords(own)}: ${numbers}`).join("; ");
}

/** `board 3`, `boards 3–6, 9`. */
export const boardWords = (boards: readonly number[]): string =>
  `${boards.length === 1 ? "board" : "boards"} ${ranges(boards).join(", ")}`;

function ranges(numbers: readonly number[]): string[] {
  const found: [first: number, last: number][] = [];
  for (const number of [...numbers].sort((a, b) => a - b)) {
    const last = found.at(-1);
    if (last && number === last[1] + 1) last[1] = number;
    else found.push([number, number]);
  }
  return found.map(([first, last]) =>
    first === last ? `${first}` : last === first + 1 ? `${first}, ${last}` : `${first}–${last}`,
  );
}

export const turnOver =
  "Where a slanted cut leans the other way than the one before, turn the board over and leave the saw as it is set.";

export const safeOrder =
  "Cut in the order of the small numbers and hold the longer part alone: the shorter one, be it against the stop or off the end, is never held, and lies where it falls until the blade stands still.";

/** What to do instead is common practice, no source. */
export const holdWords = ({ saw, inHand, limit, cuts }: ShortHold, length: Said): string =>
  saw === "rip"
    ? `Too short to push along the fence by hand (${length(inHand)}; the shop's limit is ${length(limit)}): ${whereWords(cuts)}. Fix the piece to a longer carrier board, or saw it by hand in the vice.`
    : `Too little would stay in the hand (${length(inHand)}; the shop's limit is ${length(limit)}): ${whereWords(cuts)}. Clamp the piece to fence and stop, both hands away, and wait until the blade stands still; or saw it by hand in the vice.`;
