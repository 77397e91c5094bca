// An item -> how it looks in the finish of its variant, for the buyer; no plan size is on it.
import type { Item } from "../item/item.ts";
import type { Drawing } from "./drawing.ts";
import { listed } from "./paper-text.ts";
import { pictorialPen, type Sheet, storeSheet } from "./sheet.ts";
import { coatedTone, drawStanding, standIn } from "./standing-view.ts";

const edge = 2;

export function drawCoatedView(item: Item, sheet: Sheet = storeSheet): Drawing {
  const room = { left: edge, top: edge, width: sheet.width - 2 * edge, height: sheet.height - 2 * edge };
  const { picture, placement, height } = standIn(item, room);
  const finishes = item.variant.finish.map(({ finish }) => finish.words);
  const look = finishes.length === 0 ? "in bare wood" : `finished with ${listed([...new Set(finishes)])}`;
  return {
    id: `${item.slug}-${item.variant.slug}-look-${sheet.name}`,
    title: `${item.title}, ${item.variant.name}: a drawing, not a photograph`,
    description: `The ${item.title.toLowerCase()} ${look}, seen from the front right, from above.`,
    width: sheet.width,
    height: height + 2 * edge,
    pen: pictorialPen(sheet),
    marks: drawStanding(picture, placement, coatedTone),
  };
}
