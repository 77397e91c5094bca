// The way of a rope -> a tube of straight rods that lies on the wood, for drawings.
import type { Prism, Shape, Vec3 } from "../../geometry/shape.ts";
import { add, cross, length, subtract, times, unit } from "../../geometry/vector.ts";
import type { Stretch, WayPoint } from "./thread.ts";

/** One rod a stretch, half the rope's thickness off the face that it lies on. No two of them overlap. */
export function tubeOf(stretches: readonly Stretch[], thickness: number): readonly Shape[] {
  const radius = thickness / 2;
  return stretches.map(({ from, to, kind }): Shape => {
    // Inside the wood it ends level with the face, under the rod that goes on from there.
    if (kind === "through") return rodBetween(from.at, to.at, radius);
    const start = lifted(from, to, radius);
    const stop = lifted(to, from, radius);
    return rodBetween(shortOf(start, stop, from, radius), shortOf(stop, start, to, radius), radius);
  });
}

/** A knot is shown as a short thick rod on the wood: two and a half ropes wide, two ropes long. */
const knotOf = (end: WayPoint | undefined, thickness: number): readonly Shape[] =>
  end?.kind === "mouth" ? [rodBetween(end.at, add(end.at, times(end.out, 2 * thickness)), 1.25 * thickness)] : [];

/** The knots at the ends of a way; what is tied to a hanger or a loop is hidden by it. */
export const knotsOf = (points: readonly WayPoint[], thickness: number): readonly Shape[] => [
  ...knotOf(points[0], thickness),
  ...knotOf(points.at(-1), thickness),
];

/** What hangs lies in the plane of the rope that comes out of the wood. */
function lifted(point: WayPoint, beside: WayPoint, by: number): Vec3 {
  const out = point.kind === "mouth" ? point.out : beside.kind === "mouth" ? beside.out : ([0, 0, 0] as const);
  return add(point.at, times(out, by));
}

/** At a hanger a rod stops where it would run into the one that comes up on the other side. */
function shortOf(end: Vec3, other: Vec3, point: WayPoint, radius: number): Vec3 {
  if (point.kind !== "hanger") return end;
  const way = subtract(other, end);
  const level = Math.hypot(way[0], way[1]);
  const short = Math.min(level < radius ? radius : (radius * Math.abs(way[2])) / level, length(way) / 2);
  return add(end, times(unit(way), short));
}

function rodBetween(start: Vec3, stop: Vec3, radius: number): Shape {
  const run = subtract(stop, start);
  const z = unit(run);
  const aside: Vec3 = Math.abs(z[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0];
  const x = unit(cross(aside, z));
  const rod: Prism = {
    frame: { origin: start, x, y: cross(z, x) },
    outline: { kind: "circle", centre: [0, 0], radius },
    holes: [],
    depth: length(run),
  };
  return { ...rod, trims: [], removals: [] };
}
