// Marks and a window -> the part of each that lies in the window, in the window's own millimetres.
import type { Mark, Paper } from "../drawing.ts";
import { textBox } from "../text-width.ts";

export type Window = { readonly left: number; readonly top: number; readonly width: number; readonly height: number };

/**
 * Chains are cut at the window's edges; a text stays only where all of it lies in the window, as does any other mark.
 * Errors: a region, which no pattern has, is our bug.
 */
export const marksIn = (marks: readonly Mark[], window: Window): Mark[] =>
  marks.flatMap((mark) => markIn(mark, window));

function markIn(mark: Mark, window: Window): readonly Mark[] {
  const move = ([u, v]: Paper): Paper => [u - window.left, v - window.top];
  switch (mark.kind) {
    case "lines": {
      const chains = mark.chains.flatMap((chain) => chainIn(chain, window)).map((chain) => chain.map(move));
      return chains.length === 0 ? [] : [{ ...mark, chains }];
    }
    case "text":
      return textBox(mark).every((corner) => isIn(corner, window)) ? [{ ...mark, at: move(mark.at) }] : [];
    case "dot":
    case "balloon":
      return isIn(mark.at, window) ? [{ ...mark, at: move(mark.at) }] : [];
    case "arrowhead":
      return isIn(mark.tip, window) ? [{ ...mark, tip: move(mark.tip) }] : [];
    case "region":
      throw new Error("a pattern has no regions");
  }
}

const near = 1e-9;

const isIn = ([u, v]: Paper, { left, top, width, height }: Window): boolean =>
  u >= left - near && u <= left + width + near && v >= top - near && v <= top + height + near;

/** The stretches of a chain inside the window. */
export function chainIn(chain: readonly Paper[], window: Window): Paper[][] {
  const found: Paper[][] = [];
  let open: Paper[] | undefined;
  for (let i = 0; i + 1 < chain.length; i++) {
    const [a, b] = [chain[i] as Paper, chain[i + 1] as Paper];
    const span = spanIn(a, b, window);
    if (span === undefined) {
      open = undefined;
      continue;
    }
    const at = (t: number): Paper => (t === 0 ? a : t === 1 ? b : [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t]);
    const [from, to] = [at(span[0]), at(span[1])];
    if (open !== undefined && span[0] === 0) open.push(to);
    else {
      open = [from, to];
      found.push(open);
    }
    if (span[1] < 1) open = undefined;
  }
  return found;
}

/** Which part of a straight line lies in the window, from 0 to 1 (Liang and Barsky, ACM Transactions on Graphics 3(1), 1984). */
function spanIn(a: Paper, b: Paper, window: Window): readonly [number, number] | undefined {
  let [from, to] = [0, 1];
  const [du, dv] = [b[0] - a[0], b[1] - a[1]];
  const borders = [
    [-du, a[0] - window.left],
    [du, window.left + window.width - a[0]],
    [-dv, a[1] - window.top],
    [dv, window.top + window.height - a[1]],
  ] as const;
  for (const [towards, room] of borders) {
    if (towards === 0) {
      if (room < 0) return undefined;
      continue;
    }
    const t = room / towards;
    if (towards < 0) from = Math.max(from, t);
    else to = Math.min(to, t);
  }
  return from < to ? [from, to] : undefined;
}
