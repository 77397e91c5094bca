// The way of a rope -> a tube of short straight prisms that lies on the wood, for drawings.
import type { Prism, Shape, Vec2, Vec3 } from "../../geometry/shape.ts";
import { add, cross, length, subtract, times, unit } from "../../geometry/vector.ts";
import type { Stretch, WayPoint } from "./thread.ts";

const corners = 8;

/** One prism a stretch, half the rope's thickness off the face that it lies on. */
export function tubeOf(stretches: readonly Stretch[], thickness: number): readonly Shape[] {
  return stretches.map(({ from, to }): Shape => {
    const start = lifted(from, to, thickness / 2);
    const stop = lifted(to, from, thickness / 2);
    return { ...prismBetween(start, stop, thickness / 2), trims: [], removals: [] };
  });
}

/** What hangs lies in the plane of the rope that comes out of the wood. */
function lifted(point: WayPoint, beside: WayPoint, by: number): Vec3 {
  const out = point.kind === "mouth" ? point.out : beside.kind === "mouth" ? beside.out : ([0, 0, 0] as const);
  return add(point.at, times(out, by));
}

function prismBetween(start: Vec3, stop: Vec3, radius: number): Prism {
  const run = subtract(stop, start);
  const z = unit(run);
  const aside: Vec3 = Math.abs(z[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0];
  const x = unit(cross(aside, z));
  const items = Array.from({ length: corners }, (_, i): Vec2 => {
    const turn = ((2 * i + 1) * Math.PI) / corners;
    return [radius * Math.cos(turn), radius * Math.sin(turn)];
  });
  return {
    frame: { origin: start, x, y: cross(z, x) },
    outline: { kind: "path", items },
    holes: [],
    depth: length(run),
  };
}
