// Worked-out item -> how many clamps it takes and how far they open.
import type { Item, Piece } from "../../item/item.ts";
import { inches } from "../../units/length.ts";
import type { Edition } from "../edition.ts";

/** A glued face takes a clamp for every 6 in at both edges, a screwed corner two. Common practice, no source. */
const between = 6;
/** The bench that is clamped with the work, inches. */
const bench = 2;

const layers = ({ blanks }: Piece): number => blanks?.reduce((sum, blank) => sum + blank.count, 0) ?? 1;

/** One line for each sort; empty where nothing is clamped. */
export function clampWords(item: Item, { length }: Pick<Edition, "length">): string[] {
  const glued = item.pieces.filter((piece) => layers(piece) > 1);
  const thickest = Math.max(0, ...item.pieces.map(({ thickness }) => inches(thickness)));
  const screwed = item.joins.some(({ driven }) => driven.length > 0);
  return [
    ...glued.map((piece) => {
      const count = 2 * (Math.ceil(inches(piece.length) / between) + 1);
      return `${count} that open to ${length(inches(piece.thickness) + bench)}, to glue up ${piece.mark}`;
    }),
    ...(screwed
      ? [`2 that open to ${length(2 * thickest + bench)}, to hold a joint to the bench while it is screwed`]
      : []),
  ];
}
