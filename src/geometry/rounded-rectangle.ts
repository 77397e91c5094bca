// Sizes and four radii -> the loop of a rectangle with round corners.
import type { Loop, PathItem, Vec2 } from "./shape.ts";

/** At the corner 0, 0, then counter-clockwise; 0 is a square corner. */
export type CornerRadii = readonly [number, number, number, number];

/** A rectangle from 0, 0 to u, v. Radii that share a side must not be longer than it together. */
export function roundedRectangle(u: number, v: number, radii: CornerRadii): Loop {
  const corners: readonly { readonly at: Vec2; readonly in: Vec2; readonly out: Vec2 }[] = [
    { at: [0, 0], in: [0, 1], out: [1, 0] },
    { at: [u, 0], in: [-1, 0], out: [0, 1] },
    { at: [u, v], in: [0, -1], out: [-1, 0] },
    { at: [0, v], in: [1, 0], out: [0, -1] },
  ];
  const items = corners.flatMap(({ at, in: back, out }, i): PathItem[] => {
    const r = radii[i] ?? 0;
    if (r === 0) return [at];
    const far = (way: Vec2, by: number): Vec2 => [at[0] + way[0] * by, at[1] + way[1] * by];
    const inner = r * (1 - Math.SQRT1_2);
    const mid: Vec2 = [at[0] + (back[0] + out[0]) * inner, at[1] + (back[1] + out[1]) * inner];
    return [far(back, r), { mid, to: far(out, r) }];
  });
  return { kind: "path", items };
}
