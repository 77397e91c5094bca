// Places along one edge -> a tape beside it: a tick for each place and its number, none over another.

import { gapAtOutline } from "./dimensions.ts";
import type { Mark, Paper } from "./drawing.ts";
import { spread } from "./spread.ts";
import { baseline, textWidth } from "./text-width.ts";

export type Tick = { readonly at: number; readonly text: string };

/** A tick leaves the outline straight, bends over to its number and ends before it (mm). */
const straight = 4;
const bend = 3;
const space = 1;
/** From number to number, as a part of the type size. */
const rowStep = 1.08;

/** How far a tape reaches from the outline, mm. */
export function tapeDepth(texts: readonly string[], size: number): number {
  return straight + bend + space + Math.max(0, ...texts.map((text) => textWidth(text, size, false)));
}

/**
 * The running sizes along an edge that starts at `edge` and is measured along v (a tape on the left, numbers level) or
 * along u (a tape below, numbers turned to be read from the right). Ticks come in paper mm, sorted upward.
 */
export function drawTape(ticks: readonly Tick[], side: "left" | "below", edge: number, size: number): Mark[] {
  const places = spread(
    ticks.map((tick) => tick.at),
    size * rowStep,
    Number.NEGATIVE_INFINITY,
    Number.POSITIVE_INFINITY,
  );
  const paper = (along: number, out: number): Paper => (side === "left" ? [edge - out, along] : [along, edge + out]);
  const chains: Paper[][] = [];
  const texts: Mark[] = ticks.map((tick, i) => {
    const place = places[i] ?? tick.at;
    chains.push([paper(tick.at, gapAtOutline), paper(tick.at, straight), paper(place, straight + bend)]);
    const [u, v] = paper(place, straight + bend + space);
    const down = baseline(size);
    return side === "left"
      ? { kind: "text", at: [u, v + down], text: tick.text, size, anchor: "end" }
      : { kind: "text", at: [u + down, v], text: tick.text, size, anchor: "end", turn: 90 };
  });
  return [{ kind: "lines", line: "dimension", chains }, ...texts];
}
