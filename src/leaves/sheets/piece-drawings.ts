// A form's pieces -> one drawing each, with every size that is set on a saw.
import { drawPiece } from "../../drawing/piece-drawing.ts";
import { phoneSheet } from "../../drawing/sheet.ts";
import { pictureOf } from "../picture.ts";
import type { PaperSheet } from "../sheet-set.ts";
import { figure, rowsOf, sheetOf } from "./blocks.ts";
import type { SheetSource } from "./sheet-source.ts";

export const pieceDrawings = ({ item, shop }: SheetSource): readonly PaperSheet[] =>
  sheetOf(
    "piece-drawings",
    "Pieces, drawn",
    "Cut",
    rowsOf(
      item.pieces.map((piece) => figure(pictureOf(drawPiece(item, piece, shop.division, phoneSheet)), "piece", 1 / 2)),
      2,
    ),
  );
