// The contacts of two members -> the patches that fasteners may go through, with their own two directions.
import type { Vec3 } from "../../geometry/shape.ts";
import { cross, dot, subtract, times, unit } from "../../geometry/vector.ts";
import type { Contact } from "../item.ts";

/** A flat patch: `normal` points from a into b, and normal . p = offset. `long` and `short` run along its own two sides. */
export type Seat = {
  readonly normal: Vec3;
  readonly offset: number;
  readonly area: number;
  readonly patch: readonly Vec3[];
  readonly long: Vec3;
  readonly short: Vec3;
};

/** Where a patch starts and stops along a direction. */
export function reachOf(seat: Pick<Seat, "patch">, way: Vec3): { low: number; high: number } {
  const values = seat.patch.map((p) => dot(p, way));
  return { low: Math.min(...values), high: Math.max(...values) };
}

/** Where the line along the longer side, so far along the shorter one, comes into a patch and leaves it: less than its reach where its ends are slanted. */
export function reachAlong(
  { patch, long, short }: Pick<Seat, "patch" | "long" | "short">,
  onShort: number,
): { low: number; high: number } {
  const crossed = patch.flatMap((corner, i) => {
    const next = patch[(i + 1) % patch.length] ?? corner;
    const [from, to] = [dot(corner, short), dot(next, short)];
    if (from > onShort === to > onShort) return [];
    return [dot(corner, long) + ((onShort - from) / (to - from)) * dot(subtract(next, corner), long)];
  });
  return { low: Math.min(...crossed), high: Math.max(...crossed) };
}

/** The patches where a meets b, seen from a, largest first. */
export function seatsOf(contacts: readonly Contact[], a: string): Seat[] {
  return contacts
    .map((contact): Seat => {
      const { patch, area } = contact;
      const normal = contact.a === a ? contact.normal : times(contact.normal, -1);
      const offset = dot(normal, patch[0] ?? [0, 0, 0]);
      const one = forward(longestSide(patch));
      const other = forward(cross(normal, one));
      const room = (way: Vec3) => reachOf({ patch }, way).high - reachOf({ patch }, way).low;
      const [long, short] = room(other) > room(one) + 1e-9 ? [other, one] : [one, other];
      return { normal, offset, area, patch, long, short };
    })
    .sort((p, q) => q.area - p.area);
}

/** Inches from a point of the patch to its nearest edge; below 0 where the point lies outside. */
export function roomAround({ patch, long, short }: Pick<Seat, "patch" | "long" | "short">, point: Vec3): number {
  let inside = false;
  let least = Number.POSITIVE_INFINITY;
  patch.forEach((corner, i) => {
    const next = patch[(i + 1) % patch.length] ?? corner;
    const [u, v] = [dot(subtract(corner, point), long), dot(subtract(corner, point), short)];
    const [du, dv] = [dot(subtract(next, corner), long), dot(subtract(next, corner), short)];
    const square = du * du + dv * dv;
    const t = square === 0 ? 0 : Math.min(1, Math.max(0, -(u * du + v * dv) / square));
    least = Math.min(least, Math.hypot(u + t * du, v + t * dv));
    if (v > 0 !== v + dv > 0 && u - (v / dv) * du > 0) inside = !inside;
  });
  return inside ? least : -least;
}

function longestSide(patch: readonly Vec3[]): Vec3 {
  const sides = patch.map((p, i) => subtract(patch[(i + 1) % patch.length] ?? p, p));
  return unit(sides.reduce((best, side) => (dot(side, side) > dot(best, best) + 1e-9 ? side : best)));
}

/** The same line toward right, back or top, so that rows are counted alike however a patch was found. */
export function forward(way: Vec3): Vec3 {
  const most = way.reduce((best, v) => (Math.abs(v) > Math.abs(best) + 1e-9 ? v : best));
  return times(way, most < 0 ? -1 : 1);
}
