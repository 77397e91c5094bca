// Worked-out pieces -> the table they are cut by.
import type { Item, Piece } from "../item/item.ts";
import type { Length } from "../units/length.ts";
import type { Table } from "./leaf.ts";

export const piecesTable = (item: Item, length: (inches: Length) => string): Table => ({
  caption: "Pieces, sizes in inches",
  heads: ["Mark", "Number", "Length", "Width", "Thickness", "Piece", "Board", "Work"],
  rows: item.pieces.map((piece) => [
    piece.mark,
    String(piece.count),
    length(piece.length),
    length(piece.width),
    length(piece.thickness),
    piece.name,
    piece.board.name,
    workOn(piece),
  ]),
});

/** Gluing up, the outline, and what is done to corners, edges and slopes. */
function otherWork(piece: Piece): string[] {
  const boards = piece.blanks?.reduce((sum, blank) => sum + blank.count, 0) ?? 1;
  const done = { corners: "round the corners", eased: "ease the arrises", slope: "saw to the slope" } as const;
  return [
    boards > 1 ? `glue up ${boards} boards` : "",
    piece.outline === undefined ? "" : "saw to the outline",
    ...new Set(piece.cuts.flatMap((cut) => (cut.kind in done ? [done[cut.kind as keyof typeof done]] : []))),
  ];
}

function workOn(piece: Piece): string {
  const holes = piece.cuts.filter((cut) => cut.kind === "hole").length;
  const boxes = piece.cuts.flatMap((cut) => (cut.kind === "box" || cut.kind === "pocket" ? [cut.name] : []));
  const work = [
    piece.ripped ? "rip" : "",
    piece.planed ? "plane" : "",
    "crosscut",
    holes === 0 ? "" : holes === 1 ? "1 hole" : `${holes} holes`,
    ...otherWork(piece),
    ...[...new Set(boxes)].map((name) => `${boxes.filter((one) => one === name).length} × ${name}`),
  ];
  return work.filter((one) => one !== "").join(", ");
}
