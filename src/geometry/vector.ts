// Points and directions in space: the sums the whole geometry stage is made of.
import type { Frame, Vec3 } from "./shape.ts";

export const add = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const subtract = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const times = (a: Vec3, k: number): Vec3 => [a[0] * k, a[1] * k, a[2] * k];
export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const length = (a: Vec3): number => Math.hypot(a[0], a[1], a[2]);
export const unit = (a: Vec3): Vec3 => times(a, 1 / length(a));

/** The third axis of a frame. */
export const frameZ = (frame: Frame): Vec3 => cross(frame.x, frame.y);

/** A direction told in a frame, in the space the frame stands in. */
export function turned(frame: Frame, v: Vec3): Vec3 {
  const z = frameZ(frame);
  const along = (i: 0 | 1 | 2) => frame.x[i] * v[0] + frame.y[i] * v[1] + z[i] * v[2] + 0;
  return [along(0), along(1), along(2)];
}

/** A point told in a frame, in the space the frame stands in. */
export const placed = (frame: Frame, p: Vec3): Vec3 => add(turned(frame, p), frame.origin);

/** Twice the signed area of a flat loop, as a vector square to it (Newell's sum), taken about its first point. */
export function doubleArea(loop: readonly Vec3[]): Vec3 {
  const first = loop[0];
  let sum: Vec3 = [0, 0, 0];
  if (first === undefined) return sum;
  let before = subtract(loop[1] ?? first, first);
  for (let i = 2; i < loop.length; i++) {
    const here = subtract(loop[i] ?? first, first);
    sum = add(sum, cross(before, here));
    before = here;
  }
  return sum;
}
