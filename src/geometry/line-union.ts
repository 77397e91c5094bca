// Visible edges -> lines of a drawing: edges that lie on each other come once, with all the parts they belong to.
import type { SeenEdge } from "./hidden-lines.ts";
import type { Vec2 } from "./shape.ts";
import type { Tolerances } from "./tolerance.ts";

export type SceneLine = {
  /** Index of the part whose edge it is: the first, where edges of several lie on each other. */
  readonly owner: number;
  /** The other parts whose edges lie on it, ascending. */
  readonly shared: readonly number[];
  readonly kind: SeenEdge["kind"];
  readonly a: Vec2;
  readonly b: Vec2;
};

/** Two lines are near parallel up to this angle, in radians: about one degree. */
const nearParallel = 0.02;

/** A stretch kept, in its own direction, with the stretches of it that other parts share. */
type Kept = {
  readonly edge: SeenEdge;
  readonly a: Vec2;
  readonly b: Vec2;
  readonly length: number;
  readonly ux: number;
  readonly uy: number;
  readonly shares: { readonly from: number; readonly to: number; readonly owner: number }[];
};

/** The union of the edges; the longest keep their place, and shorter ones fill in what is not yet drawn. */
export function lineUnion(edges: readonly SeenEdge[], tolerances: Tolerances): SceneLine[] {
  const slack = tolerances.lineUnion;
  const buckets = new Map<number, Kept[]>();
  const kept: Kept[] = [];
  const ordered = edges
    .map((edge) => stretch(edge, edge.a, edge.b))
    .sort((s, t) => t.length - s.length || byPlace(s, t));
  for (const piece of ordered) {
    const direction = directionBucket(piece);
    let open: readonly (readonly [number, number])[] = [[0, piece.length]];
    for (const near of [direction - 1, direction, direction + 1]) {
      for (const over of buckets.get((near + bucketCount) % bucketCount) ?? []) {
        const covered = cover(piece, over, slack);
        if (covered === undefined) continue;
        if (over.edge.owner !== piece.edge.owner) over.shares.push({ ...covered.on, owner: piece.edge.owner });
        open = without(open, covered.from, covered.to);
      }
    }
    for (const [from, to] of open) {
      if (to - from <= 2 * slack && to - from < piece.length) continue;
      const rest = stretch(piece.edge, along(piece, from), along(piece, to));
      kept.push(rest);
      const bucket = buckets.get(direction);
      if (bucket === undefined) buckets.set(direction, [rest]);
      else bucket.push(rest);
    }
  }
  return kept.flatMap((line) => splitByShares(line, slack)).sort(byOwnerAndPlace);
}

const bucketCount = Math.floor(Math.PI / nearParallel);

function directionBucket({ ux, uy }: Kept): number {
  const angle = (Math.atan2(uy, ux) + 2 * Math.PI) % Math.PI;
  return Math.floor((angle / Math.PI) * bucketCount) % bucketCount;
}

function stretch(edge: SeenEdge, a: Vec2, b: Vec2): Kept {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return { edge, a, b, length, ux: (b[0] - a[0]) / length, uy: (b[1] - a[1]) / length, shares: [] };
}

function along(line: Kept, distance: number): Vec2 {
  if (distance <= 0) return line.a;
  if (distance >= line.length) return line.b;
  return [line.a[0] + line.ux * distance, line.a[1] + line.uy * distance];
}

/** The stretch of `piece` that `over` runs along within `slack`, and where that is on `over`. */
function cover(piece: Kept, over: Kept, slack: number) {
  if (Math.max(piece.a[0], piece.b[0]) < Math.min(over.a[0], over.b[0]) - slack) return undefined;
  if (Math.max(over.a[0], over.b[0]) < Math.min(piece.a[0], piece.b[0]) - slack) return undefined;
  if (Math.max(piece.a[1], piece.b[1]) < Math.min(over.a[1], over.b[1]) - slack) return undefined;
  if (Math.max(over.a[1], over.b[1]) < Math.min(piece.a[1], piece.b[1]) - slack) return undefined;
  // Both ends of the piece in the direction of the longer line.
  const [ax, ay] = [piece.a[0] - over.a[0], piece.a[1] - over.a[1]];
  const [bx, by] = [piece.b[0] - over.a[0], piece.b[1] - over.a[1]];
  const offA = over.ux * ay - over.uy * ax;
  const offB = over.ux * by - over.uy * bx;
  if (Math.abs(offB - offA) > Math.max(nearParallel * piece.length, slack)) return undefined;
  const onA = over.ux * ax + over.uy * ay;
  const onB = over.ux * bx + over.uy * by;
  const beside = whereWithin(offA, offB, -slack, slack);
  const alongside = whereWithin(onA, onB, -slack / 4, over.length + slack / 4);
  if (beside === undefined || alongside === undefined) return undefined;
  const from = Math.max(beside[0], alongside[0]);
  const to = Math.min(beside[1], alongside[1]);
  if (!(to > from)) return undefined;
  const [c, d] = [onA + (onB - onA) * from, onA + (onB - onA) * to];
  return {
    from: from * piece.length,
    to: to * piece.length,
    on: { from: Math.max(0, Math.min(c, d)), to: Math.min(over.length, Math.max(c, d)) },
  };
}

/** The share of [0, 1] over which start..end lies within least..most. */
function whereWithin(start: number, end: number, least: number, most: number): readonly [number, number] | undefined {
  if (Math.abs(end - start) < 1e-12) return start >= least && start <= most ? [0, 1] : undefined;
  const s = (least - start) / (end - start);
  const t = (most - start) / (end - start);
  const from = Math.max(0, Math.min(s, t));
  const to = Math.min(1, Math.max(s, t));
  return to > from ? [from, to] : undefined;
}

function without(open: readonly (readonly [number, number])[], from: number, to: number): readonly [number, number][] {
  const left: [number, number][] = [];
  for (const [a, b] of open) {
    if (to <= a || from >= b) left.push([a, b]);
    else {
      if (from > a) left.push([a, from]);
      if (to < b) left.push([to, b]);
    }
  }
  return left;
}

/** A line cut where the set of parts it belongs to changes, but not into pieces shorter than the slack allows. */
function splitByShares(line: Kept, slack: number): SceneLine[] {
  if (line.shares.length === 0) return [sceneLine(line, [line.edge.owner], 0, line.length)];
  const stops: number[] = [0];
  for (const stop of line.shares.flatMap(({ from, to }) => [from, to]).sort((s, t) => s - t)) {
    if (stop > (stops.at(-1) as number) + 2 * slack && stop < line.length - 2 * slack) stops.push(stop);
  }
  stops.push(line.length);
  const pieces: { owners: number[]; from: number; to: number }[] = [];
  for (let i = 0; i + 1 < stops.length; i++) {
    const [from, to] = [stops[i] as number, stops[i + 1] as number];
    const middle = (from + to) / 2;
    const owners = new Set([line.edge.owner]);
    for (const share of line.shares) if (share.from <= middle && share.to >= middle) owners.add(share.owner);
    const sorted = [...owners].sort((s, t) => s - t);
    const last = pieces.at(-1);
    if (last !== undefined && last.owners.join() === sorted.join()) last.to = to;
    else pieces.push({ owners: sorted, from, to });
  }
  return pieces.map(({ owners, from, to }) => sceneLine(line, owners, from, to));
}

function sceneLine(line: Kept, owners: readonly number[], from: number, to: number): SceneLine {
  const [owner, ...shared] = owners;
  if (owner === undefined) throw new Error("a line without an owner");
  return { owner, shared, kind: line.edge.kind, a: along(line, from), b: along(line, to) };
}

function byPlace(s: { readonly a: Vec2; readonly b: Vec2 }, t: { readonly a: Vec2; readonly b: Vec2 }): number {
  return s.a[0] - t.a[0] || s.a[1] - t.a[1] || s.b[0] - t.b[0] || s.b[1] - t.b[1];
}

function byOwnerAndPlace(s: SceneLine, t: SceneLine): number {
  return s.owner - t.owner || byPlace(s, t);
}
