// `2000x2000, 1200x630` -> the sizes of pictures that a listing wants, in pixels.
import { further, type Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import type { Problems } from "./parse-values.ts";

export type ImageSize = { readonly width: number; readonly height: number };

const least = 200;
const most = 4000;
/** No more sizes are made of every picture. */
const mostSizes = 6;

/** Each size once; what can't be read is told, and is left out. */
export function readImageSizes(w: Written, problems: Problems): ImageSize[] {
  const sizes = new Map<string, ImageSize>();
  let from = 0;
  for (const part of w.text.split(",")) {
    const [, width = "0", height = "0"] = /^\s*(\d{1,5})\s*[x×]\s*(\d{1,5})\s*$/.exec(part) ?? [];
    const size = { width: Number(width), height: Number(height) };
    const isSize = Object.values(size).every((side) => side >= least && side <= most);
    if (isSize && sizes.size < mostSizes) sizes.set(`${size.width}x${size.height}`, size);
    else {
      const at = further(w.at, from + (part.length - part.trimStart().length));
      const expected = `width x height in pixels from ${least} to ${most}, at most ${mostSizes} of them, like 2000x2000, 1200x630`;
      problems.push(problem("yard-number", at, { key: "images", found: part.trim(), expected }));
    }
    from += part.length + 1;
  }
  return [...sizes.values()];
}
