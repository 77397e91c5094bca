// The cuts of a plan and the shop's limits -> those that would leave too short a piece in the hand, and how each is made instead.
import { compareLengths, type Length } from "../units/length.ts";
import type { Saws } from "../yard/saws.ts";
import type { SawCut } from "./saw-cuts.ts";

export type ShortHold = {
  readonly saw: SawCut["saw"];
  /** The least that would be held of all these, and the limit it is under. */
  readonly inHand: Length;
  readonly limit: Length;
  readonly cuts: readonly SawCut[];
};

/** One entry for each saw, or none: a safe order leaves at least the limit in the hand behind every cut. */
export function shortHolds(cuts: readonly SawCut[], { shortestCrosscut, shortestRip }: Saws): ShortHold[] {
  const limits = { rip: shortestRip, crosscut: shortestCrosscut };
  return (["rip", "crosscut"] as const).flatMap((saw): ShortHold[] => {
    const limit = limits[saw];
    const short = cuts.filter((cut) => cut.saw === saw && compareLengths(cut.inHand, limit) < 0);
    const [first, ...others] = short.map(({ inHand }) => inHand);
    if (first === undefined) return [];
    const inHand = others.reduce<Length>((a, b) => (compareLengths(b, a) < 0 ? b : a), first);
    return [{ saw, inHand, limit, cuts: short }];
  });
}
