// A fastener and the woods it holds -> the holes to drill before it is driven.
import type { Fastener, Species } from "../yard/yard.ts";

/** Bits in inches: through the first board, so that it draws up tight, and in the second, for the thread or the nail. */
export type LeadHoles = { readonly through?: number; readonly into: number; readonly source: string };

/** Root diameters of wood screws by shank, inches: National Design Specification for Wood Construction (NDS), appendix L3. */
const roots: readonly (readonly [shank: number, root: number])[] = [
  [0.138, 0.113],
  [0.164, 0.131],
  [0.19, 0.152],
  [0.216, 0.171],
  [0.242, 0.196],
];

/** A shank the table leaves out: its rows lie at 0.79 to 0.82. Common practice, no source. */
const rootShare = 0.8;

const sixtyFourths = (inches: number): number => Math.round(inches * 64) / 64;

/** Up to the next bit, unless the one below is within 0.003 in of the shank. Common practice, no source. */
const clearing = (shank: number): number => Math.ceil((shank - 0.003) * 64 - 1e-9) / 64;

const rootOf = (shank: number): number =>
  roots.find(([one]) => Math.abs(one - shank) < 0.004)?.[1] ?? shank * rootShare;

/**
 * Screws: 90 % of the root where the oven-dry specific gravity is over 0.6, 70 % from 0.5 (NDS 12.1.5); for lighter woods NDS
 * lets the hole be left out, but boards split near their ends, so they are drilled at 70 % too (common practice, no source).
 * Nails: 90 % of the diameter over 0.6, else 75 % (NDS 12.1.6). A bolt's hole is 1/16 wider than it at most (NDS 12.1.3); a
 * dowel's is its own size (common practice, no source). A pocket screw cuts its own way: the jig's bit makes the pocket.
 */
export function leadHolesFor({ kind, diameter }: Fastener, wood: Species): LeadHoles | undefined {
  const dense = (wood.fastenerGravity ?? wood.specificGravity) > 0.6;
  switch (kind) {
    case "pocket screw":
      return undefined;
    case "screw": {
      const into = sixtyFourths(rootOf(diameter) * (dense ? 0.9 : 0.7));
      return {
        through: clearing(diameter),
        into,
        source: "NDS 12.1.5; the size of the bit: common practice, no source",
      };
    }
    case "nail":
      return { into: Math.floor(diameter * (dense ? 0.9 : 0.75) * 64) / 64, source: "NDS 12.1.6" };
    case "bolt": {
      const across = sixtyFourths(diameter + 1 / 32);
      return { through: across, into: across, source: "NDS 12.1.3" };
    }
    case "dowel":
      return { through: sixtyFourths(diameter), into: sixtyFourths(diameter), source: "common practice, no source" };
  }
}
