// Loops as polygons -> where the wood tapers to a tip: more of it than a disc of the least width can fill.
import { Clipper, EndType, JoinType, type Path64 } from "clipper2-ts";
import { apart } from "./outline-faults.ts";
import { signedArea } from "./profile.ts";
import type { Vec2 } from "./shape.ts";

/**
 * `at` is the tip; `base` the middle of the nearest disc of that width that lies in wood; the wood is narrower than the disc over the last
 * `long` up to the tip (exact for a straight taper, near it for a round one).
 */
export type Tip = { readonly at: Vec2; readonly base: Vec2; readonly long: number };

/** Steps an inch is cut into for the shrunken wood. */
const grid = 100_000;

/**
 * Tips thinner than `width`, the longest first: those that stand out of every disc of that width in the wood by more than a corner of
 * `degrees` does. The first loop is the edge. A piece that no such disc fits into has no tips: all of it is thin.
 */
export function thinTips(loops: readonly (readonly Vec2[])[], width: number, degrees: number): Tip[] {
  const blunt = (width / 2) * (1 / Math.sin((degrees * Math.PI) / 360) - 1);
  const paths = loops.map((points, i): Path64 => {
    const turned = signedArea(points) > 0 === (i === 0) ? points : [...points].reverse();
    return turned.map(([x, y]) => ({ x: Math.round(x * grid), y: Math.round(y * grid) }));
  });
  const shrunk = Clipper.inflatePaths(paths, (-width / 2) * grid, JoinType.Round, EndType.Polygon, 2, grid / 5000);
  const sides = shrunk.flatMap((path) =>
    path.map((p, i) => [toVec(p), toVec(path[(i + 1) % path.length] ?? p)] as const),
  );
  if (sides.length === 0) return [];
  const tips = loops.flatMap((points) =>
    points.flatMap((at): Tip[] => {
      const base = nearestOn(sides, at);
      const out = Math.hypot(at[0] - base[0], at[1] - base[1]) - width / 2;
      return out > blunt + 2 / grid ? [{ at, base, long: Math.sqrt(out * (out + width)) }] : [];
    }),
  );
  return apart(
    tips.sort((a, b) => b.long - a.long),
    ({ at }) => at,
    width,
  );
}

const toVec = ({ x, y }: { readonly x: number; readonly y: number }): Vec2 => [x / grid, y / grid];

function nearestOn(sides: readonly (readonly [Vec2, Vec2])[], [x, y]: Vec2): Vec2 {
  let best: Vec2 = [0, 0];
  let least = Number.POSITIVE_INFINITY;
  for (const [[ax, ay], [bx, by]] of sides) {
    const [ux, uy] = [bx - ax, by - ay];
    const square = ux * ux + uy * uy;
    const t = square === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * ux + (y - ay) * uy) / square));
    const gap = Math.hypot(ax + t * ux - x, ay + t * uy - y);
    if (gap < least) [best, least] = [[ax + t * ux, ay + t * uy], gap];
  }
  return best;
}
