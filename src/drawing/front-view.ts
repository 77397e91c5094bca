// An item -> how it looks from the front in its finish, always at one scale, so that things of one line can stand side by side.
import { namedViews } from "../geometry/view.ts";
import type { Item } from "../item/item.ts";
import type { Drawing } from "./drawing.ts";
import { extrasOf } from "./extras.ts";
import { inPlace, pictureSize, takePicture } from "./picture.ts";
import { coatedTone, drawStanding } from "./standing-view.ts";

/** Paper mm for an inch of every front view. */
export const frontScale = 1;

/** No edge is left free: what stands on the ground stands on the drawing's lower edge. */
export function drawFrontView(item: Item): Drawing {
  const picture = takePicture(item.members.map(inPlace), namedViews.front, extrasOf(item));
  const { width, height } = pictureSize(picture);
  return {
    id: `${item.slug}-front`,
    title: `${item.title} from the front`,
    description: `The ${item.title.toLowerCase()} seen square from the front.`,
    width: width * frontScale,
    height: height * frontScale,
    scale: frontScale,
    pen: 0.25,
    marks: drawStanding(picture, { scale: frontScale, left: 0, top: 0 }, coatedTone),
  };
}
