// An item and its boards -> the floor that is needed to cut it and to put it together.
import { inches } from "../../units/length.ts";
import { threeSizes } from "../edition.ts";
import type { SheetSource } from "./sheet-source.ts";

/** Room to walk round the work, inches. Common practice, no source. */
const walk = 24;

/** A board that is ripped needs its own length before the blade and behind it; crosscut, its length beside the saw. */
export function floorWords({ item, shop, bought: [{ list }], edition }: SheetSource): string {
  const longest = (all: typeof list.boards) =>
    [...all].sort((a, b) => inches(b.stock.length) - inches(a.stock.length))[0]?.stock.length;
  const ripped = longest(
    list.boards.filter(({ board }) => item.pieces.some((piece) => piece.ripped && piece.board.name === board.name)),
  );
  const crosscut = longest(list.boards);
  const { width, depth } = item.overall;
  const room = threeSizes([inches(width) + 2 * walk, inches(depth) + 2 * walk], shop.division);
  return [
    `${room} to put it together and walk round it`,
    ripped === undefined
      ? `${edition.length(crosscut ?? 0)} to each side of the crosscut saw`
      : `${edition.length(ripped)} in front of the table saw's blade and as much behind it`,
  ].join("; ");
}
