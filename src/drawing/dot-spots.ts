// The seen regions of one piece's members -> places well inside them where a leader's dot may lie.
import type { Region } from "../geometry/visible-regions.ts";
import type { Paper } from "./drawing.ts";
import { onPaper, type Picture, type Placement } from "./picture.ts";

const grid = 14;

/** The best few places, roomiest first, one from each region; room in mm to the nearest border. */
export function dotSpots(
  picture: Picture,
  placement: Placement,
  owners: ReadonlySet<number>,
  keepOff: readonly (readonly Paper[])[],
): readonly { readonly at: Paper; readonly room: number }[] {
  return picture.scene.regions
    .filter((region) => owners.has(region.owner))
    .sort((a, b) => b.area - a.area)
    .slice(0, 12)
    .flatMap((region) => roomiest(region, (p) => onPaper(picture, placement, p), keepOff))
    .sort((a, b) => b.room - a.room);
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
  const near = best.filter((spot) => spot.room > first.room * 0.8);
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
