// A saying and the height of its capitals -> its letters as polygons in millimetres, from the left of the first letter's ink.

import { type Letters, lettersOf } from "../../geometry/letter-shapes.ts";
import type { Vec2 } from "../../geometry/shape.ts";
import type { Contour, LetterFont } from "./letter-font.ts";

/** No chord lies further off its curve, mm. */
const chord = 0.02;

export type SetRow = { readonly letters: Letters; readonly width: number };

/** y goes up from the line that the letters stand on. */
export function setRow(font: LetterFont, saying: string, capHeight: number): SetRow {
  const scale = capHeight / font.capHeight;
  const loops = font.contoursOf(saying).map((contour) => flattened(contour, scale));
  const us = loops.flat().map(([u]) => u);
  const [from, to] =
    us.length === 0 ? [0, 0] : [us.reduce((a, b) => Math.min(a, b)), us.reduce((a, b) => Math.max(a, b))];
  const moved = loops.map((loop) => loop.map(([u, v]): Vec2 => [u - from, v]));
  return { letters: lettersOf(moved), width: to - from };
}

/** A quadratic curve lies off its chords by at most |a - 2 b + c| / (4 n^2) when it is cut in n even parts. */
function flattened({ from, strokes }: Contour, scale: number): Vec2[] {
  const at = ([x, y]: readonly [number, number]): Vec2 => [x * scale, y * scale];
  const points: Vec2[] = [at(from)];
  for (const { to, by } of strokes) {
    const [a, c] = [points.at(-1) as Vec2, at(to)];
    if (by === undefined) {
      points.push(c);
      continue;
    }
    const b = at(by);
    const bend = Math.hypot(a[0] - 2 * b[0] + c[0], a[1] - 2 * b[1] + c[1]);
    const parts = Math.max(1, Math.ceil(Math.sqrt(bend / (4 * chord))));
    for (let i = 1; i <= parts; i++) {
      const t = i / parts;
      const [p, q, r] = [(1 - t) ** 2, 2 * t * (1 - t), t ** 2];
      points.push([p * a[0] + q * b[0] + r * c[0], p * a[1] + q * b[1] + r * c[1]]);
    }
  }
  return points;
}
