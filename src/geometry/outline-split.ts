// A loop -> the same loop with a corner wherever it is furthest left, right, up or down, so that its box is true.
import { arcOf } from "./outline-arc.ts";
import type { Loop, PathItem, Vec2 } from "./shape.ts";

export type Path = Loop & { readonly kind: "path" };
export type Box2 = { readonly min: Vec2; readonly max: Vec2 };

/** The point an item ends at. */
export const endOf = (item: PathItem): Vec2 => ("to" in item ? item.to : item);

/** Every item with the point it starts from. */
export function sidesOf(path: Path): { readonly from: Vec2; readonly item: PathItem }[] {
  return path.items.map((item, i) => {
    const before = path.items[(i + path.items.length - 1) % path.items.length] ?? item;
    return { from: endOf(before), item };
  });
}

export function splitAtExtremes(path: Path): Path {
  return { kind: "path", items: sidesOf(path).flatMap(({ from, item }) => splitItem(from, item)) };
}

function splitItem(from: Vec2, item: PathItem): PathItem[] {
  if ("leave" in item) return splitCubic([from, item.leave, item.reach, item.to]);
  return "mid" in item ? splitArc(from, item.mid, item.to) : [item];
}

/** The box of a loop that has been split. */
export function boxOf(loops: readonly Loop[]): Box2 {
  const points = loops.flatMap((loop): Vec2[] => {
    if (loop.kind === "path") return loop.items.map(endOf);
    const [[x, y], r] = [loop.centre, loop.radius];
    return [
      [x - r, y - r],
      [x + r, y + r],
    ];
  });
  const of = (pick: (...values: number[]) => number): Vec2 => [
    pick(...points.map((p) => p[0])),
    pick(...points.map((p) => p[1])),
  ];
  return { min: of(Math.min), max: of(Math.max) };
}

function splitArc(from: Vec2, mid: Vec2, to: Vec2): PathItem[] {
  const arc = arcOf(from, mid, to);
  if (!arc) return [to];
  const { start, sweep, at } = arc;
  const quarter = Math.PI / 2;
  const stops: number[] = [];
  const turn = Math.sign(sweep);
  // The quarters of the circle that lie well within the arc, in the order it is run.
  for (let k = Math.ceil((turn * start) / quarter); ; k++) {
    const along = k * quarter - turn * start;
    if (along >= Math.abs(sweep) - 1e-9) break;
    if (along > 1e-9) stops.push(turn * along);
  }
  const ends = [0, ...stops, sweep];
  return ends.slice(1).map((end, i) => ({
    mid: at(((ends[i] ?? 0) + end) / 2),
    to: i === stops.length ? to : at(end),
  }));
}

type Cubic = readonly [Vec2, Vec2, Vec2, Vec2];

function splitCubic(cubic: Cubic): PathItem[] {
  const stops = [0, 1].flatMap((k) => turningPoints(cubic.map((p) => p[k] as number))).sort((a, b) => a - b);
  const items: PathItem[] = [];
  let rest = cubic;
  let done = 0;
  for (const t of stops) {
    if (t - done < 1e-6) continue;
    const [first, second] = halves(rest, (t - done) / (1 - done));
    items.push({ leave: first[1], reach: first[2], to: first[3] });
    [rest, done] = [second, t];
  }
  return [...items, { leave: rest[1], reach: rest[2], to: rest[3] }];
}

/** Where the derivative of one coordinate is nothing, well within the curve. */
function turningPoints([p = 0, q = 0, r = 0, s = 0]: readonly number[]): number[] {
  const [a, b, c] = [s - 3 * r + 3 * q - p, 2 * (r - 2 * q + p), q - p];
  const roots = (): number[] => {
    if (Math.abs(a) < 1e-12) return Math.abs(b) < 1e-12 ? [] : [-c / b];
    const square = b * b - 4 * a * c;
    return square < 0 ? [] : [(-b - Math.sqrt(square)) / (2 * a), (-b + Math.sqrt(square)) / (2 * a)];
  };
  return roots().filter((t) => t > 1e-6 && t < 1 - 1e-6);
}

const mix = (p: Vec2, q: Vec2, t: number): Vec2 => [p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t];

/** Both parts of a cubic cut at t (de Casteljau). */
function halves([p, q, r, s]: Cubic, t: number): [Cubic, Cubic] {
  const [a, b, c] = [mix(p, q, t), mix(q, r, t), mix(r, s, t)];
  const [d, e] = [mix(a, b, t), mix(b, c, t)];
  const f = mix(d, e, t);
  return [
    [p, a, d, f],
    [f, e, c, s],
  ];
}
