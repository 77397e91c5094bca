// What a shop file says under "saws" -> the shortest pieces a hand may hold, what offcuts are kept, and how far a size may be nudged.
import type { Written } from "../problems/place.ts";
import { type Exact, exact } from "../units/length.ts";
import { type Problems, parseSides, parseYardSize } from "./parse-values.ts";

export type Saws = {
  /** What the hand holds when the blade has run through, along the board: at the crosscut saw, and pushed along the rip fence. */
  readonly shortestCrosscut: Exact;
  readonly shortestRip: Exact;
  /** Offcuts from this size on are worth keeping. */
  readonly keep: { readonly length: Exact; readonly width: Exact };
  /** The most by which one size may be changed to save wood. */
  readonly nudge: Exact;
};

/** Common practice, no source. */
export const usualSaws: Saws = {
  shortestCrosscut: exact(8),
  shortestRip: exact(12),
  keep: { length: exact(12), width: exact(3, 2) },
  nudge: exact(1, 2),
};

export const sawsOf = ({ saws }: { readonly saws?: Saws }): Saws => saws ?? usualSaws;

const names = ["shortest-crosscut", "shortest-rip", "keep", "nudge"] as const;

/** A line that isn't written is the usual one; of one that can't be read a problem is told. */
export function readSaws(
  written: Readonly<Partial<Record<(typeof names)[number], Written | undefined>>>,
  problems: Problems,
): Saws {
  const size = (name: "shortest-crosscut" | "shortest-rip" | "nudge", usual: Exact): Exact => {
    const w = written[name];
    return (w && parseYardSize(name, w, problems)) ?? usual;
  };
  const [length, width] = (written.keep && parseSides("keep", written.keep, ["length", "width"], problems)) ?? [];
  return {
    shortestCrosscut: size("shortest-crosscut", usualSaws.shortestCrosscut),
    shortestRip: size("shortest-rip", usualSaws.shortestRip),
    keep: length && width ? { length, width } : usualSaws.keep,
    nudge: size("nudge", usualSaws.nudge),
  };
}
