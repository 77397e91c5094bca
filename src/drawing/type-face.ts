// The contract of a type face whose letters are drawn as outlines, and a text set in it as loops on paper.
import type { Paper } from "./drawing.ts";
import type { Contour } from "./lettering/letter-font.ts";

/** A text as the font sets it, fractions and pairs with it: outlines in units of the font, x from 0, y up, and how far it runs. */
export type TypeFace = {
  readonly unitsPerEm: number;
  readonly set: (text: string) => { readonly contours: readonly Contour[]; readonly advance: number };
};

export type TypeFaces = { readonly regular: TypeFace; readonly strong: TypeFace };

/** A curve is drawn as so many straight lines: at 2000 pixels none of them is seen. */
const steps = 5;

export type SetText = {
  readonly at: Paper;
  readonly text: string;
  readonly size: number;
  readonly anchor: "start" | "middle" | "end";
  readonly turn?: number;
};

/** Closed loops, mm, where the text stands; turned anti-clockwise with it. */
export function textLoops({ at, text, size, anchor, turn = 0 }: SetText, face: TypeFace): Paper[][] {
  const { contours, advance } = face.set(text);
  const scale = size / face.unitsPerEm;
  const start = anchor === "start" ? 0 : anchor === "middle" ? -advance / 2 : -advance;
  const angle = (turn * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return contours.map((contour) =>
    flattened(contour).map(([x, y]): Paper => {
      const [u, v] = [(x + start) * scale, -y * scale];
      return [at[0] + u * cos + v * sin, at[1] - u * sin + v * cos];
    }),
  );
}

function flattened({ from, strokes }: Contour): [number, number][] {
  const points: [number, number][] = [[from[0], from[1]]];
  for (const { to, by } of strokes) {
    const [x, y] = points.at(-1) ?? [0, 0];
    if (by) {
      for (let i = 1; i < steps; i++) {
        const t = i / steps;
        const [a, b, c] = [(1 - t) * (1 - t), 2 * t * (1 - t), t * t];
        points.push([a * x + b * by[0] + c * to[0], a * y + b * by[1] + c * to[1]]);
      }
    }
    points.push([to[0], to[1]]);
  }
  return points;
}
