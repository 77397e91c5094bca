// An item -> its patterns at true size: pages for each paper, and one SVG file for each pattern.
import { fullSizePages } from "../drawing/full-size/full-size-pages.ts";
import type { Template } from "../drawing/full-size/template.ts";
import { templatesOf } from "../drawing/full-size/templates-of.ts";
import type { Room } from "../drawing/full-size/tiles.ts";
import type { LetterFont } from "../drawing/lettering/letter-font.ts";
import { formatSvg } from "../drawing/svg.ts";
import type { Item } from "../item/item.ts";
import type { Division } from "../units/division.ts";

import { pictureOf } from "./picture.ts";
import type { FullSizePage, PaperSize } from "./sheet-set.ts";

/** `areas`: what a page at full size leaves free, mm. */
export function fullSizeOf(
  item: Item,
  division: Division,
  font: LetterFont,
  areas: Readonly<Record<PaperSize, Room>>,
): Readonly<Record<PaperSize, readonly FullSizePage[]>> {
  const templates = templatesOf(item, division, font);
  const pages = (paper: PaperSize): readonly FullSizePage[] =>
    fullSizePages(item, templates, areas[paper], paper).map(({ drawing }) => ({
      title: drawing.title,
      width: drawing.width,
      height: drawing.height,
      picture: pictureOf(drawing),
    }));
  return { letter: pages("letter"), a4: pages("a4") };
}

/** Every pattern as a file of its own, as large as it is. */
export const patternFiles = (
  item: Item,
  division: Division,
  font: LetterFont,
): readonly { readonly name: string; readonly svg: string }[] =>
  templatesOf(item, division, font).map((template) => ({
    name: `${template.id}.svg`,
    svg: patternSvg(item, template),
  }));

const patternSvg = (item: Item, { id, title, how, width, height, marks }: Template): string =>
  formatSvg({
    id,
    title: `${item.title}: ${title}`,
    description: `At true size, ${Math.round(width)} by ${Math.round(height)} mm. ${how}`,
    width,
    height,
    scale: 25.4,
    pen: 0.35,
    marks,
  });
