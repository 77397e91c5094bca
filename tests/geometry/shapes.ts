// Boards as shapes, for tests: what stands where, in one line a board.
import type { Frame, Loop, Prism, Shape, Vec2, Vec3 } from "../../src/geometry/shape.ts";
import { cross, unit } from "../../src/geometry/vector.ts";

export const upright = (origin: Vec3): Frame => ({ origin, x: [1, 0, 0], y: [0, 1, 0] });

export const rectangle = (width: number, height: number): Loop => ({
  kind: "path",
  items: [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ],
});

export const path = (...items: (Loop & { kind: "path" })["items"]): Loop => ({ kind: "path", items });
export const circle = (centre: Vec2, radius: number): Loop => ({ kind: "circle", centre, radius });

export const prism = (frame: Frame, outline: Loop, depth: number): Prism => ({ frame, outline, holes: [], depth });

/** A plain board of this size with its least corner at `origin`. */
export const board = (origin: Vec3, [x, y, z]: Vec3): Shape => whole(prism(upright(origin), rectangle(x, y), z));

/** A shape with nothing cut from it. */
export const whole = (from: Prism): Shape => ({ ...from, trims: [], removals: [] });

/** A right-handed frame turned any way. */
export function turnedFrame(origin: Vec3, toward: Vec3, roll: Vec3): Frame {
  const z = unit(cross(toward, roll));
  const x = unit(toward);
  return { origin, x, y: cross(z, x) };
}
