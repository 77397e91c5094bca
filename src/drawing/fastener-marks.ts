// Fasteners in their places -> small signs on a flat drawing, one sign a way of driving, and the rows of its legend.
import { dot } from "../geometry/vector.ts";
import type { View } from "../geometry/view.ts";
import type { Driven } from "../item/item.ts";
import type { LineKind, Mark, Paper } from "./drawing.ts";
import { withFractions } from "./paper-text.ts";

/** Head towards the viewer: a cross. From the far side: a broken ring. Along the panel: a dashed line with a bar at its head. */
export type Sign = "cross" | "ring" | "bar";

const half = 0.9;

export function signOf(driven: Driven, view: View): Sign {
  const away = -dot(driven.way, view.toViewer);
  return away > 0.7 ? "cross" : away < -0.7 ? "ring" : "bar";
}

/** The sign's strokes, and the outline that labels keep clear of. */
export function drawSign(
  sign: Sign,
  head: Paper,
  tip: Paper,
): { readonly marks: Mark[]; readonly outline: readonly Paper[] } {
  const strokes = (line: LineKind, chains: readonly (readonly Paper[])[]): Mark => ({ kind: "lines", line, chains });
  const [u, v] = head;
  const square: readonly Paper[] = [
    [u - half, v - half],
    [u + half, v - half],
    [u + half, v + half],
    [u - half, v + half],
  ];
  if (sign === "cross") {
    const chains: Paper[][] = [
      [square[0] as Paper, square[2] as Paper],
      [square[1] as Paper, square[3] as Paper],
    ];
    return { marks: [strokes("dimension", chains)], outline: square };
  }
  if (sign === "ring") {
    const arcs = [0, 1, 2, 3].map((quarter) =>
      [0, 1, 2, 3, 4].map((i): Paper => {
        const angle = ((quarter + i * 0.16) * Math.PI) / 2;
        return [u + half * Math.cos(angle), v + half * Math.sin(angle)];
      }),
    );
    return { marks: [strokes("dimension", arcs)], outline: square };
  }
  const length = Math.hypot(tip[0] - u, tip[1] - v);
  const way: Paper = [(tip[0] - u) / length, (tip[1] - v) / length];
  const bar: Paper[] = [
    [u - way[1] * half, v + way[0] * half],
    [u + way[1] * half, v - way[0] * half],
  ];
  return { marks: [strokes("hidden", [[head, tip]]), strokes("dimension", [bar])], outline: [...bar, tip] };
}

/** Which side a fastener of this panel goes in from, in words. */
function sideWords(driven: Driven, view: View): string {
  if (driven.fastener.kind === "pocket screw") {
    return dot(driven.way, view.toViewer) > 0 ? "from the back" : "from the good side";
  }
  const words: Readonly<Record<Sign, string>> = {
    cross: "from the good side",
    ring: "from the back",
    bar: "through the edge",
  };
  return words[signOf(driven, view)];
}

export type LegendRow = { readonly sign: Sign; readonly text: string };

/** One row for each fastener, side and purpose, with how many are drawn. */
export function legendRows(all: readonly Driven[], view: View, own: ReadonlySet<string>): readonly LegendRow[] {
  const rows = new Map<string, { readonly sign: Sign; count: number }>();
  for (const driven of all) {
    const later = own.has(driven.b) ? "" : ", when it is stood up";
    const text = `${driven.fastener.name}, ${sideWords(driven, view)}${later}`;
    const row = rows.get(text);
    if (row === undefined) rows.set(text, { sign: signOf(driven, view), count: 1 });
    else row.count += 1;
  }
  return [...rows].map(([text, { sign, count }]) => ({ sign, text: withFractions(`${count} × ${text}`) }));
}
