// Worked-out pieces -> the table they are cut by.
import { boardFrame, edgeBevels } from "../drawing/board-frame.ts";
import { formatDegrees, isSlanted } from "../drawing/end-angle.ts";
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
    workOn(item, piece),
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

/** "mitre 14° both ends", "bevel 45° one end": what the saw is set to beside square. */
function endWork({ ends: [low, high] }: Piece): string[] {
  const cut = (word: string, one: number, other: number): string[] => {
    const [a, b] = [one, other].map((degrees) => (isSlanted(degrees) ? formatDegrees(degrees) : ""));
    if (a === b) return a === "" ? [] : [`${word} ${a} both ends`];
    return [a, b].flatMap((degrees) => (degrees === "" ? [] : [`${word} ${degrees} one end`]));
  };
  return [...cut("mitre", low.mitre, high.mitre), ...cut("bevel", low.bevel, high.bevel)];
}

/** "bevel 12° both edges", ripped with the blade tilted. */
function edgeWork(item: Item, piece: Piece): string[] {
  const member = item.members.find(({ id }) => id === piece.members[0]);
  if (!member) throw new Error(`piece ${piece.mark} has no member`);
  const [lower, upper] = edgeBevels(boardFrame(member)).map((degrees) =>
    isSlanted(degrees) ? formatDegrees(degrees) : "",
  );
  if (lower === upper) return lower === "" ? [] : [`bevel ${lower} both edges`];
  return [lower, upper].flatMap((degrees) => (degrees === "" ? [] : [`bevel ${degrees} one edge`]));
}

/** Of the one that has most of them, where they differ. */
function pocketHoles({ joins }: Item, piece: Piece): number {
  const screws = joins.flatMap(({ driven }) => driven.filter(({ fastener }) => fastener.kind === "pocket screw"));
  return Math.max(0, ...piece.members.map((id) => screws.filter(({ a }) => a === id).length));
}

function workOn(item: Item, piece: Piece): string {
  const holes = piece.cuts.filter((cut) => cut.kind === "hole").length;
  const boxes = piece.cuts.flatMap((cut) =>
    cut.kind === "box" || cut.kind === "pocket" || cut.kind === "prism" ? [cut.name] : [],
  );
  const pockets = pocketHoles(item, piece);
  const work = [
    piece.ripped ? "rip" : "",
    piece.planed ? "plane" : "",
    ...edgeWork(item, piece),
    ...endWork(piece),
    "crosscut",
    pockets === 0 ? "" : pockets === 1 ? "1 pocket hole" : `${pockets} pocket holes`,
    holes === 0 ? "" : holes === 1 ? "1 hole" : `${holes} holes`,
    ...otherWork(piece),
    ...[...new Set(boxes)].map((name) => `${boxes.filter((one) => one === name).length} × ${name}`),
  ];
  return work.filter((one) => one !== "").join(", ");
}
