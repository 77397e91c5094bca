// Three points -> the arc through them; undefined where they stand in one line.
import type { Vec2 } from "./shape.ts";

export type Arc = {
  readonly centre: Vec2;
  readonly radius: number;
  /** Radians; a sweep above 0 runs counter-clockwise. */
  readonly start: number;
  readonly sweep: number;
  /** The point this far round from the start. */
  readonly at: (angle: number) => Vec2;
};

export function arcOf(from: Vec2, mid: Vec2, to: Vec2): Arc | undefined {
  const [ax, ay] = [mid[0] - from[0], mid[1] - from[1]];
  const [bx, by] = [to[0] - from[0], to[1] - from[1]];
  const double = 2 * (ax * by - ay * bx);
  if (Math.abs(double) < 1e-12 * (ax * ax + ay * ay + bx * bx + by * by)) return undefined;
  const [a2, b2] = [ax * ax + ay * ay, bx * bx + by * by];
  const centre: Vec2 = [from[0] + (by * a2 - ay * b2) / double, from[1] + (ax * b2 - bx * a2) / double];
  const radius = Math.hypot(from[0] - centre[0], from[1] - centre[1]);
  const start = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
  const end = Math.atan2(to[1] - centre[1], to[0] - centre[0]);
  const turn = double > 0 ? 1 : -1;
  const sweep = turn * ((turn * (end - start) + 4 * Math.PI) % (2 * Math.PI));
  const at = (angle: number): Vec2 => [
    centre[0] + radius * Math.cos(start + angle),
    centre[1] + radius * Math.sin(start + angle),
  ];
  return { centre, radius, start, sweep, at };
}
