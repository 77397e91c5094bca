// A removal -> the same cut run out past the board wherever it ends flush with the board's outside.
import type { Profile } from "./profile.ts";
import type { Prism, Shape, Trim, Vec2, Vec3 } from "./shape.ts";
import { dot, frameZ, placed, turned, unit } from "./vector.ts";

/** An outline's points where the cutter has them, and the heights of its bottom and top. */
export type Cutter = { readonly points: readonly Vec2[]; readonly bottom: number; readonly top: number };

/**
 * Flush faces are where a kernel's rounding leaves skins of no thickness; a saw is run out past the board for the same
 * reason. Only faces that no wood lies beyond are moved, and only so that no other face of the cutter leans.
 */
export function overrun(removal: Prism, profile: Profile, shape: Shape, boardPoints: readonly Vec2[]): Cutter {
  const corners = boardPoints.flatMap(([x, y]): Vec3[] => [
    [x, y, 0],
    [x, y, shape.depth],
  ]);
  const isOutside = (normal: Vec3, point: Vec3): boolean => {
    const offset = dot(normal, point);
    const near = 1e-9 * (1 + Math.abs(offset));
    return corners.every((p) => dot(normal, p) <= offset + near) || shape.trims.some(isFlush(normal, offset, near));
  };
  const far = removal.depth;
  const z = frameZ(removal.frame);
  const down: Vec3 = [-z[0], -z[1], -z[2]];
  const points: Vec2[] = [...profile.points];
  profile.points.forEach((from, i) => {
    const next = (i + 1) % points.length;
    const to = profile.points[next] ?? from;
    if (profile.walls[i] !== undefined || !isSquareSide(profile.points, i)) return;
    const size = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const out: Vec2 = [(to[1] - from[1]) / size, (from[0] - to[0]) / size];
    if (!isOutside(turned(removal.frame, [out[0], out[1], 0]), placed(removal.frame, [from[0], from[1], 0]))) return;
    for (const k of [i, next]) {
      const p = points[k] ?? from;
      points[k] = [p[0] + out[0] * far, p[1] + out[1] * far];
    }
  });
  return {
    points,
    bottom: isOutside(down, removal.frame.origin) ? -far : 0,
    top: removal.depth + (isOutside(z, placed(removal.frame, [0, 0, removal.depth])) ? far : 0),
  };
}

const isFlush =
  (normal: Vec3, offset: number, near: number) =>
  (trim: Trim): boolean => {
    const other = unit(trim.normal);
    return dot(normal, other) > 1 - 1e-12 && Math.abs(dot(other, trim.point) - offset) < near;
  };

/** Whether both neighbours of side i stand square to it on its inner side, so that they only grow when it moves out. */
function isSquareSide(points: readonly Vec2[], i: number): boolean {
  const at = (k: number): Vec2 => points[(k + points.length) % points.length] ?? [0, 0];
  const [before, from, to, after] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
  const [u, v]: Vec2 = [to[0] - from[0], to[1] - from[1]];
  const stands = (foot: Vec2, top: Vec2): boolean => {
    const [a, b]: Vec2 = [top[0] - foot[0], top[1] - foot[1]];
    return Math.abs(a * u + b * v) < 1e-12 * Math.hypot(a, b) * Math.hypot(u, v) && u * b - v * a > 0;
  };
  return stands(from, before) && stands(to, after);
}
