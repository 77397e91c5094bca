// A number of fasteners and the room for them -> where each stands in the row.

/**
 * From the end of the patch to the outer fastener, in shank diameters: the end distance in predrilled holes (NDS Commentary).
 * It is kept at every end of a patch, so that all joins of one kind are drilled alike.
 */
const endDistance = 10;

/** Least from a fastener's middle to the end of the patch or to the edge beside it, in diameters; common practice, no source. */
export const leastMargin = 1.5;

/** Least between two in a row, in diameters: the closest rows of predrilled holes (NDS Commentary). */
const leastSpacing = 3;

/**
 * Middles of `count` fasteners between low and high: evenly spaced, the outer ones at the end distance, or each in the
 * middle of its share where the room is shorter than that, yet `leastInset` from both ends where that leaves as much between
 * them. Undefined where they would stand closer than the least spacing.
 */
export function fastenerRow(
  count: number,
  low: number,
  high: number,
  diameter: number,
  leastInset: number,
): number[] | undefined {
  const room = high - low;
  const share = Math.min(endDistance * diameter, room / (2 * count));
  const inset = room >= (count + 1) * leastInset ? Math.max(share, leastInset) : share;
  if (inset < leastMargin * diameter) return undefined;
  if (count === 1) return [(low + high) / 2];
  const step = (room - 2 * inset) / (count - 1);
  return Array.from({ length: count }, (_, i) => low + inset + i * step);
}

/** How many go into the room at the least spacing. */
export const mostInRow = (room: number, diameter: number): number =>
  Math.floor(room / (leastSpacing * diameter) + 1e-9);
