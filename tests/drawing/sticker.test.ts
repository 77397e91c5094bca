import { expect, test } from "vitest";
import { drawSticker } from "../../src/drawing/sticker.ts";
import { findCollisions, findOffSheet } from "./clear-of.ts";
import { demoItems, millimetres, sixteenths } from "./demo.ts";

test.each(demoItems.map((item) => [item.slug, item] as const))(
  "%s: each sticker says mark, size and number; nothing runs off it or into anything, at 9 pt and more",
  (_, item) => {
    for (const piece of item.pieces) {
      for (const division of [sixteenths, millimetres]) {
        const drawing = drawSticker(item, piece, 1, division);
        expect(findCollisions(drawing), piece.mark).toEqual([]);
        expect(findOffSheet(drawing), piece.mark).toEqual([]);
        const texts = drawing.marks.flatMap((mark) => (mark.kind === "text" ? [mark] : []));
        expect(texts.map(({ text }) => text)).toEqual(
          expect.arrayContaining([piece.mark, `1 of ${piece.count}`, "Lot"]),
        );
        // 9 pt are 3.175 mm.
        for (const { size } of texts) expect(size).toBeGreaterThanOrEqual(3.175);
      }
    }
  },
);
