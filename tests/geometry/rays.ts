// A ray and a box -> where along the ray it enters and leaves: the slab test, with none of the drawing's own code in it.
import type { Vec3 } from "../../src/geometry/shape.ts";
import type { BoxInFrame } from "./box-solid.ts";

const dot = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** Distances along the ray from p; a ray that misses leaves before it enters. */
export function throughBox(p: Vec3, way: Vec3, { frame, size }: BoxInFrame): { enter: number; leave: number } {
  const { origin, x, y } = frame;
  const z: Vec3 = [x[1] * y[2] - x[2] * y[1], x[2] * y[0] - x[0] * y[2], x[0] * y[1] - x[1] * y[0]];
  const from: Vec3 = [p[0] - origin[0], p[1] - origin[1], p[2] - origin[2]];
  let [enter, leave] = [-Infinity, Infinity];
  [x, y, z].forEach((axis, i) => {
    const start = dot(from, axis);
    const speed = dot(way, axis);
    const far = size[i] as number;
    if (Math.abs(speed) < 1e-12) {
      if (start <= 1e-9 || start >= far - 1e-9) leave = -Infinity;
      return;
    }
    const [s, t] = [-start / speed, (far - start) / speed];
    enter = Math.max(enter, Math.min(s, t));
    leave = Math.min(leave, Math.max(s, t));
  });
  return { enter, leave };
}
