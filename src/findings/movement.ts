// Worked-out item -> how much its widest board swells and shrinks outdoors over a year.
import type { Item } from "../item/item.ts";
import { compareLengths, type Exact, exact, inches } from "../units/length.ts";

/** Moisture of wood outdoors in most of the USA, %: 12 on average, 9 to 14 in single pieces. Wood Handbook, table 13-1. */
export const driest = exact(9);
export const wettest = exact(14);

export type Movement = {
  /** Mark of the widest piece, and its width in inches. */
  readonly mark: string;
  readonly width: number;
  /** Inches between its driest and its wettest; a flat-sawn board, the more lively of the two. */
  readonly change: number;
  readonly from: Exact;
  readonly to: Exact;
  readonly source: string;
};

/** dD = D C (M2 - M1), Wood Handbook equation 13-1, with the tangential coefficient; undefined where there is no wood. */
export function movementOf(item: Item): Movement | undefined {
  const [widest] = [...item.pieces].sort((a, b) => compareLengths(b.width, a.width));
  if (!widest) return undefined;
  const points = wettest.sub(driest).valueOf();
  return {
    mark: widest.mark,
    width: inches(widest.width),
    change: inches(widest.width) * widest.board.species.tangential * points,
    from: driest,
    to: wettest,
    source: "Wood Handbook, equation 13-1 and table 13-1",
  };
}
