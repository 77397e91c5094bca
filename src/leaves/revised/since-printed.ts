// A set of sheets and what was printed of it before -> the set with what moved since then on its cover.
import type { Division } from "../../units/division.ts";
import type { SheetSet } from "../sheet-set.ts";
import { heading, listOf, together, words } from "../sheets/blocks.ts";
import { changesBetween, changeWords } from "./changes.ts";
import type { Summary } from "./summary.ts";

/** One line for each thing that moved; empty where the printed sheets still hold. */
export const linesSince = (printed: Summary, now: Summary, division: Division): readonly string[] =>
  changeWords(changesBetween(printed, now), division);

export function withChanges(set: SheetSet, printed: Summary, lines: readonly string[]): SheetSet {
  const [cover, ...others] = set.sheets;
  const since = [printed.revision, printed.date].filter((text) => text !== "").join(" of ") || "the last print";
  const told = lines.length === 0 ? words("Nothing moved: the printed sheets still hold.") : listOf(lines);
  const blocks = [...cover.blocks, ...together([heading(`Since it was printed, ${since}`), ...told])];
  return { ...set, sheets: [{ ...cover, blocks }, ...others] };
}
