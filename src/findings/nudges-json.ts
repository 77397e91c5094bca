// Nudges -> what the handle prints: each as a sentence of the trade and as figures, best first.
import type { Division } from "../units/division.ts";
import { formatLength } from "../units/format-length.ts";
import { inches } from "../units/length.ts";
import { formatMoney } from "../units/money.ts";
import type { Nudge } from "./nudges.ts";

/** `width 29 1/2 instead of 30: one board fewer, 3.25 less`. */
export function nudgeWords({ name, from, to, saves }: Nudge, division: Division): string {
  const { cost, boards } = saves;
  const count = Math.abs(boards);
  const number = `${count === 1 ? "one board" : `${count} boards`} ${boards > 0 ? "fewer" : "more"}`;
  const money = `${formatMoney(cost.abs())} ${cost.compare(0) < 0 ? "more" : "less"}`;
  const parts = [...(boards === 0 ? [] : [number]), ...(cost.equals(0) ? [] : [money])];
  return `${name} ${formatLength(to, division)} instead of ${formatLength(from, division)}: ${parts.join(", ")}`;
}

export const nudgesJson = (nudges: readonly Nudge[], division: Division) => ({
  nudges: nudges.map((nudge) => ({
    says: nudgeWords(nudge, division),
    size: nudge.name,
    line: nudge.at.line,
    from: inches(nudge.from),
    to: inches(nudge.to),
    saves: formatMoney(nudge.saves.cost),
    boardsFewer: nudge.saves.boards,
    overall: {
      width: inches(nudge.overall.width),
      depth: inches(nudge.overall.depth),
      height: inches(nudge.overall.height),
    },
  })),
});
