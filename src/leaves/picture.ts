// Drawing -> picture for a page.
import type { Drawing } from "../drawing/drawing.ts";
import { formatSvg } from "../drawing/svg.ts";
import type { Picture } from "./leaf.ts";

export const pictureOf = (drawing: Drawing): Picture => ({
  caption: drawing.title,
  svg: { html: formatSvg(drawing) },
});
