// Drawing -> picture for a page.
import type { Drawing } from "../drawing/drawing.ts";
import { phoneSheet, type Sheet } from "../drawing/sheet.ts";
import { formatSvg } from "../drawing/svg.ts";
import type { Picture } from "./leaf.ts";

/** One drawing for every screen and for paper. */
export const pictureOf = (drawing: Drawing): Picture => ({
  caption: drawing.title,
  svg: { html: formatSvg(drawing) },
});

/** A drawing made twice: for paper and wide screens, and for a phone. */
export const pictureOn = (sheet: Sheet, draw: (sheet: Sheet) => Drawing): Picture => ({
  ...pictureOf(draw(sheet)),
  narrow: { html: formatSvg(draw(phoneSheet)) },
});
