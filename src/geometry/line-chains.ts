// Lines -> chains: lines that meet end to end made one path, as straight on as they go, with straight runs made one step.
import type { Vec2 } from "./shape.ts";

/** The sharpest turn a chain takes, as a cosine: about 50 degrees. Sharper corners begin a new chain. */
const sharpestTurn = 0.64;

type Segment = { readonly a: Vec2; readonly b: Vec2 };

/** Chains of two points or more, in the order of their first lines; ends within `reach` of each other count as one. */
export function lineChains(lines: readonly Segment[], reach: number): readonly (readonly Vec2[])[] {
  const ends = endIndex(lines, reach);
  const used = new Uint8Array(lines.length);
  const chains: Vec2[][] = [];
  lines.forEach(({ a, b }, start) => {
    if (used[start]) return;
    used[start] = 1;
    const forward = walk(b, a, used, ends);
    const backward = walk(a, b, used, ends);
    chains.push(straightened([...backward.reverse(), a, b, ...forward], reach / 20));
  });
  return chains;
}

/** Points that follow from `at`, coming from `from`; marks the lines it takes as used. */
function walk(at: Vec2, from: Vec2, used: Uint8Array, ends: EndIndex): Vec2[] {
  const points: Vec2[] = [];
  for (;;) {
    let best = -1;
    let straightest = sharpestTurn;
    let next: Vec2 = at;
    for (const { line, here, there } of ends(at)) {
      if (used[line]) continue;
      const straight = cosine(from, at, here, there);
      if (straight <= straightest) continue;
      straightest = straight;
      best = line;
      next = there;
    }
    if (best < 0) return points;
    used[best] = 1;
    points.push(next);
    from = at;
    at = next;
  }
}

/** Cosine of the turn from the way a-b to the way c-d. */
function cosine(a: Vec2, b: Vec2, c: Vec2, d: Vec2): number {
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
  return (ux * vx + uy * vy) / (Math.hypot(ux, uy) * Math.hypot(vx, vy) || 1);
}

type End = { readonly line: number; readonly here: Vec2; readonly there: Vec2 };
type EndIndex = (at: Vec2) => readonly End[];

/** Finds the line ends within `reach` of a point. */
function endIndex(lines: readonly Segment[], reach: number): EndIndex {
  const cells = new Map<string, End[]>();
  const key = (i: number, j: number) => `${i} ${j}`;
  const add = (end: End) => {
    const k = key(Math.floor(end.here[0] / reach), Math.floor(end.here[1] / reach));
    const cell = cells.get(k);
    if (cell === undefined) cells.set(k, [end]);
    else cell.push(end);
  };
  lines.forEach(({ a, b }, line) => {
    add({ line, here: a, there: b });
    add({ line, here: b, there: a });
  });
  return (at) => {
    const found: End[] = [];
    const [column, row] = [Math.floor(at[0] / reach), Math.floor(at[1] / reach)];
    for (let j = row - 1; j <= row + 1; j++) {
      for (let i = column - 1; i <= column + 1; i++) {
        for (const end of cells.get(key(i, j)) ?? []) {
          if (Math.hypot(end.here[0] - at[0], end.here[1] - at[1]) <= reach) found.push(end);
        }
      }
    }
    return found;
  };
}

/** The chain without points that lie on the way from the last kept point to the next, within `slack`. */
function straightened(chain: readonly Vec2[], slack: number): Vec2[] {
  const [first] = chain;
  if (first === undefined) return [];
  const kept: Vec2[] = [first];
  let anchor = 0;
  for (let i = 1; i + 1 < chain.length; i++) {
    const onTheWay = chain.slice(anchor + 1, i + 1).every((p) => {
      return offLine(p, chain[anchor] as Vec2, chain[i + 1] as Vec2) <= slack;
    });
    if (onTheWay) continue;
    kept.push(chain[i] as Vec2);
    anchor = i;
  }
  kept.push(chain[chain.length - 1] as Vec2);
  return kept;
}

/** Distance of p from the stretch a-b. */
function offLine(p: Vec2, a: Vec2, b: Vec2): number {
  const [ex, ey] = [b[0] - a[0], b[1] - a[1]];
  const t = Math.max(0, Math.min(1, ((p[0] - a[0]) * ex + (p[1] - a[1]) * ey) / (ex * ex + ey * ey || 1)));
  return Math.hypot(a[0] + ex * t - p[0], a[1] + ey * t - p[1]);
}
