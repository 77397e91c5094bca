// An item and one of its kinds of piece -> where those pieces are in it, for somebody who has to replace one. No cut is told.
import type { Item, Piece } from "../item/item.ts";
import type { Drawing, Tone } from "./drawing.ts";
import type { Sheet } from "./sheet.ts";
import { drawStanding, standIn } from "./standing-view.ts";

const edge = 1;

/** Small: a dozen stand on one page. */
const sheet: Pick<Sheet, "width" | "height"> = { width: 60, height: 60 };

/** Coloured are those asked for; all others are pale. */
export function drawSpareView(item: Item, piece: Piece): Drawing {
  const room = { left: edge, top: edge, width: sheet.width - 2 * edge, height: sheet.height - 2 * edge };
  const { picture, placement, height } = standIn(item, room);
  const own = new Set(piece.members);
  const tone = ({ id }: { readonly id: string }): Tone => ({ kind: own.has(id) ? "added" : "there" });
  return {
    id: `${item.slug}-spare-${piece.mark.toLowerCase().replaceAll(" ", "-")}`,
    title: `${item.title}: where piece ${piece.mark} is`,
    description: `The ${item.title.toLowerCase()} from the front right, from above; ${piece.members.length === 1 ? "piece" : `the ${piece.members.length} pieces`} ${piece.mark} in yellow, all others pale.`,
    width: sheet.width,
    height: height + 2 * edge,
    pen: 0.2,
    marks: drawStanding(picture, placement, tone),
  };
}
