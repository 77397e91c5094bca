// A drawing -> what its labels run into, and what of it lies off its sheet, each told in words.
import { collide, squareRound } from "../../src/drawing/collision.ts";
import { isInside } from "../../src/drawing/dot-spots.ts";
import type { Drawing, Mark, Paper } from "../../src/drawing/drawing.ts";
import { pointsOf } from "../../src/drawing/extent.ts";
import { textBox } from "../../src/drawing/text-width.ts";

type Label = { readonly words: string; readonly outline: readonly Paper[] };

const labelsOf = (drawing: Drawing): readonly Label[] =>
  drawing.marks.flatMap((mark): Label[] => {
    if (mark.kind === "text") return [{ words: `"${mark.text}"`, outline: textBox(mark) }];
    if (mark.kind === "balloon") {
      return [{ words: `balloon ${mark.text}`, outline: squareRound(mark.at, mark.radius * 0.99) }];
    }
    return [];
  });

const segmentsOf = (
  marks: readonly Mark[],
): readonly { readonly line: string; readonly ends: readonly [Paper, Paper] }[] =>
  marks.flatMap((mark) =>
    mark.kind === "lines"
      ? mark.chains.flatMap((chain) =>
          chain.slice(1).map((to, i) => ({ line: mark.line, ends: [chain[i] as Paper, to] as const })),
        )
      : [],
  );

/** Labels over labels, and text over lines; an empty list is a clear drawing. */
export function findCollisions(drawing: Drawing): readonly string[] {
  const labels = labelsOf(drawing);
  const found: string[] = [];
  labels.forEach((a, i) => {
    for (const b of labels.slice(i + 1)) {
      if (collide(a.outline, b.outline, 0)) found.push(`${a.words} over ${b.words}`);
    }
    if (a.words.startsWith("balloon")) return;
    for (const { line, ends } of segmentsOf(drawing.marks)) {
      if (collide(a.outline, ends, 0)) found.push(`${a.words} over a ${line} line at ${ends[0].map(Math.round)}`);
    }
  });
  return found;
}

/** Balloons that lie on the wood. */
export function findBalloonsInside(drawing: Drawing): readonly string[] {
  const regions = drawing.marks.filter((mark) => mark.kind === "region");
  return drawing.marks.flatMap((mark) => {
    if (mark.kind !== "balloon") return [];
    const rim = Array.from({ length: 16 }, (_, i): Paper => {
      const angle = (i * Math.PI) / 8;
      return [mark.at[0] + mark.radius * Math.cos(angle), mark.at[1] + mark.radius * Math.sin(angle)];
    });
    return rim.some((p) => regions.some((region) => isInside(p, region.loops))) ? [mark.text] : [];
  });
}

/** Marks that reach nearer than half a millimetre to the edge of the sheet, or over it. */
export const findOffSheet = (drawing: Drawing): readonly string[] =>
  drawing.marks.flatMap((mark) => {
    const off = pointsOf(mark).find(
      ([u, v]) => u < 0.5 || v < 0.5 || u > drawing.width - 0.5 || v > drawing.height - 0.5,
    );
    return off === undefined
      ? []
      : [`${mark.kind} ${"text" in mark ? mark.text : ""} at ${off.map((x) => x.toFixed(1))}`];
  });
