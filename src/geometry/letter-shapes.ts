// Loops of letters in millimetres -> connected shapes with their counters; and the same held by bridges, for a stencil.
import type { Path64 } from "clipper2-ts";
import { leftUncovered, type Piece } from "./left-uncovered.ts";
import type { Vec2 } from "./shape.ts";

/** One connected shape: its outline counter-clockwise, its counters (the closed rooms inside) clockwise. */
export type LetterShape = { readonly outer: readonly Vec2[]; readonly counters: readonly (readonly Vec2[])[] };
export type Letters = readonly LetterShape[];

const grid = 1e-4;

const onGrid = (loop: readonly Vec2[]): Path64 =>
  loop.map(([x, y]) => ({ x: Math.round(x / grid), y: Math.round(y / grid) }));

const offGrid = (path: Path64): readonly Vec2[] => path.map(({ x, y }): Vec2 => [x * grid, y * grid]);

const shapesOf = (pieces: readonly Piece[]): Letters =>
  pieces.map(({ outer, holes }) => ({ outer: offGrid(outer), counters: holes.map(offGrid) }));

/** Loops as a font winds them, outlines clockwise and counters against them; contours that overlap become one shape. */
export const lettersOf = (loops: readonly (readonly Vec2[])[]): Letters =>
  shapesOf(
    leftUncovered(
      loops.map((loop) => onGrid([...loop].reverse())),
      [],
    ),
  );

/**
 * Every counter joined to the ground above and below it by a bridge so many millimetres wide through its middle, so that nothing
 * falls out of a stencil. Errors: counters that four rounds of bridges don't open are our bug.
 */
export function bridged(letters: Letters, width: number): Letters {
  let shapes = letters;
  for (let round = 0; round < 4; round++) {
    const bars = shapes.flatMap((shape) => shape.counters.map((counter) => barThrough(shape, counter, width)));
    if (bars.length === 0) return shapes;
    const loops = shapes.flatMap(({ outer, counters }) => [outer, ...counters]);
    shapes = shapesOf(leftUncovered(loops.map(onGrid), bars.map(onGrid)));
  }
  throw new Error("a letter keeps a counter closed");
}

/** An upright bar through a counter's middle, from under the stroke below it to over the stroke above it. */
function barThrough({ outer, counters }: LetterShape, counter: readonly Vec2[], width: number): readonly Vec2[] {
  const us = counter.map(([u]) => u);
  const middle = (Math.min(...us) + Math.max(...us)) / 2;
  const at = (loop: readonly Vec2[]): number[] => crossings(loop, middle);
  const own = at(counter);
  const [low, high] = [Math.min(...own), Math.max(...own)];
  const others = [outer, ...counters.filter((other) => other !== counter)].flatMap(at);
  const above = Math.min(...others.filter((v) => v > high));
  const below = Math.max(...others.filter((v) => v < low));
  const [left, right] = [middle - width / 2, middle + width / 2];
  return [
    [left, below - width],
    [right, below - width],
    [right, above + width],
    [left, above + width],
  ];
}

/** Where an upright line crosses a loop. */
const crossings = (loop: readonly Vec2[], u: number): number[] =>
  loop.flatMap((a, i) => {
    const b = loop[(i + 1) % loop.length] as Vec2;
    if (a[0] > u === b[0] > u) return [];
    return [a[1] + ((b[1] - a[1]) * (u - a[0])) / (b[0] - a[0])];
  });
