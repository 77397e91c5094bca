// Wished places along a line -> places at least a step apart, moved as little as can be.

/**
 * Least squares by pooling: neighbours that come too near move as one block about their common mean.
 * Wishes come sorted; the places keep their order. All stay within low and high while there is room.
 */
export function spread(wishes: readonly number[], step: number, low: number, high: number): readonly number[] {
  const blocks: { sum: number; count: number; first: number }[] = [];
  wishes.forEach((wish, i) => {
    blocks.push({ sum: wish - i * step, count: 1, first: i });
    for (;;) {
      const last = blocks.at(-1);
      const before = blocks.at(-2);
      if (last === undefined || before === undefined) break;
      if (before.sum / before.count <= last.sum / last.count) break;
      blocks.splice(-2, 2, { sum: before.sum + last.sum, count: before.count + last.count, first: before.first });
    }
  });
  const top = high - (wishes.length - 1) * step;
  return blocks.flatMap(({ sum, count, first }) => {
    const start = Math.max(low, Math.min(top, sum / count));
    return Array.from({ length: count }, (_, i) => start + (first + i) * step);
  });
}
