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

/** Numbers stand in this many rows, one behind the other, so that all find room along `room` mm. */
export const tapeRows = (count: number, room: number, size: number): number =>
  Math.max(1, Math.ceil((count * size * rowStep) / room));

const widest = (texts: readonly string[], size: number): number =>
  Math.max(0, ...texts.map((text) => textWidth(text, size, false)));

/** How far a tape reaches from the outline, mm. */
export const tapeDepth = (texts: readonly string[], size: number, rows: number): number =>
  straight + bend + space + rows * widest(texts, size) + (rows - 1) * 2 * space;

export type TapeRoom = { readonly edge: number; readonly low: number; readonly high: number; readonly rows: number };

/**
 * The running sizes along an edge that starts at `edge` and is measured along v (a tape on the left, numbers level) or
 * along u (a tape below or above, numbers turned to be read from the right). Ticks come in paper mm, sorted upward; numbers keep
 * within low and high. Numbers of a further row stand past the gaps between those before.
 */
export function drawTape(
  ticks: readonly Tick[],
  side: "left" | "below" | "above",
  room: TapeRoom,
  size: number,
): Mark[] {
  const step = (size * rowStep) / room.rows;
  const places = spread(
    ticks.map((tick) => tick.at),
    step,
    room.low + size / 2,
    room.high - size / 2,
  );
  const deep =
    widest(
      ticks.map((tick) => tick.text),
      size,
    ) +
    2 * space;
  const paper = (along: number, out: number): Paper =>
    side === "left" ? [room.edge - out, along] : [along, room.edge + (side === "below" ? out : -out)];
  const chains: Paper[][] = [];
  const texts: Mark[] = ticks.map((tick, i) => {
    const place = places[i] ?? tick.at;
    const out = straight + bend + (i % room.rows) * deep;
    const chain = [paper(tick.at, gapAtOutline), paper(tick.at, straight), paper(place, straight + bend)];
    chains.push(i % room.rows === 0 ? chain : [...chain, paper(place, out)]);
    const [u, v] = paper(place, out + space);
    const down = baseline(size);
    return side === "left"
      ? { kind: "text", at: [u, v + down], text: tick.text, size, anchor: "end" }
      : {
          kind: "text",
          at: [u + down, v],
          text: tick.text,
          size,
          anchor: side === "below" ? "end" : "start",
          turn: 90,
        };
  });
  return [{ kind: "lines", line: "dimension", chains }, ...texts];
}
