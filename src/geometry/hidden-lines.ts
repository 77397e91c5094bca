// Front faces -> the pieces of edges that are seen, by the edge-side test: a piece of edge is seen where, just beside it
// inside one of its own front faces, that face is the nearest to the viewer. Solids that only touch never tie there,
// since the face that touches from the other side is turned away.
import type { FrontFace, FrontFaces, Part } from "./front-faces.ts";
import type { Vec2 } from "./shape.ts";
import type { Tolerances } from "./tolerance.ts";
import { project, type View } from "./view.ts";

/** `outline` is where a curved wall turns away from the viewer; every other line is an edge of the board. */
export type SeenEdge = {
  readonly owner: number;
  readonly kind: "sharp" | "outline";
  readonly a: Vec2;
  readonly b: Vec2;
};

/** From and to, as shares of an edge from 0 to 1. */
type Span = readonly [number, number];

/** Every visible piece of every edge, part by part; edges of two boards that lie on each other come twice. */
export function seenEdges(parts: readonly Part[], fronts: FrontFaces, view: View, tolerances: Tolerances): SeenEdge[] {
  const seen: SeenEdge[] = [];
  parts.forEach(({ solid }, owner) => {
    const indexOf = fronts.indexOf[owner];
    const wideFront = (face: number): FrontFace | undefined => {
      const front = fronts.faces[indexOf?.[face] ?? -1];
      return front?.wide ? front : undefined;
    };
    for (const edge of solid.edges) {
      const sides = edge.faces.map(wideFront).filter((front) => front !== undefined);
      if (sides.length === 0 || (edge.smooth && sides.length === 2)) continue;
      const a = project(view, edge.a);
      const b = project(view, edge.b);
      const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
      if (length < tolerances.edgeShift) continue;
      const spans = sides.flatMap((side) => seenBeside(side, a, b, fronts, tolerances));
      const shortest = (2 * tolerances.lineUnion) / length;
      for (const [from, to] of withoutCrumbs(joined(spans, shortest), shortest)) {
        seen.push({ owner, kind: edge.smooth ? "outline" : "sharp", a: between(a, b, from), b: between(a, b, to) });
      }
    }
  });
  return seen;
}

/** The spans of the edge a-b beside which `own` is seen. */
function seenBeside(own: FrontFace, a: Vec2, b: Vec2, fronts: FrontFaces, tolerances: Tolerances): readonly Span[] {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const length = Math.hypot(dx, dy);
  const shift = (tolerances.edgeShift / length) * (insideIsLeft(own, a, b) ? 1 : -1);
  const line: Line = { x: a[0] - dy * shift, y: a[1] + dx * shift, dx, dy };
  const nearA = own.slopeX * line.x + own.slopeY * line.y + own.level;
  const nearB = nearA + own.slopeX * dx + own.slopeY * dy;
  const farthest = Math.min(nearA, nearB) + tolerances.depth;
  const [first, last] = longestInside(own, line);
  const hidden: Span[] = [];
  const candidates = fronts.inBox(
    Math.min(line.x, line.x + dx),
    Math.min(line.y, line.y + dy),
    Math.max(line.x, line.x + dx),
    Math.max(line.y, line.y + dy),
  );
  for (const index of candidates) {
    const cover = fronts.faces[index] as FrontFace;
    if (cover === own || !cover.wide || cover.nearest <= farthest) continue;
    const overA = cover.slopeX * line.x + cover.slopeY * line.y + cover.level - nearA - tolerances.depth;
    const rise = cover.slopeX * dx + cover.slopeY * dy - (nearB - nearA);
    const nearer = wherePositive(overA, rise);
    if (nearer === undefined) continue;
    for (const [from, to] of insideSpans(cover, line)) {
      const span: Span = [Math.max(from, nearer[0], first), Math.min(to, nearer[1], last)];
      if (span[1] > span[0]) hidden.push(span);
    }
  }
  // Where the shifted line leaves its face at a sharp corner, the corner is seen as the rest of the edge is.
  const shortest = (2 * tolerances.lineUnion) / length;
  return complement(
    hidden.map(([from, to]) => [from <= first + shortest ? 0 : from, to >= last - shortest ? 1 : to]),
    shortest,
  );
}

type Line = { readonly x: number; readonly y: number; readonly dx: number; readonly dy: number };

/** The share of [0, 1] where start + t rise > 0. */
function wherePositive(start: number, rise: number): Span | undefined {
  const end = start + rise;
  if (start > 0 && end > 0) return [0, 1];
  if (start <= 0 && end <= 0) return undefined;
  return start > 0 ? [0, -start / rise] : [-start / rise, 1];
}

/** Where a line runs inside a face: between its crossings with the loops, taken in pairs. */
function insideSpans(face: FrontFace, line: Line): Span[] {
  const { x, y, dx, dy } = line;
  const crossings: number[] = [];
  const square = dx * dx + dy * dy;
  for (const loop of face.loops) {
    let px = loop[loop.length - 2] as number;
    let py = loop[loop.length - 1] as number;
    let sideP = dx * (py - y) - dy * (px - x);
    for (let i = 0; i < loop.length; i += 2) {
      const qx = loop[i] as number;
      const qy = loop[i + 1] as number;
      const sideQ = dx * (qy - y) - dy * (qx - x);
      if (sideP > 0 !== sideQ > 0) {
        const share = sideP / (sideP - sideQ);
        crossings.push((dx * (px + (qx - px) * share - x) + dy * (py + (qy - py) * share - y)) / square);
      }
      px = qx;
      py = qy;
      sideP = sideQ;
    }
  }
  crossings.sort((s, t) => s - t);
  const spans: Span[] = [];
  for (let i = 0; i + 1 < crossings.length; i += 2) spans.push([crossings[i] as number, crossings[i + 1] as number]);
  return spans;
}

/** The part of [0, 1] over which the shifted edge is inside its own face; all of it where the face is too thin there. */
function longestInside(own: FrontFace, line: Line): Span {
  let longest: Span = [0, 0];
  for (const [from, to] of insideSpans(own, line)) {
    const span: Span = [Math.max(0, from), Math.min(1, to)];
    if (span[1] - span[0] > longest[1] - longest[0]) longest = span;
  }
  return longest[1] > longest[0] ? longest : [0, 1];
}

/** Whether the face lies left of its own edge a-b: the edge runs the way of the loop, or against it. */
function insideIsLeft(own: FrontFace, a: Vec2, b: Vec2): boolean {
  const mx = (a[0] + b[0]) / 2;
  const my = (a[1] + b[1]) / 2;
  let least = Infinity;
  let along = 0;
  for (const loop of own.loops) {
    let px = loop[loop.length - 2] as number;
    let py = loop[loop.length - 1] as number;
    for (let i = 0; i < loop.length; i += 2) {
      const qx = loop[i] as number;
      const qy = loop[i + 1] as number;
      const ex = qx - px;
      const ey = qy - py;
      const t = Math.max(0, Math.min(1, ((mx - px) * ex + (my - py) * ey) / (ex * ex + ey * ey || 1)));
      const distance = Math.hypot(px + ex * t - mx, py + ey * t - my);
      if (distance < least) {
        least = distance;
        along = ex * (b[0] - a[0]) + ey * (b[1] - a[1]);
      }
      px = qx;
      py = qy;
    }
  }
  return along > 0;
}

/** What of [0, 1] the spans leave, gaps up to `shortest` between them closed. */
function complement(spans: readonly Span[], shortest: number): Span[] {
  const left: Span[] = [];
  let done = 0;
  for (const [from, to] of joined(spans, shortest)) {
    if (from > done) left.push([done, from]);
    done = to;
  }
  if (done < 1) left.push([done, 1]);
  return left;
}

/** Spans in order, those that overlap or lie within `gap` of each other made one. */
function joined(spans: readonly Span[], gap: number): Span[] {
  const result: [number, number][] = [];
  for (const [from, to] of spans.toSorted((s, t) => s[0] - t[0] || s[1] - t[1])) {
    const last = result.at(-1);
    if (last !== undefined && from <= last[1] + gap) last[1] = Math.max(last[1], to);
    else result.push([from, to]);
  }
  return result;
}

/** Spans shorter than `shortest` left out, and run up to the ends of the edge where they stop that near to them. */
function withoutCrumbs(spans: readonly Span[], shortest: number): Span[] {
  return spans
    .map(([from, to]): Span => [from < shortest ? 0 : from, to > 1 - shortest ? 1 : to])
    .filter(([from, to]) => to - from > shortest || (from === 0 && to === 1));
}

function between(a: Vec2, b: Vec2, t: number): Vec2 {
  if (t === 0) return a;
  if (t === 1) return b;
  return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
}
