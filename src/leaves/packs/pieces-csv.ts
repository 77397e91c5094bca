// A plan's pieces -> a table for spreadsheets and saws, comma-separated (RFC 4180), one row a kind of piece.
import type { Item } from "../../item/item.ts";
import type { Division } from "../../units/division.ts";
import { formatLength } from "../../units/format-length.ts";
import { inches, type Length } from "../../units/length.ts";
import { piecesTable } from "../pieces-table.ts";

const heads = ["mark", "number", "length", "width", "thickness", "unit", "piece", "board", "work"];

/** Quoted where the standard asks for it; a text that a spreadsheet would take for a sum stands behind a blank. */
const field = (text: string): string => {
  const plain = /^[=+\-@]/.test(text) ? ` ${text}` : text;
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
};

/** In the edition's unit, as decimals: exact to a ten-thousandth. */
const decimal = (length: Length, { unit }: Division): string =>
  String(Number((inches(length) * (unit === "mm" ? 25.4 : 1)).toFixed(4)));

export function piecesCsv(item: Item, division: Division): string {
  const { rows } = piecesTable(item, (length) => formatLength(length, division));
  const lines = item.pieces.map((piece, i) => [
    piece.mark,
    String(piece.count),
    ...[piece.length, piece.width, piece.thickness].map((length) => decimal(length, division)),
    division.unit,
    piece.name,
    piece.board.name.replaceAll("\u00a0", " ").replaceAll("\u2044", "/"),
    rows[i]?.at(-1) ?? "",
  ]);
  return [heads, ...lines].map((line) => `${line.map(field).join(",")}\r\n`).join("");
}
