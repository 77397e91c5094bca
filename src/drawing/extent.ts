// Marks -> the box on paper that holds all of them.
import { squareRound } from "./collision.ts";
import type { Mark, Paper } from "./drawing.ts";
import { textBox } from "./text-width.ts";

/** Every point that a mark's own box follows from. */
export function pointsOf(mark: Mark): readonly Paper[] {
  switch (mark.kind) {
    case "region":
      return mark.loops.flat();
    case "lines":
      return mark.chains.flat();
    case "arrowhead":
      return [mark.tip, [mark.tip[0] - mark.way[0] * mark.size, mark.tip[1] - mark.way[1] * mark.size]];
    case "dot":
    case "balloon":
      return squareRound(mark.at, mark.radius);
    case "text":
      return textBox(mark);
  }
}

export type Extent = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

export function extentOf(marks: readonly Mark[]): Extent {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const mark of marks) {
    for (const [u, v] of pointsOf(mark)) {
      left = Math.min(left, u);
      right = Math.max(right, u);
      top = Math.min(top, v);
      bottom = Math.max(bottom, v);
    }
  }
  return { left, right, top, bottom };
}
