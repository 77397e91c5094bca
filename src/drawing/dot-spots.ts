// The seen regions of one piece's members -> places well inside them where a leader's dot may lie.

import { dot } from "../geometry/vector.ts";
import type { Region } from "../geometry/visible-regions.ts";
import type { Paper } from "./drawing.ts";
import { onPaper, type Picture, type Placement } from "./picture.ts";

const grid = 14;
/** A dot this far inside lies well, mm: farther in it is no clearer, and its leader is longer. */
const wellInside = 2.5;

/**
 * A place for a dot: `room` to the nearest border, mm; `broad` if it is on one of the largest faces that are seen; how many pieces of
 * other wood a level leader crosses on its way out to either side.
 */
export type DotSpot = {
  readonly at: Paper;
  readonly room: number;
  readonly broad: boolean;
  readonly crossed: { readonly left: number; readonly right: number };
};

/** The best few places of each region, roomiest first. */
export function dotSpots(
  picture: Picture,
  placement: Placement,
  owners: ReadonlySet<number>,
  keepOff: readonly (readonly Paper[])[],
): readonly DotSpot[] {
  const regions = picture.scene.regions
    .filter((region) => owners.has(region.owner))
    .sort((a, b) => b.area - a.area)
    .slice(0, 12);
  const [largest] = regions;
  if (largest === undefined) return [];
  const paper = (p: readonly [number, number]): Paper => onPaper(picture, placement, p);
  const others = picture.scene.regions
    .filter((region) => !owners.has(region.owner))
    .map(({ owner, outer }) => ({ owner, loop: outer.map(paper) }));
  const isBroad = (region: Region): boolean =>
    region.area >= largest.area / 2 || dot(region.normal, largest.normal) > 1 - 1e-6;
  return regions
    .flatMap((region) =>
      roomiest(region, paper, keepOff).map((spot) => ({
        ...spot,
        broad: isBroad(region),
        crossed: crossedFrom(spot.at, others),
      })),
    )
    .sort((a, b) => b.room - a.room);
}

/** Pieces that a level line from here runs over, to the left and to the right. */
function crossedFrom(
  [u, v]: Paper,
  others: readonly { readonly owner: number; readonly loop: readonly Paper[] }[],
): DotSpot["crossed"] {
  const [left, right] = [new Set<number>(), new Set<number>()];
  for (const { owner, loop } of others) {
    loop.forEach((a, i) => {
      const b = loop[(i + 1) % loop.length] as Paper;
      if (a[1] > v === b[1] > v) return;
      const at = ((b[0] - a[0]) * (v - a[1])) / (b[1] - a[1]) + a[0];
      (at < u ? left : right).add(owner);
    });
  }
  return { left: left.size, right: right.size };
}

function roomiest(
  region: Region,
  paper: (p: readonly [number, number]) => Paper,
  keepOff: readonly (readonly Paper[])[],
): { at: Paper; room: number }[] {
  const loops = [region.outer, ...region.holes].map((loop) => loop.map(paper));
  const outer = loops[0] as Paper[];
  const [us, vs] = [outer.map((p) => p[0]), outer.map((p) => p[1])];
  const [left, right, top, bottom] = [Math.min(...us), Math.max(...us), Math.min(...vs), Math.max(...vs)];
  const found: { at: Paper; room: number }[] = [];
  for (let i = 1; i < grid; i++) {
    for (let j = 1; j < grid; j++) {
      const at: Paper = [left + ((right - left) * i) / grid, top + ((bottom - top) * j) / grid];
      if (isInside(at, loops)) found.push({ at, room: borderDistance(at, [...loops, ...keepOff]) });
    }
  }
  // The three roomiest that are not side by side, so that a shorter leader can be chosen.
  const best = found.sort((a, b) => b.room - a.room);
  const [first] = best;
  if (first === undefined) return [];
  const near = best.filter((spot) => spot.room > Math.min(first.room * 0.8, wellInside));
  const byPlace = [...near].sort((a, b) => a.at[0] - b.at[0]);
  return [first, byPlace[0] as (typeof near)[number], byPlace.at(-1) as (typeof near)[number]];
}

/** Even-odd over all loops. */
export function isInside([u, v]: Paper, loops: readonly (readonly Paper[])[]): boolean {
  let inside = false;
  for (const loop of loops) {
    loop.forEach((a, i) => {
      const b = loop[(i + 1) % loop.length] as Paper;
      if (a[1] > v !== b[1] > v && u < ((b[0] - a[0]) * (v - a[1])) / (b[1] - a[1]) + a[0]) inside = !inside;
    });
  }
  return inside;
}

function borderDistance([u, v]: Paper, loops: readonly (readonly Paper[])[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const loop of loops) {
    loop.forEach((a, i) => {
      const b = loop[(i + 1) % loop.length] as Paper;
      const [du, dv] = [b[0] - a[0], b[1] - a[1]];
      const t = Math.max(0, Math.min(1, ((u - a[0]) * du + (v - a[1]) * dv) / (du * du + dv * dv || 1)));
      least = Math.min(least, Math.hypot(u - a[0] - t * du, v - a[1] - t * dv));
    });
  }
  return least;
}
