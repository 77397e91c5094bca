// Two drawings -> how much of the one the other leaves uncovered.

export type Segment = readonly [number, number, number, number];

const lengthOf = (s: Segment) => Math.hypot(s[2] - s[0], s[3] - s[1]);

/** Length of those parts of `drawn` that no near-parallel segment of `over` covers within `slack`. */
export function uncovered(drawn: readonly Segment[], over: readonly Segment[], slack: number): number {
  let total = 0;
  for (const s of drawn) {
    const length = lengthOf(s);
    if (length < 1e-6) continue;
    const cuts = over.flatMap((q) => coveredSpan(s, length, q, slack));
    cuts.sort((a, b) => a[0] - b[0]);
    let done = 0;
    for (const [from, to] of cuts) {
      if (from > done + 2 * slack) total += Math.min(from, length) - done;
      done = Math.max(done, to);
      if (done >= length) break;
    }
    if (length - done > 2 * slack) total += length - done;
  }
  return total;
}

function coveredSpan(s: Segment, length: number, q: Segment, slack: number): (readonly [number, number])[] {
  const other = lengthOf(q);
  if (other < 1e-9) return [];
  const dx = (s[2] - s[0]) / length;
  const dy = (s[3] - s[1]) / length;
  const onA = (q[0] - s[0]) * dx + (q[1] - s[1]) * dy;
  const onB = (q[2] - s[0]) * dx + (q[3] - s[1]) * dy;
  if (Math.max(onA, onB) < -slack || Math.min(onA, onB) > length + slack) return [];
  const off = -dy * (q[0] - s[0]) + dx * (q[1] - s[1]);
  const drift = -dy * (q[2] - s[0]) + dx * (q[3] - s[1]) - off;
  let [from, to] = [0, 1];
  if (Math.abs(drift) < 1e-12) {
    if (Math.abs(off) > slack) return [];
  } else {
    const [u, v] = [(-slack - off) / drift, (slack - off) / drift];
    from = Math.max(0, Math.min(u, v));
    to = Math.min(1, Math.max(u, v));
    if (to <= from) return [];
  }
  if (Math.abs(drift) / other > Math.max(0.02, (3 * slack) / Math.min(length, other))) return [];
  const [c, e] = [onA + (onB - onA) * from, onA + (onB - onA) * to];
  return [[Math.min(c, e), Math.max(c, e)]];
}
