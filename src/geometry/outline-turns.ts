// A loop -> its tight turns toward one hand: where a blade would have to follow a smaller radius than it can.
import { arcOf } from "./outline-arc.ts";
import { apart } from "./outline-faults.ts";
import { type Path, sidesOf } from "./outline-split.ts";
import { signedArea } from "./profile.ts";
import type { Loop, Vec2 } from "./shape.ts";

export type Turn = { readonly radius: number; readonly at: Vec2; readonly sharp: boolean };

/** Points a cubic's bend is measured at. */
const samples = 64;

/**
 * Turns tighter than `least` in which wood lies outside the bend: to the right going counter-clockwise round an edge, to the
 * left round a cut-out. With corners, a kink of more than half a degree is a turn of radius 0. The tightest comes first, and none
 * lies within `least` of a tighter one.
 */
export function tightInsideTurns(
  loop: Loop,
  isCutOut: boolean,
  chord: number,
  withCorners: boolean,
  least: number,
): Turn[] {
  if (loop.kind === "circle")
    return isCutOut && loop.radius < least ? [{ radius: loop.radius, at: loop.centre, sharp: false }] : [];
  const ccw = signedArea(roughPoints(loop, chord)) > 0;
  const inward = isCutOut === ccw ? 1 : -1;
  const turns = [...bendsOf(loop, inward), ...(withCorners ? kinksOf(loop, inward) : [])];
  const tight = turns.filter(({ radius }) => radius < least).sort((a, b) => a.radius - b.radius);
  return apart(tight, ({ at }) => at, least);
}

/** The loop's points in the order it is written; a profile is already turned. */
function roughPoints(path: Path, chord: number): Vec2[] {
  return sidesOf(path).flatMap(({ from, item }): Vec2[] => {
    if ("leave" in item) return [from, ...cubicPoints(from, item.leave, item.reach, item.to).map(({ p }) => p)];
    const arc = "mid" in item ? arcOf(from, item.mid, item.to) : undefined;
    if (!arc) return [from];
    const n = Math.max(4, Math.ceil(Math.abs(arc.sweep) / Math.sqrt((8 * chord) / arc.radius)));
    return Array.from({ length: n }, (_, i) => arc.at((arc.sweep * i) / n));
  });
}

function bendsOf(path: Path, inward: number): Turn[] {
  return sidesOf(path).flatMap(({ from, item }): Turn[] => {
    if ("leave" in item) {
      return cubicPoints(from, item.leave, item.reach, item.to).flatMap(({ p, bend }) =>
        bend * inward > 1e-9 ? [{ radius: 1 / Math.abs(bend), at: p, sharp: false }] : [],
      );
    }
    const arc = "mid" in item ? arcOf(from, item.mid, item.to) : undefined;
    return arc && arc.sweep * inward > 0 ? [{ radius: arc.radius, at: arc.at(arc.sweep / 2), sharp: false }] : [];
  });
}

function kinksOf(path: Path, inward: number): Turn[] {
  const sides = sidesOf(path)
    .map(({ from, item }) => ({ from, ...waysOf(from, item) }))
    .filter(({ leaves }) => Math.hypot(...leaves) > 0);
  return sides.flatMap(({ from, leaves }, i) => {
    const { arrives } = sides[(i + sides.length - 1) % sides.length] ?? { arrives: leaves };
    const turn = Math.atan2(
      arrives[0] * leaves[1] - arrives[1] * leaves[0],
      arrives[0] * leaves[0] + arrives[1] * leaves[1],
    );
    return turn * inward > (0.5 * Math.PI) / 180 ? [{ radius: 0, at: from, sharp: true }] : [];
  });
}

function waysOf(from: Vec2, item: Path["items"][number]): { leaves: Vec2; arrives: Vec2 } {
  const to = "to" in item ? item.to : item;
  const chord: Vec2 = [to[0] - from[0], to[1] - from[1]];
  const or = (way: Vec2): Vec2 => (Math.hypot(...way) > 1e-12 ? way : chord);
  if ("leave" in item) {
    return {
      leaves: or([item.leave[0] - from[0], item.leave[1] - from[1]]),
      arrives: or([to[0] - item.reach[0], to[1] - item.reach[1]]),
    };
  }
  const arc = "mid" in item ? arcOf(from, item.mid, to) : undefined;
  if (!arc) return { leaves: chord, arrives: chord };
  const turn = Math.sign(arc.sweep);
  const way = ([x, y]: Vec2): Vec2 => [-turn * (y - arc.centre[1]), turn * (x - arc.centre[0])];
  return { leaves: way(from), arrives: way(to) };
}

/** Points of a cubic with its bend there: above 0 to the left. */
function cubicPoints(p: Vec2, q: Vec2, r: Vec2, s: Vec2): { p: Vec2; bend: number }[] {
  return Array.from({ length: samples + 1 }, (_, i) => {
    const t = i / samples;
    const u = 1 - t;
    const at = (k: 0 | 1) => u ** 3 * p[k] + 3 * u * u * t * q[k] + 3 * u * t * t * r[k] + t ** 3 * s[k];
    const d = (k: 0 | 1) => 3 * (u * u * (q[k] - p[k]) + 2 * u * t * (r[k] - q[k]) + t * t * (s[k] - r[k]));
    const dd = (k: 0 | 1) => 6 * (u * (r[k] - 2 * q[k] + p[k]) + t * (s[k] - 2 * r[k] + q[k]));
    const speed = Math.hypot(d(0), d(1));
    const bend = speed > 1e-9 ? (d(0) * dd(1) - d(1) * dd(0)) / speed ** 3 : 0;
    return { p: [at(0), at(1)] as const, bend };
  });
}
