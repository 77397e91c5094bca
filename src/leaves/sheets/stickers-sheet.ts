// A form's pieces -> a sticker for each of them, three beside each other, to be cut apart or printed on a sheet of labels.
import { drawSticker } from "../../drawing/sticker.ts";
import { pictureOf } from "../picture.ts";
import type { PaperSheet } from "../sheet-set.ts";
import { figure, rowsOf, sheetOf } from "./blocks.ts";
import type { SheetSource } from "./sheet-source.ts";

const across = 3;

export const stickersSheet = ({ item, shop }: SheetSource): readonly PaperSheet[] =>
  sheetOf(
    "stickers",
    "Stickers",
    "Cut",
    rowsOf(
      item.pieces.flatMap((piece) =>
        Array.from({ length: piece.count }, (_, i) =>
          figure(pictureOf(drawSticker(item, piece, i + 1, shop.division)), "sticker", 1 / across),
        ),
      ),
      across,
    ),
  );
