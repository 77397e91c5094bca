// Boards that go in as one and what is there already -> what blocks every straight way to their place.
import { distinct, fillsHull, type Hull, hullOf, isClear } from "../geometry/clear-way.ts";
import type { Vec3 } from "../geometry/shape.ts";
import type { Box, Solid } from "../geometry/solid.ts";
import { add, length, subtract, times } from "../geometry/vector.ts";

type Body = { readonly id: string; readonly solid: Solid };

const still: Vec3 = [0, 0, 0];
const signs = [-1, 0, 1] as const;
/** Along the axes, then between them. */
const plain: readonly Vec3[] = signs
  .flatMap((x) => signs.flatMap((y) => signs.map((z): Vec3 => [x, y, z])))
  .filter((way) => length(way) > 0)
  .sort((a, b) => length(a) - length(b))
  .map((way) => times(way, 1 / length(way)));
const axes = plain.slice(0, 6);
/** A first short way before the last one, inches: to lift over a lip, or to slip aside. */
const firstWays = [0.25, 0.5, 1, 2, 4, 8, 16, 32];

type Pair<There> = { readonly own: Hull; readonly other: There; readonly hull: Hull };

/**
 * What blocks them, those that block most ways first, and the last put in place of those without which there would be a way; none
 * where there is a way in. Ways are straight, or a short one and then a straight one. Only boards that fill their hull can block,
 * and only those that don't share the place: so a told one is surely blocked.
 */
export function blockersOf<There extends Body>(
  goingIn: readonly Body[],
  there: readonly There[],
  normals: readonly Vec3[],
): { readonly all: readonly There[]; readonly last?: There } {
  const far = 2 * reachOf([...goingIn, ...there].map(({ solid }) => solid.box));
  const pairs = goingIn.flatMap(({ solid }) =>
    there
      .filter((other) => fillsHull(solid) && fillsHull(other.solid))
      .map((other): Pair<There> => ({ own: hullOf(solid), other, hull: hullOf(other.solid) }))
      .filter(({ own, hull }) => isClear(own, still, still, hull)),
  );
  const ways = [...plain, ...distinct([...normals, ...goingIn.map(({ solid }) => solid.shape.frame.x)]).flatMap(both)];
  if (isOpen(pairs, ways, far)) return { all: [] };
  const stops = ways.flatMap((way) => stopOf(pairs, times(way, far), still) ?? []);
  const stopped = (one: There): number => stops.filter((other) => other === one).length;
  const all = [...new Set(stops)].sort((a, b) => stopped(b) - stopped(a));
  const last = there.findLast((one) =>
    isOpen(
      pairs.filter(({ other }) => other !== one),
      ways,
      far,
    ),
  );
  return { all, ...(last === undefined ? {} : { last }) };
}

function isOpen(pairs: readonly Pair<unknown>[], ways: readonly Vec3[], far: number): boolean {
  const isFree = (from: Vec3, to: Vec3): boolean => pairs.every(({ own, hull }) => isClear(own, from, to, hull));
  if (ways.some((way) => isFree(times(way, far), still))) return true;
  return axes.some((first) => {
    const most = firstWays.findIndex((step) => !isFree(still, times(first, step)));
    return firstWays.slice(0, most < 0 ? firstWays.length : most).some((step) => {
      const aside = times(first, step);
      return ways.some((way) => isFree(add(aside, times(way, far)), aside));
    });
  });
}

const stopOf = <There>(pairs: readonly Pair<There>[], from: Vec3, to: Vec3): There | undefined =>
  pairs.find(({ own, hull }) => !isClear(own, from, to, hull))?.other;

const both = (way: Vec3): readonly Vec3[] => [way, times(way, -1)];

/** From corner to corner of the box round them all. */
function reachOf(boxes: readonly Box[]): number {
  const end = (pick: (...all: number[]) => number, side: "min" | "max"): Vec3 =>
    [0, 1, 2].map((k) => pick(...boxes.map((box) => box[side][k] as number))) as unknown as Vec3;
  return length(subtract(end(Math.max, "max"), end(Math.min, "min")));
}
