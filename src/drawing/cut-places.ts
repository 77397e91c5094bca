// The cuts of a board -> the places along it and across it that a tape is read for, from the low end and the low edge.
import type { Vec2, Vec3 } from "../geometry/shape.ts";
import type { WorkedCut } from "../item/item.ts";

type Size = readonly [length: number, width: number];

/** Where a sawn slope leaves the blank's own outline, at its low face. */
export function slopeCorners(
  { normal: [l, w], offset }: { readonly normal: Vec3; readonly offset: number },
  [length, width]: Size,
): readonly Vec2[] {
  const corners: readonly Vec2[] = [
    [0, 0],
    [length, 0],
    [length, width],
    [0, width],
  ];
  return corners.flatMap((from, i): Vec2[] => {
    const to = corners[(i + 1) % 4] as Vec2;
    const over = (p: Vec2) => l * p[0] + w * p[1] - offset;
    const [a, b] = [over(from), over(to)];
    if (a > 0 === b > 0) return [];
    const part = a / (a - b);
    return [[from[0] + (to[0] - from[0]) * part, from[1] + (to[1] - from[1]) * part]];
  });
}

function placesOf(cut: WorkedCut, way: 0 | 1, size: Size): readonly number[] {
  switch (cut.kind) {
    case "box":
    case "pocket":
      return [cut.min[way], cut.max[way]];
    case "prism": {
      const at = cut.axis === "length" ? undefined : way === 0 ? 0 : cut.axis === "thickness" ? 1 : undefined;
      const values = at === undefined ? [] : cut.outline.map((p) => p[at]);
      return values.length > 0 ? values : [cut.low, cut.high];
    }
    case "hole":
      return cut.axis === (way === 0 ? "length" : "width") ? [] : [cut.at3[way]];
    case "slope":
      return slopeCorners(cut, size).map((corner) => corner[way]);
    default:
      return [];
  }
}

/** Hole middles, the sides of boxes and the ends of slopes, sorted, each once, the blank's own ends left out. */
export function cutPlaces(cuts: readonly WorkedCut[], way: 0 | 1, size: Size): readonly number[] {
  return cuts
    .flatMap((cut) => placesOf(cut, way, size))
    .filter((place) => place > 1e-9 && place < size[way] - 1e-9)
    .sort((a, b) => a - b)
    .filter((place, i, all) => i === 0 || place - (all[i - 1] as number) > 1e-9);
}
