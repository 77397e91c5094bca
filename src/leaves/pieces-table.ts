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

function workOn(piece: Piece): string {
  const holes = piece.cuts.filter((cut) => cut.kind === "hole").length;
  const boxes = piece.cuts.flatMap((cut) => (cut.kind === "box" ? [cut.name] : []));
  const work = [
    piece.ripped ? "rip" : "",
    piece.planed ? "plane" : "",
    "crosscut",
    holes === 0 ? "" : holes === 1 ? "1 hole" : `${holes} holes`,
    ...[...new Set(boxes)].map((name) => `${boxes.filter((one) => one === name).length} × ${name}`),
  ];
  return work.filter((one) => one !== "").join(", ");
}
