// Loops as polygons and a grain that runs along x -> where the wood is split across its strands: its widths along the grain.
import { apart } from "./outline-faults.ts";
import type { Vec2 } from "./shape.ts";

/** A line of wood along the grain, from edge to edge; `degrees` lie between the grain and the way the wood runs on there. */
export type GrainSection = { readonly from: Vec2; readonly to: Vec2; readonly width: number; readonly degrees: number };

type Span = { readonly y: number; readonly low: number; readonly high: number };
/** Lines of one strand, one above the other. `free` says whether nothing follows below its first and above its last. */
type Strand = { readonly spans: readonly Span[]; readonly free: readonly [boolean, boolean] };

/** How many lines an inch are tried. */
const perInch = 32;

/**
 * The lines along the grain that are shorter than `under`, the shortest of a strand first, none within `under` of a shorter one. A line counts
 * where the strand runs on for as far as the line is long: to both sides, or, where it grows out of other wood, in all.
 */
export function shortGrainSections(loops: readonly (readonly Vec2[])[], under: number): GrainSection[] {
  return strandsOf(loops).flatMap(({ spans, free }) => {
    const [first, last] = [spans[0], spans.at(-1)];
    if (!first || !last) return [];
    const fromMiddle = ({ from }: GrainSection) => Math.abs(from[1] - (first.y + last.y) / 2);
    const found = spans.flatMap((span, i): GrainSection[] => {
      const width = span.high - span.low;
      const beyond = [free[0] ? span.y - first.y : width, free[1] ? last.y - span.y : width];
      if (width >= under || Math.min(...beyond) < width || last.y - first.y < width) return [];
      return [{ from: [span.low, span.y], to: [span.high, span.y], width, degrees: degreesAt(spans, i) }];
    });
    return apart(
      found.sort((a, b) => steps(a.width) - steps(b.width) || fromMiddle(a) - fromMiddle(b)),
      ({ from, to }) => [(from[0] + to[0]) / 2, from[1]],
      under,
    );
  });
}

/** Widths that a rounded last bit tells apart are one. */
const steps = (width: number): number => Math.round(width * 1e6);

/** Between the grain and the line of the strand's middles, over a quarter inch each way. */
function degreesAt(spans: readonly Span[], i: number): number {
  const [a, b] = [spans[Math.max(0, i - perInch / 4)], spans[Math.min(spans.length - 1, i + perInch / 4)]];
  if (!a || !b || a === b) return 90;
  return (Math.atan2(b.y - a.y, Math.abs(b.low + b.high - a.low - a.high) / 2) * 180) / Math.PI;
}

function strandsOf(loops: readonly (readonly Vec2[])[]): Strand[] {
  const heights = loops.flat().map(([, y]) => y);
  const [bottom, top] = [Math.min(...heights), Math.max(...heights)];
  const count = Math.max(1, Math.round((top - bottom) * perInch));
  const rows = Array.from({ length: count }, (_, i) => spansAt(loops, bottom + ((i + 0.5) * (top - bottom)) / count));
  const next = rows.map((row, i) => row.map((span) => touching(span, rows[i + 1] ?? [])));
  const before = rows.map((row, i) => row.map((span) => touching(span, rows[i - 1] ?? [])));
  const strands: Strand[] = [];
  rows.forEach((row, i) => {
    row.forEach((span, k) => {
      const follows = (r: number, s: Span): Span | undefined => {
        const [only, more] = next[r]?.[rows[r]?.indexOf(s) ?? -1] ?? [];
        const back = only && before[r + 1]?.[rows[r + 1]?.indexOf(only) ?? -1];
        return only && !more && back?.length === 1 ? only : undefined;
      };
      const [under, another] = before[i]?.[k] ?? [];
      if (under && !another && follows(i - 1, under) === span) return;
      const spans = [span];
      let [r, at] = [i, span];
      for (let up = follows(r, at); up; up = follows(r, at)) {
        spans.push(up);
        [r, at] = [r + 1, up];
      }
      const above = next[r]?.[rows[r]?.indexOf(at) ?? -1] ?? [];
      strands.push({ spans, free: [under === undefined, above.length === 0] });
    });
  });
  return strands;
}

const touching = (span: Span, others: readonly Span[]): Span[] =>
  others.filter(({ low, high }) => low < span.high && high > span.low);

/** Where a line along x lies in wood. */
function spansAt(loops: readonly (readonly Vec2[])[], y: number): Span[] {
  const crossings = loops
    .flatMap((points) =>
      points.flatMap(([ax, ay], i): number[] => {
        const [bx, by] = points[(i + 1) % points.length] ?? [ax, ay];
        return ay > y === by > y ? [] : [ax + ((y - ay) / (by - ay)) * (bx - ax)];
      }),
    )
    .sort((a, b) => a - b);
  return crossings.flatMap((low, i) => (i % 2 === 0 ? [{ y, low, high: crossings[i + 1] ?? low }] : []));
}
