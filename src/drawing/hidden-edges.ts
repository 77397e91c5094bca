// A picture of one board -> the edges that it hides itself, and what was sawn off its blank: broken lines of the flat views.
import { lineChains } from "../geometry/line-chains.ts";
import type { Vec2 } from "../geometry/shape.ts";
import { inInches } from "../geometry/tolerance.ts";
import { project } from "../geometry/view.ts";
import type { Mark, Paper } from "./drawing.ts";
import { onPaper, type Picture, type Placement } from "./picture.ts";

type Line = readonly [Vec2, Vec2];

/** On paper: a dashed line that runs nearer to another line is not drawn, nor a shorter one (mm). */
const nearest = 0.2;
const shortest = 0.4;

const apart = (a: number, b: number, c: number, d: number, near: number): boolean =>
  Math.min(a, b) > Math.max(c, d) + near || Math.min(c, d) > Math.max(a, b) + near;

/** The parts of a line, from 0 to 1, that run beside another one within `near`. Asked of every pair, so most are put aside at once. */
function coveredBy([a, b]: Line, [c, d]: Line, near: number): readonly [number, number] | undefined {
  if (apart(a[0], b[0], c[0], d[0], near) || apart(a[1], b[1], c[1], d[1], near)) return undefined;
  const [x, y] = [b[0] - a[0], b[1] - a[1]];
  const length = Math.hypot(x, y);
  const offC = Math.abs((c[1] - a[1]) * x - (c[0] - a[0]) * y);
  const offD = Math.abs((d[1] - a[1]) * x - (d[0] - a[0]) * y);
  if (Math.max(offC, offD) > near * length) return undefined;
  const alongC = ((c[0] - a[0]) * x + (c[1] - a[1]) * y) / length ** 2;
  const alongD = ((d[0] - a[0]) * x + (d[1] - a[1]) * y) / length ** 2;
  const [from, to] = [Math.min(alongC, alongD), Math.max(alongC, alongD)];
  return to <= 0 || from >= 1 ? undefined : [from, to];
}

const lengthOf = (chain: readonly Paper[]): number =>
  chain.slice(1).reduce((sum, to, i) => {
    const from = chain[i] as Paper;
    return sum + Math.hypot(to[0] - from[0], to[1] - from[1]);
  }, 0);

/** The parts of a line that no other one runs beside. */
function uncovered(line: Line, others: readonly Line[], near: number): readonly (readonly [number, number])[] {
  const covered: (readonly [number, number])[] = [];
  for (const other of others) {
    const stretch = coveredBy(line, other, near);
    if (stretch !== undefined) covered.push(stretch);
  }
  covered.sort((one, two) => one[0] - two[0]);
  const free: [number, number][] = [];
  let at = 0;
  for (const [from, to] of covered) {
    if (from > at) free.push([at, from]);
    at = Math.max(at, to);
  }
  if (at < 1) free.push([at, 1]);
  return free;
}

/** None of a curved wall, and none under a line that is seen (ISO 128: of lines that fall together the seen one is drawn). */
export function drawHiddenEdges(picture: Picture, placement: Placement): Mark[] {
  const near = nearest / placement.scale;
  const taken: Line[] = picture.scene.lines.map(({ a, b }): Line => [a, b]);
  const found: { readonly a: Vec2; readonly b: Vec2 }[] = [];
  for (const { member } of picture.bodies) {
    const edges = member.solid.edges
      .filter(({ smooth, faces }) => !smooth && faces.some((i) => member.solid.faces[i]?.wall === undefined))
      .map(({ a, b }): Line => [project(picture.view, a), project(picture.view, b)])
      .map((line) => ({ line, length: Math.hypot(line[1][0] - line[0][0], line[1][1] - line[0][1]) }))
      .filter(({ length }) => length > 1e-6)
      .sort((a, b) => b.length - a.length);
    for (const { line } of edges) {
      const [a, b] = line;
      for (const [from, to] of uncovered(line, taken, near)) {
        const ends = [from, to].map((t): Vec2 => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t]) as [Vec2, Vec2];
        taken.push(ends);
        found.push({ a: ends[0], b: ends[1] });
      }
    }
  }
  // The chords of a curve make one line.
  const chains = lineChains(found, inInches.lineUnion)
    .map((chain) => chain.map((p) => onPaper(picture, placement, p)))
    .filter((chain) => lengthOf(chain) >= shortest);
  return chains.length === 0 ? [] : [{ kind: "lines", line: "hidden", chains }];
}

/** The outline of the blank, where no wood is left to show it: what a curve or a slope is measured from. */
export function drawBlankRest(picture: Picture, placement: Placement, corners: readonly Paper[]): Mark[] {
  const seen = picture.scene.lines.map(
    ({ a, b }): Line => [onPaper(picture, placement, a), onPaper(picture, placement, b)],
  );
  const chains = corners.flatMap((from, i): Paper[][] => {
    const to = corners[(i + 1) % corners.length] as Paper;
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return uncovered([from, to], seen, nearest)
      .filter(([start, end]) => (end - start) * length > 1)
      .map((ends) => ends.map((t): Paper => [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t]));
  });
  return chains.length === 0 ? [] : [{ kind: "lines", line: "path", chains }];
}
