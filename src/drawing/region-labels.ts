// What is seen of each member on a flat drawing -> its mark written on it, clear of lines, signs and other marks.
import { collide } from "./collision.ts";
import { isInside } from "./dot-spots.ts";
import type { Mark, Paper } from "./drawing.ts";
import { onPaper, type Picture, type Placement } from "./picture.ts";
import { baseline, textBox } from "./text-width.ts";

/** Places along the longer way of a region that are tried in turn, as parts of it. */
const tries = [
  0.5, 0.46, 0.54, 0.42, 0.58, 0.38, 0.62, 0.34, 0.66, 0.3, 0.7, 0.25, 0.75, 0.2, 0.8, 0.15, 0.85, 0.1, 0.9,
];

/** How far off the middle line a mark may stand where the middle is taken, as parts of the region's narrower way. */
const sides = [0, -0.12, 0.12, -0.24, 0.24];

/** Free room from a mark to lines and signs, and to the borders of its board, mm. */
const clear = 0.5;
const inside = 0.25;
const wellClear = 1.2;

/** Marks in the order of the picture's bodies; a member whose regions are all too small goes without. */
export function placeInRegions(
  picture: Picture,
  placement: Placement,
  names: readonly string[],
  size: number,
  keepOff: readonly (readonly Paper[])[],
): Mark[] {
  const taken = [...keepOff];
  const borders = picture.scene.lines.map(({ a, b }) => [
    onPaper(picture, placement, a),
    onPaper(picture, placement, b),
  ]);
  return names.flatMap((name, owner) => {
    const regions = picture.scene.regions.filter((region) => region.owner === owner).sort((a, b) => b.area - a.area);
    for (const region of regions) {
      const loops = [region.outer, ...region.holes].map((loop) => loop.map((p) => onPaper(picture, placement, p)));
      const outline = loops[0] as Paper[];
      const [us, vs] = [outline.map((p) => p[0]), outline.map((p) => p[1])];
      const [low, high] = [Math.min(...us), Math.max(...us)];
      const [top, foot] = [Math.min(...vs), Math.max(...vs)];
      const level = high - low >= foot - top;
      // Well clear of every line first, then as near as it may stand.
      for (const [side, gap] of sides.flatMap((off) => [wellClear, inside].map((near) => [off, near] as const))) {
        for (const part of tries) {
          const u = low + (high - low) * (level ? part : 0.5 + side);
          const v = top + (foot - top) * (level ? 0.5 + side : part);
          const at: Paper = [u, v + baseline(size)];
          const mark = { kind: "text", at, text: name, size, anchor: "middle", strong: true } as const;
          const box = textBox(mark);
          const fits = box.every(
            ([x, y]) => x > low + inside && x < high - inside && y > top + inside && y < foot - inside,
          );
          if (!fits || !isInside([u, v], loops) || borders.some((border) => collide(box, border, gap))) continue;
          if (taken.some((other) => collide(box, other, clear))) continue;
          taken.push(box);
          return [mark];
        }
      }
    }
    return [];
  });
}
