// `outlines:` and the drawings beside a recipe -> true-size shapes by name.

import { nearest } from "../problems/nearest.ts";
import type { Written } from "../problems/place.ts";
import { problem } from "../problems/problem.ts";
import type { TreeEntry } from "../problems/yaml-tree.ts";
import { textsOf } from "./one-line.ts";
import { readStrokes } from "./outline-strokes.ts";
import { readSvgOutline } from "./outline-svg.ts";
import type { Outline, OutlineLoop, PieceKind } from "./recipe.ts";
import type { Gathered } from "./scan.ts";

/** The text of a file that stands beside the recipe; undefined where there is none of that name. */
export type Beside = (name: string) => string | undefined;

/** One outline in words: `edge` and, under names of their own, what is cut out of it. */
export function readOutline({ key, value }: TreeEntry, into: Gathered): Outline[] {
  if (value.kind !== "map") return [];
  const loops = textsOf(value.entries).map(
    ({ key: name, value: text }): OutlineLoop => ({
      kind: "words",
      name: name.text,
      at: text.at,
      strokes: readStrokes(text, into),
    }),
  );
  const edge = loops.filter((loop) => loop.name === "edge");
  return [{ name: key.text, at: key.at, loops: [...edge, ...loops.filter((loop) => loop.name !== "edge")] }];
}

/** The drawings that pieces name, each read once. */
export function readDrawings(pieces: readonly PieceKind[], beside: Beside | undefined, into: Gathered): Outline[] {
  const names = new Map<string, Written>();
  for (const { outline } of pieces)
    if (outline && isDrawing(outline.name.text)) names.set(outline.name.text, outline.name);
  return [...names.values()].flatMap((name) => {
    const svg = beside?.(name.text);
    if (svg !== undefined) return readSvgOutline(name.text, fileBeside(name), svg, into.problems) ?? [];
    into.problems.push(problem("no-drawing", name.at, { file: name.text }));
    return [];
  });
}

/** The drawing as a file in the recipe's own folder. */
const fileBeside = ({ text, at }: Written): string => at.file.replace(/[^/]*$/, "") + text;

const isDrawing = (name: string): boolean => name.endsWith(".svg");

/** Pieces that are cut to an outline nobody has drawn. */
export function checkOutlinesUsed(pieces: readonly PieceKind[], outlines: readonly Outline[], into: Gathered): void {
  const known = outlines.map((outline) => outline.name).filter((name) => !isDrawing(name));
  for (const { outline } of pieces) {
    if (!outline || isDrawing(outline.name.text) || known.includes(outline.name.text)) continue;
    const found = outline.name.text;
    into.problems.push(problem("no-outline", outline.name.at, { found, known, nearest: nearest(found, known) }));
  }
}
