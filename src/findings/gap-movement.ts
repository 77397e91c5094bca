// Worked-out item -> how its narrow gaps open and close outdoors: as made, at their driest and at their wettest.
import type { Item } from "../item/item.ts";
import { inches } from "../units/length.ts";
import { driest, wettest } from "./movement.ts";
import { narrowGaps } from "./use.ts";

/** Inches. At its wettest a gap is 0 where the boards would meet. */
export type GapMovement = { readonly made: number; readonly driest: number; readonly wettest: number };

/**
 * Between two boards of one row each gap takes up what one board's width moves: dD = D C (M2 - M1), Wood Handbook equation 13-1,
 * tangential, from the moisture that the boards were bought at. Every different gap once, the narrowest first.
 */
export function gapMovements(item: Item): GapMovement[] {
  const found = new Map<string, GapMovement>();
  for (const { gap, group, panelKind } of narrowGaps(item)) {
    const member = item.members.find((one) => one.group === group && one.panelKind === panelKind);
    if (!member) continue;
    const { species, moisture } = member.board;
    const perPoint = inches(member.width) * species.tangential;
    const made = inches(gap);
    const one = {
      made,
      driest: made + perPoint * (moisture - driest.valueOf()),
      wettest: Math.max(0, made - perPoint * (wettest.valueOf() - moisture)),
    };
    found.set(
      Object.values(one)
        .map((value) => value.toFixed(4))
        .join(" "),
      one,
    );
  }
  return [...found.values()].sort((a, b) => a.made - b.made);
}
