// Pieces and a board -> the ways of sawing them from it, strip by strip.
import type { Order } from "./cut-problem.ts";
import type { Laid, Strip } from "./fill.ts";
import type { Job, Kind, Stock } from "./job.ts";
import type { Work } from "./knapsack.ts";

/** A square piece as it lies on the board. */
export type Blank = { readonly kind: number; readonly quarter: boolean };

type Side = { readonly blank: Blank; readonly along: number; readonly across: number };

/**
 * All sharings of these pieces into strips of one board, the widest piece of a strip first and alike ones not told apart; `visit` says
 * whether to go on. Ends where `work` runs out.
 */
export function everyLaying(
  job: Job,
  stock: Stock,
  order: Order,
  blanks: readonly Blank[],
  work: Work,
  visit: (strips: Strip[]) => boolean,
): void {
  const rip = order === "rip";
  const [run, room] = rip ? [stock.length, stock.width] : [stock.width, stock.length];
  const sides = blanks
    .map((blank): Side => {
      const { length, width } = job.kinds[blank.kind] as Kind;
      const [along, across] = rip === blank.quarter ? [width, length] : [length, width];
      return { blank, along, across };
    })
    .sort((a, b) => b.across - a.across || b.along - a.along || a.blank.kind - b.blank.kind);
  const strips: { readonly size: number; used: number; readonly sides: Side[] }[] = [];
  const place = (i: number, from: number, taken: number): boolean => {
    if (--work.left < 0) return false;
    const side = sides[i];
    if (side === undefined) {
      return visit(strips.map((strip) => ({ size: strip.size, pieces: strip.sides.map(({ blank }) => laid(blank)) })));
    }
    const alike = (s: number): number => {
      const next = sides[i + 1];
      return next && next.blank.kind === side.blank.kind && next.blank.quarter === side.blank.quarter ? s : 0;
    };
    for (let s = from; s < strips.length; s++) {
      const strip = strips[s] as (typeof strips)[number];
      if (strip.used + side.along > run) continue;
      strip.used += side.along + job.kerf;
      strip.sides.push(side);
      const on = place(i + 1, alike(s), taken);
      strip.sides.pop();
      strip.used -= side.along + job.kerf;
      if (!on) return false;
    }
    if (side.along > run || taken + side.across > room) return true;
    strips.push({ size: side.across, used: side.along + job.kerf, sides: [side] });
    const on = place(i + 1, alike(strips.length - 1), taken + side.across + job.kerf);
    strips.pop();
    return on;
  };
  place(0, 0, 0);
}

const laid = ({ kind, quarter }: Blank): Laid => ({
  ...{ kind, turned: false, flipped: false, at: 0 },
  ...(quarter ? { quarter } : {}),
});
